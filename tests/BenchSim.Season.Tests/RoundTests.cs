using BenchSim.Season.Inputs;
using static BenchSim.Season.Tests.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>
/// Small print of the work round (docs/model.md sections 2, 3 and 7) that a second writing of the model from that page read otherwise than the first. The
/// site is the one of <see cref="SmallSite"/>: 3 days to emergence, 14 more to field size, day 0 a Monday.
/// </summary>
public class RoundTests
{
    private static readonly Crop Unheated = Crop() with { BottomHeat = false };

    // Sown on a bench on day 0 and grown on day 17, it goes to the table on day 35 - 3 - 3 = 29. The nights after days 29, 30 and 31 are too cold to
    // count, those after days 32, 33 and 34 count: it has its three nights on day 35, its planned date, and has lost nothing by the weather.
    [Fact]
    public void Cold_nights_before_the_planned_date_are_no_hold()
    {
        var weather = new RecordedWeather(
            [.. Enumerable.Range(-40, 400).Select(day => new DailyWeather(Monday.AddDays(day), day is >= 30 and <= 32 ? 2 : 10, 12, 0))],
            2027,
            "weather.csv");
        var result = PlayOnce(Scenario(
            [Bench(4), Table(4)],
            [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(35) }],
            new SiteRules { ForecastNights = 0 },
            [Unheated],
            weather));

        Assert.Equal(29, result.Batches[0].OnTable);
        Assert.Equal(35, result.Batches[0].OutLast);
        Assert.Equal(0, result.Batches[0].HoldTrayDays);
    }

    // Grown on day 17 and before its table date of day 29, it is asked while the only bench is full, and finds no table. Once the aisle is open the bench
    // is not full any more, so it is not asked: it waits for no table until its date.
    [Fact]
    public void A_tray_that_the_last_pass_does_not_ask_does_not_wait()
    {
        var result = PlayOnce(Scenario(
            [Bench(1) with { AislePlaces = 1 }, Table(0)],
            [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(35) }],
            new SiteRules { Reliefs = [Relief.Aisle] },
            [Unheated]));

        Assert.Equal(0, result.Waiting[1][17]);
        Assert.Equal(1, result.Waiting[1][29]);
    }

    // One bench place, one place in the aisle, two trays to be sown on the day on which they are given up.
    [Fact]
    public void A_sowing_is_given_up_only_after_the_reliefs_of_the_round()
    {
        var result = PlayOnce(Scenario(
            [Bench(1) with { AislePlaces = 1 }, Table(4)],
            [Batch("a", 100, Monday)],
            new SiteRules { Reliefs = [Relief.Aisle], SowWaitDays = 0, SowGiveUpDays = 0 },
            [Unheated]));

        Assert.Equal(2, result.Sown[0]);
        Assert.Equal(0, result.Batches[0].GivenUp);
    }

    // On day 21 one tray of "y" takes the last bench place and the other waits on the mat. No sowing waits for a mat, so the relief does not open and
    // the round is over: "x", which may go to the table before its date only while the bench is full, goes in the round of day 22.
    [Fact]
    public void A_relief_that_does_not_open_brings_no_further_pass()
    {
        var result = PlayOnce(Scenario(
            [Mat(2), Bench(2), Table(5)],
            [Batch("x", 50, Monday) with { SetOut = Monday.AddDays(35) }, Batch("y", 100, Monday.AddDays(18))],
            new SiteRules { Reliefs = [Relief.OffMatEarly] }));

        Assert.Equal(1, result.Waiting[1][21]);
        Assert.Equal(22, result.Batches[0].OnTable);
    }
}
