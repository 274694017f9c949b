using BenchSim.Answers.Words;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Tests.Words;

/// <summary>Names, numbers and shell words.</summary>
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

    // 20 C = 68 F; a difference of 10 K = 18 F; 1 inch = 25.4 mm: by definition of the scales.
    [Fact]
    public void Measures_are_shown_in_the_users_units()
    {
        Assert.Equal("68 F", Figures.Temperature(20, UnitSystem.Imperial));
        Assert.Equal("20 C", Figures.Temperature(20, UnitSystem.Metric));
        Assert.Equal("18 F", Figures.Difference(10, UnitSystem.Imperial));
        Assert.Equal("1 in", Figures.Rain(25.4, UnitSystem.Imperial));
        Assert.Equal("25.4 mm", Figures.Rain(25.4, UnitSystem.Metric));
    }

    [Theory]
    [InlineData(0.0, "0 %")]
    [InlineData(0.0004, "under 0.1 %")]
    [InlineData(0.9, "90 %")]
    [InlineData(0.9995, "over 99.9 %")]
    [InlineData(1.0, "100 %")]
    public void A_percentage_is_never_0_or_100_unless_it_is(double share, string text) => Assert.Equal(text, Figures.Percent(share));

    [Theory]
    [InlineData("spring-2027/site", "spring-2027/site")]
    [InlineData("my spring", "'my spring'")]
    [InlineData("it's", "'it'\\''s'")]
    [InlineData("$(x)", "'$(x)'")]
    public void A_folder_is_named_as_a_shell_takes_it(string word, string typed) => Assert.Equal(typed, Shell.Word(word));
}
