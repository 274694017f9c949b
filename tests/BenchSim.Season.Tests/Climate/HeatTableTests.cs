using BenchSim.Season.Climate;

namespace BenchSim.Season.Tests.Climate;

public class HeatTableTests
{
    // Ten degree-days a day: forty take four days to the minute, at whatever time of day they begin.
    [Theory]
    [InlineData(8)]
    [InlineData(9.5)]
    [InlineData(17.5)]
    public void Whole_days_of_heat_are_reached_at_the_same_time_of_day(double hourOfDay)
    {
        var table = new HeatTable(24 * 50);
        table.Fill([.. Enumerable.Repeat(10.0, 24 * 50)]);
        for (var day = 0; day < 40; day++)
        {
            var from = (24 * day) + hourOfDay;
            var reached = table.FirstAtOrAbove(table.At(from) + HeatTable.Units(40), from);

            Assert.True(reached <= from + 96, $"day {day}: {reached - from} hours");
            Assert.Equal(from + 96, reached, 4);
        }
    }
}
