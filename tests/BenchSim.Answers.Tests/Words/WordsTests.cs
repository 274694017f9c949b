using BenchSim.Answers.Words;

namespace BenchSim.Answers.Tests.Words;

/// <summary>Names and shell words.</summary>
public sealed class WordsTests
{
    [Fact]
    public void Near_names_come_nearest_first_and_strangers_not_at_all() =>
        Assert.Equal(["kale-1", "kale-2"], NearNames.Of("KALE", ["basil", "kale-1", "kale-2", "leek"]).ToArray());

    [Theory]
    [InlineData("tomatos", "tomatoes")]
    [InlineData("otmatoes", "tomatoes")]
    [InlineData("tomatooes", "tomatoes")]
    public void One_slip_is_near(string written, string meant) => Assert.Equal([meant], NearNames.Of(written, ["basil", meant]).ToArray());

    [Theory]
    [InlineData("spring-2027/site", "spring-2027/site")]
    [InlineData("my spring", "'my spring'")]
    [InlineData("it's", "'it'\\''s'")]
    [InlineData("$(x)", "'$(x)'")]
    public void A_folder_is_named_as_a_shell_takes_it(string word, string typed) => Assert.Equal(typed, Shell.Word(word));
}
