using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Tests.Drafts;

/// <summary>The lines of not-here.txt as the page writes them.</summary>
public sealed class NotHereMarksTests : IDisposable
{
    private readonly FarmFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_mark_is_added_behind_the_others_and_taken_out_again_and_all_else_stays()
    {
        const string Before = "# ours\r\nheat   # the heater is old\r\nplaces table";
        _folder.Write("not-here.txt", Before);
        var folder = new OpenFolder(_folder.Path);
        Assert.Equal<string[]>(["heat", "places table"], [.. NotHereMarks.Of(folder)]);
        Assert.Null(NotHereMarks.Set(folder, "slack", isHere: false));
        Assert.Equal(Before + "\r\nslack\r\n", File.ReadAllText(_folder.In("not-here.txt")));
        Assert.Null(NotHereMarks.Set(folder, "slack", isHere: false));
        Assert.Null(NotHereMarks.Set(folder, "heat", isHere: true));
        Assert.Equal("# ours\r\nplaces table\r\nslack\r\n", File.ReadAllText(_folder.In("not-here.txt")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("sow a\nheat")]
    [InlineData("sow a # b")]
    [InlineData(" heat")]
    public void What_is_no_line_is_refused(string mark)
    {
        Assert.NotNull(NotHereMarks.Set(new OpenFolder(_folder.Path), mark, isHere: false));
        Assert.False(File.Exists(_folder.In("not-here.txt")));
    }

    [Fact]
    public void Through_a_link_nothing_is_written()
    {
        using var other = new TemporaryFolder();
        other.Write("secret.txt", "heat\n");
        File.CreateSymbolicLink(_folder.In("not-here.txt"), other.In("secret.txt"));
        var folder = new OpenFolder(_folder.Path);
        Assert.Empty(NotHereMarks.Of(folder));
        Assert.NotNull(NotHereMarks.Set(folder, "slack", isHere: false));
        Assert.Equal("heat\n", File.ReadAllText(other.In("secret.txt")));
    }
}
