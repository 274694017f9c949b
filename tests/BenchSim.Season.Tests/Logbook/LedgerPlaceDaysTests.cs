using BenchSim.Season.Logbook;
using static BenchSim.Season.Tests.Logbook.SmallLog;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>Place-days so far, added up by hand.</summary>
public class LedgerPlaceDaysTests
{
    // 8 trays from day 0; 2 thrown out on day 4: 6 x 10 + 2 x 4 = 68 by day 10. 3 flats of a place from day 0, one used up on day 7 for 2
    // trays: 2 x 10 + 7 + 2 x 3 = 33.
    [Fact]
    public void A_place_held_for_a_day_is_one()
    {
        var ledger = Ledger(
            Sown(0, "trays", 8),
            Sown(0, "flats", 3),
            Gone(4, Season.Inputs.LogKind.ThrownOut, 2),
            PottedUp(7, flats: 1, trays: 2)
        );
        var own = Assert.Single(LedgerPlaceDays.ByGrower(SmallSite.Plan(Site), ledger, Day(10)));
        Assert.Equal(("Ada", 68 + 33L), (own.Grower, own.PlaceDays));
    }
}
