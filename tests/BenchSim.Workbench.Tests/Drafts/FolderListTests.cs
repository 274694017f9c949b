using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Tests.Drafts;

/// <summary>The folders that were opened before.</summary>
public sealed class FolderListTests : IDisposable
{
    private readonly TemporaryFolder _settings = new();

    private FolderList List => new(_settings.In("benchsim/folders.txt"));

    public void Dispose() => _settings.Dispose();

    [Fact]
    public void The_newest_stands_first_and_each_once()
    {
        using var one = new FarmFolder();
        using var two = new FarmFolder();
        Assert.Empty(List.Now);
        List.Add(one.Path);
        List.Add(two.Path);
        Assert.Equal([two.Path, one.Path], List.Now, StringComparer.Ordinal);
        List.Add(one.Path);
        Assert.Equal([one.Path, two.Path], List.Now, StringComparer.Ordinal);
        Assert.Equal($"{one.Path}\n{two.Path}\n", File.ReadAllText(_settings.In("benchsim/folders.txt")));
    }

    [Fact]
    public void What_is_gone_or_holds_no_plan_is_not_listed()
    {
        using var stays = new FarmFolder();
        using var empty = new FarmFolder(site: null);
        var gone = new FarmFolder();
        List.Add(stays.Path);
        List.Add(empty.Path);
        List.Add(gone.Path);
        gone.Dispose();
        Assert.Equal([stays.Path], List.Now, StringComparer.Ordinal);
    }

    [Fact]
    public void Twelve_are_kept()
    {
        for (var at = 0; at < 20; at++)
        {
            List.Add(FormattableString.Invariant($"/farm/{at}"));
        }

        Assert.Equal(12, File.ReadAllLines(_settings.In("benchsim/folders.txt")).Length);
    }

    // A folder in the place of the file, what is no text, and no list asked for.
    [Fact]
    public void Where_it_cannot_be_kept_nothing_is_said()
    {
        using var farm = new FarmFolder();
        Directory.CreateDirectory(_settings.In("folder"));
        foreach (var list in new[] { new FolderList(_settings.In("folder")), new FolderList(null) })
        {
            list.Add(farm.Path);
            Assert.Empty(list.Now);
        }

        File.WriteAllBytes(_settings.In("bytes"), [0xff, 0x00, 0x0a, 0xfe]);
        Assert.Empty(new FolderList(_settings.In("bytes")).Now);
    }
}
