using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Season.Tests.Planning;

public class SiteTablesTests
{
    // Ten, fifteen and twenty past the hour are no round numbers of hours: day after day, a round at that very time is the day's own.
    [Theory]
    [InlineData(8, 0)]
    [InlineData(8, 10)]
    [InlineData(8, 20)]
    [InlineData(9, 55)]
    public void A_round_at_the_very_instant_is_not_missed(int hour, int minute)
    {
        var at = new TimeOnly(hour, minute);
        var every = new SiteRules { RoundAt = at, WorkDays = [.. Enum.GetValues<DayOfWeek>()] };
        var tables = new SiteTables(SmallSite.Scenario([SmallSite.Bench(9), SmallSite.Table(9)], [], every), 400);
        Assert.All(Enumerable.Range(0, 400), day => Assert.Equal(day, tables.RoundAtOrAfter((24 * day) + at.ToTimeSpan().TotalHours)));
        Assert.All(Enumerable.Range(0, 399), day =>
            Assert.Equal(day + 1, tables.RoundAtOrAfter((24 * day) + at.ToTimeSpan().TotalHours + (1 / 3600.0)))
        );
    }
}
