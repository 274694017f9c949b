using System.Collections.Immutable;
using BenchSim.Answers.Opening;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Tests.Drafts;

/// <summary>What was done is written into log.csv at once, once, and can be taken back.</summary>
public sealed class LogBookTests : IDisposable
{
    private const string Header = "date,batch,what,trays,flats,from,space,count,of,by,note\n";

    private readonly FarmFolder _folder = new();

    private LogBook Book => new(new OpenFolder(_folder.Path), new KeptOpenings());

    private string Log => File.ReadAllText(_folder.In("log.csv"));

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_line_begins_the_log_and_the_next_follows()
    {
        Assert.Null(Book.Write("a1", "sown", [Sown("2")]));
        Assert.Null(Book.Write("a2", "up", [Row(("date", "2027-03-08"), ("batch", "a"), ("what", "up"), ("count", "40"), ("of", "50"))]));
        Assert.Equal(Header + "2027-03-01,a,sown,2,,,mats,,,,\n2027-03-08,a,up,,,,,40,50,,\n", Log);
    }

    [Fact]
    public void What_is_sent_again_is_not_written_again()
    {
        Assert.Null(Book.Write("a1", "sown", [Sown("2")]));
        var once = Log;
        Assert.Null(Book.Write("a1", "sown", [Sown("2")]));
        Assert.Equal(once, Log);
    }

    [Fact]
    public void What_would_be_a_fault_is_refused_with_its_words_and_nothing_is_written()
    {
        Assert.Null(Book.Write("a1", "sown", [Sown("2")]));
        var once = Log;
        var fault = Book.Write(
            "a2",
            "moved",
            [Row(("date", "2027-03-08"), ("batch", "a"), ("what", "moved"), ("trays", "9"), ("space", "bench"))]
        );
        Assert.StartsWith("Not written: ", fault?.Why, StringComparison.Ordinal);
        Assert.Equal(once, Log);
    }

    [Fact]
    public void A_fault_that_stood_there_before_does_not_stop_the_next_line()
    {
        _folder.Write("log.csv", "date,batch,what,trays,space\n2027-03-01,nobody,sown,2,mats\n");
        Assert.Null(Book.Write("a1", "sown", [Sown("2")]));
        Assert.EndsWith("2027-03-01,a,sown,2,mats\n", Log, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_are_taken_back_and_every_other_character_stays()
    {
        const string Before = "date,batch,what,trays,space,note\r\n2027-03-01,a,sown,1,mats,\"first, in the cold\"\r\n";
        _folder.Write("log.csv", Before);
        Assert.Null(Book.Write("a1", "sown", [Sown("2")]));
        Assert.Equal("a1", Assert.Single(Book.Newest(5)).Id);
        Assert.Null(Book.TakeBack("a1"));
        Assert.Equal(Before, Log);
        Assert.Empty(Book.Newest(5));
        Assert.True(Book.TakeBack("a1")?.IsConflict);
    }

    [Fact]
    public void What_others_build_on_is_not_taken_back()
    {
        Assert.Null(Book.Write("a1", "sown", [Sown("2")]));
        Assert.Null(
            Book.Write("a2", "moved", [Row(("date", "2027-03-08"), ("batch", "a"), ("what", "moved"), ("trays", "2"), ("space", "bench"))])
        );
        Assert.StartsWith("Not taken back, as other lines build on it: ", Book.TakeBack("a1")?.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("../a")]
    [InlineData("a b")]
    public void A_name_that_is_none_is_refused(string id) => Assert.NotNull(Book.Write(id, "sown", [Sown("2")]));

    [Fact]
    public void A_note_of_two_lines_is_refused() =>
        Assert.Equal("Write it in one line.", Book.Write("a1", "x", [Sown("2").Add("note", "one\ntwo")])?.Why);

    private static ImmutableSortedDictionary<string, string> Sown(string trays) =>
        Row(("date", "2027-03-01"), ("batch", "a"), ("what", "sown"), ("trays", trays), ("space", "mats"));

    private static ImmutableSortedDictionary<string, string> Row(params (string Column, string Cell)[] cells) =>
        cells.ToImmutableSortedDictionary(cell => cell.Column, cell => cell.Cell, StringComparer.Ordinal);
}
