using BenchSim.Season.Logbook;
using static BenchSim.Season.Tests.Logbook.SmallLog;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>The room that is left by a log.</summary>
public class SpaceTodayTests
{
    // The mat has 20 places: 15 trays and 7 flats of one place each are 2 too many. The bench has 60: 4 trays leave 56.
    [Fact]
    public void Places_are_those_of_the_day_less_those_taken()
    {
        var plan = SmallSite.Plan(Site);
        var ledger = Ledger(Sown(0, "trays", 15), Sown(0, "flats", 7), Sown(1, "trays", 4, Bench));
        Assert.Equal(
            [(15, 7, 22, 20, -2), (4, 0, 4, 60, 56), (0, 0, 0, 60, 60), (0, 0, 0, 60, 60)],
            SpaceToday.Of(plan, ledger, Day(1)).Select(space => (space.Trays, space.Flats, space.Held, space.Places, space.Free))
        );
    }
}
