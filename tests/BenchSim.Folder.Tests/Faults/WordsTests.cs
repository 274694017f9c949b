using BenchSim.Folder.Faults;

namespace BenchSim.Folder.Tests.Faults;

/// <summary>Names of users in messages, alone and in a row.</summary>
public class WordsTests
{
    // U+202E turns the reading direction round for all behind it.
    [Fact]
    public void What_does_not_show_is_spelled_out_in_a_quote_and_in_a_list()
    {
        Assert.Equal("\"[U+202E]mats\"", Words.Quote("\u202Emats"));
        Assert.Equal("bench, [U+202E]mats and ta[U+0007]ble", Words.List(["bench", "\u202Emats", "ta\u0007ble"]));
        Assert.Equal("[U+202E]mats", Words.List(["\u202Emats"]));
    }

    [Fact]
    public void A_list_of_nothing_is_none() => Assert.Equal("none", Words.List([]));
}
