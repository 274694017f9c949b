using BenchSim.Study.Succession;

namespace BenchSim.Study.Tests.Succession;

/// <summary>Gaps in supply, counted on the fingers.</summary>
public class SupplyRuleTests
{
    // Set out on days 0, 7 and 20 with 7 days of supply: 0-6, 7-13, 20-26; days 14 to 19 are without, 6 days.
    [Theory]
    [InlineData(7, 6, 0, 7, 20)]
    [InlineData(7, 6, 20, 0, 7)]
    [InlineData(5, 10, 0, 7, 20)] // 5, 6 and 12 to 19
    [InlineData(13, 0, 0, 7, 20)]
    [InlineData(1, 0, 4, 4)]
    [InlineData(3, 0, 4)]
    [InlineData(3, 0)]
    public void Days_without_supply_lie_between_the_first_and_the_last_set_out(int days, int gap, params int[] setOut) =>
        Assert.Equal(gap, new SupplyRule(0, days).GapDays(setOut));

    [Fact]
    public void The_days_before_the_first_harvest_are_the_same_for_all() =>
        Assert.Equal(new SupplyRule(0, 4).GapDays([0, 9, 11]), new SupplyRule(30, 4).GapDays([0, 9, 11]));
}
