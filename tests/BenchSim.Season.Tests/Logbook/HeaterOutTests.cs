using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using static BenchSim.Season.Tests.Logbook.SmallLog;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>
/// What would come of it if the heater stopped at 20 C inside with -10 C outdoors. The air cools by -10 + 30 exp(-h / t): t is 0.33 Wh a
/// cubic metre over the loss for a house that holds no warmth, and with 28.39 Wh a square metre of floor on top for one with a damp floor
/// (docs/air.md). The crop of the small site bears 0 C, which comes after t ln 3.
/// </summary>
public class HeaterOutTests
{
    private static readonly HouseBody s_body = new()
    {
        Shell = HouseShell.Hoop(6, 14),
        Covering = "double polyethylene",
        UValue = 4.5,
        AirChanges = 1,
        Transmission = 0.6,
    };

    private static double Soonest => 0.33 * s_body.Shell.VolumeM3 / s_body.Loss.WattsPerKelvin;

    private static double Latest => ((0.33 * s_body.Shell.VolumeM3) + (28.39 * s_body.Shell.FloorM2)) / s_body.Loss.WattsPerKelvin;

    [Fact]
    public void Freezes_after_the_hours_of_the_closed_form()
    {
        var house = Assert.Single(HeaterOut.Of(Plan(), Ledger(Sown(0, "trays", 4)), -10));
        Assert.Equal(Soonest * Math.Log(3), house.FreezesAfter!.Value.Low, 1e-2);
        Assert.Equal(Latest * Math.Log(3), house.FreezesAfter.Value.High, 1e-2);
        Assert.Null(HeaterOut.Of(Plan(), Ledger(Sown(0, "trays", 4)), 0.5)[0].FreezesAfter);
    }

    // Noticed after 1, 2, 4 and 8 hours: hurt for sure once the slow house is below 0 C, perhaps once the fast one is.
    [Fact]
    public void Says_what_is_too_cold_when_it_is_noticed()
    {
        var house = Assert.Single(HeaterOut.Of(Plan(), Ledger(Sown(0, "trays", 4), Sown(0, "flats", 2, Bench)), -10));
        Assert.Equal([1, 2, 4, 8], house.Noticed.Select(noticed => noticed.Hours));
        foreach (var noticed in house.Noticed)
        {
            Assert.Equal(-10 + (30 * Math.Exp(-noticed.Hours / Soonest)), noticed.InsideC.Low, 1e-2);
            Assert.Equal(-10 + (30 * Math.Exp(-noticed.Hours / Latest)), noticed.InsideC.High, 1e-2);
            HousePieces[] all = [new(0, 4, 0), new(1, 0, 2)];
            Assert.Equal(noticed.Hours > Latest * Math.Log(3) ? all : [], noticed.Hurt);
            Assert.Equal(noticed.Hours > Soonest * Math.Log(3) && noticed.Hours <= Latest * Math.Log(3) ? all : [], noticed.Perhaps);
        }

        // Both kinds are met with: the fast house is at freezing within the hour, the slow one between the 2nd and the 4th.
        Assert.NotEmpty(house.Noticed[0].Perhaps);
        Assert.NotEmpty(house.Noticed[3].Hurt);
    }

    [Fact]
    public void A_house_in_which_nothing_stands_or_whose_size_is_not_given_is_left_out()
    {
        Assert.Empty(HeaterOut.Of(Plan(), Ledger(Sown(0, "trays", 4), Moved(3, 4, Table)), -10));
        Assert.Empty(HeaterOut.Of(SmallSite.Plan(Site), Ledger(Sown(0, "trays", 4)), -10));
    }

    private static SeasonPlan Plan() => SmallSite.Plan(Site with { Houses = [Site.Houses[0] with { Body = s_body }] });
}
