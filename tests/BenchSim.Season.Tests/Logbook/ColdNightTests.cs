using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Weather;
using static BenchSim.Season.Tests.Logbook.SmallLog;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>
/// What to do on a cold night. The crop of the small site is covered below 5 C and carried in below 0 C under the cover, which here adds
/// 2 K; 3 F in hand are 1.67 K. 6 trays stand on the table.
/// </summary>
public class ColdNightTests
{
    // 6.7 - 1.67 = 5.03: warm enough. 6.6 - 1.67 = 4.93: cover. -0.3 - 1.67 + 2 = 0.03: still under cover. -0.4 - 1.67 + 2 = -0.07: in.
    [Theory]
    [InlineData(6.7, 0, "")]
    [InlineData(6.6, 0, "cover")]
    [InlineData(-0.3, 0, "cover")]
    [InlineData(-0.4, 0, "carry in")]
    // One's own thermometer is 1 K colder.
    [InlineData(7.6, -1, "cover")]
    [InlineData(0.6, -1, "carry in")]
    public void Keeps_three_degrees_Fahrenheit_in_hand(double low, double correction, string what)
    {
        var night = ColdNight.Of(Plan(), OnTheTable(), low, correction);
        var all = new[] { ("cover", night.Cover), ("carry in", night.CarryIn) }.Where(each => !each.Item2.IsEmpty).ToArray();
        Assert.Equal(what, string.Join(' ', all.Select(each => each.Item1)));
        Assert.All(all, each => Assert.Equal(new ColdTrays(0, Table, 6), Assert.Single(each.Item2)));
    }

    // A minute a tray, in and out again; a place each.
    [Fact]
    public void Says_how_long_carrying_in_takes_and_the_room_it_wants()
    {
        var night = ColdNight.Of(Plan(), OnTheTable(), -5, 0);
        Assert.Equal((6.0, 6), (night.Minutes, night.Places));

        // Two benches of 60, 4 places of them taken: what is over-full counts as no room, not less.
        Assert.Equal(116, ColdNight.RoomIndoors(Plan(), Ledger(Sown(0, "trays", 4, Bench)), Day(1)));
        Assert.Equal(60, ColdNight.RoomIndoors(Plan(), Ledger(Sown(0, "trays", 70, Bench)), Day(1)));
    }

    // The house is kept at 20 C.
    [Fact]
    public void A_table_in_a_heated_house_is_as_warm_as_its_set_point()
    {
        var site = Site with { Spaces = Site.Spaces.SetItem(Table, Site.Spaces[Table] with { HouseId = "main" }) };
        var night = ColdNight.Of(SmallSite.Plan(site), OnTheTable(), -20, 0);
        Assert.Equal((0, 0), (night.Cover.Length, night.CarryIn.Length));
    }

    // 1 C colder on the 3rd, 2 C on the 4th, 3 C on the 5th: 2 C; the 6th was not observed, and the house is not outdoors.
    [Fact]
    public void Own_lows_are_set_against_the_days_observed()
    {
        var own = OwnThermometer.Of(WithLows((2, 4, null), (3, 3, "outdoors"), (4, 2, null), (5, -9, null), (2, 30, "main")));
        Assert.Equal((3, -2.0, -2.0), (own.Nights, own.MeanK, own.CorrectionK));
    }

    [Fact]
    public void Two_nights_are_too_few_to_correct_by_and_a_warm_thermometer_never_makes_the_advice_less_careful()
    {
        Assert.Equal(0, OwnThermometer.Of(WithLows((2, 0, null), (3, 0, null))).CorrectionK);
        Assert.Equal((3, 2.0, 0.0), Told(OwnThermometer.Of(WithLows((2, 7, null), (3, 7, null), (4, 7, null)))));
        Assert.Equal((0, 0.0, 0.0), Told(OwnThermometer.Of(Site)));

        static (int, double, double) Told(OwnThermometer own) => (own.Nights, own.MeanK, own.CorrectionK);
    }

    private static SeasonPlan Plan() => SmallSite.Plan(Site with { Rules = Site.Rules with { CoverGainK = 2 } });

    private static BenchLedger OnTheTable() => Ledger(Sown(0, "trays", 6), Moved(3, 6, Table));

    // 5 C was observed on each of three days.
    private static Scenario WithLows(params (int Day, double Low, string? Space)[] lows) =>
        Site with
        {
            Seen = new SeenWeather([.. new[] { 2, 3, 4 }.Select(day => new DailyWeather(Day(day), 5, 12, 0))], []),
            Log =
            [
                .. lows.Select(low => new LogEntry
                {
                    Date = Day(low.Day),
                    What = LogKind.Low,
                    Space = low.Space,
                    Count = low.Low,
                }),
            ],
        };
}
