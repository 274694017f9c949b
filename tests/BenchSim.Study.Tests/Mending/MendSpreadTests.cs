using BenchSim.Study.Mending;

namespace BenchSim.Study.Tests.Mending;

/// <summary>Of moves of sowings that are as good, those of a grower who has moved none come first.</summary>
public sealed class MendSpreadTests
{
    private static readonly MendChange[] s_before = [Sow("tomato", "Mara"), Sow("pepper", "Mara"), Sow("basil", "Ben")];

    [Theory]
    [InlineData("Mara", 2)]
    [InlineData("Ben", 1)]
    [InlineData("Ada", 0)]
    public void A_grower_bears_what_was_moved_before(string grower, int again) =>
        Assert.Equal(again, MendSearch.MovesAgain(s_before, Sow("kale", grower)));

    [Fact]
    public void What_moves_no_sowing_moves_none_again() =>
        Assert.Equal(0, MendSearch.MovesAgain(s_before, new FewerChange("kale", 200, 100)));

    private static SowChange Sow(string line, string grower) =>
        new([new SowingMove(line, grower, new DateOnly(2027, 3, 1), new DateOnly(2027, 3, 4), new DateOnly(2027, 5, 1))]);
}
