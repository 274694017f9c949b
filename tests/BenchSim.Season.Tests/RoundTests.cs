using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>
/// Small print of the work round (docs/model.md sections 2, 3 and 7) that a second writing of the model from that page read otherwise than
/// the first. The site is the one of <see cref="SmallSite"/>: 3 days to emergence, 14 more to field size, day 0 a Monday.
/// </summary>
public class RoundTests
{
    private static readonly Crop s_unheated = Crop() with { BottomHeat = false };

    // Sown on a bench on day 0 and grown on day 17, it goes to the table on day 35 - 3 - 3 = 29. It is carried in for the nights after days
    // 29, 30 and 31, and those after days 32, 33 and 34 count: it has its three nights on day 35, its planned date, and has lost nothing by
    // the weather.
    [Fact]
    public void Cold_nights_before_the_planned_date_are_no_hold()
    {
        var weather = new RecordedWeather(
            [.. Enumerable.Range(-40, 400).Select(day => new DailyWeather(Monday.AddDays(day), day is >= 30 and <= 32 ? -1 : 10, 12, 0))],
            2027,
            "weather.csv"
        );
        var result = PlayOnce(
            Scenario(
                [Bench(4), Table(4)],
                [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(35) }],
                new SiteRules { ForecastNights = 0 },
                [s_unheated],
                weather
            )
        );

        Assert.Equal(29, result.Batches[0].OnTable);
        Assert.Equal(35, result.Batches[0].OutLast);
        Assert.Equal(0, result.Batches[0].HoldTrayDays);
    }

    // On the table on day 29 as above. Cold nights after days 29, 30 and 31, in which no tray would be sent out, count all the same down
    // to the 0 C below which trays are carried in: it has its three on Friday, day 32, and may go out three days before its date. Carried
    // in, it has stood its nights by then and only those lack that did not count: from day 32, its date less those three days, it is held
    // for three days.
    [Theory]
    [InlineData(0, 32, 0)]
    [InlineData(-0.1, 35, 3)]
    public void A_night_on_the_table_counts_unless_the_trays_are_carried_in(double night, int outOn, int hold)
    {
        var result = PlayOnce(
            Scenario(
                [Bench(4), Table(4)],
                [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(35) }],
                new SiteRules { ForecastNights = 0, SetOutEarlyDays = 3 },
                [s_unheated],
                Nights(day => day is >= 30 and <= 32 ? night : 10)
            )
        );
        Assert.Equal((29, outOn, hold), (result.Batches[0].OnTable, result.Batches[0].OutLast, result.Batches[0].HoldTrayDays));
    }

    // The 2 K that a row cover adds make nights of 10 C in the field the 12 C that the crop wants there: with it the tray goes out on its
    // date, Monday, day 21. Without, the weather holds it until the round of day 24, after which the night has 13 C.
    [Theory]
    [InlineData(FieldCover.RowCover, 21, 0)]
    [InlineData(FieldCover.Tunnel, 24, 3)]
    [InlineData(FieldCover.Open, 24, 3)]
    public void The_field_is_asked_of_the_air_under_its_cover(FieldCover cover, int outOn, int hold)
    {
        var result = PlayOnce(
            Scenario(
                [Mat(9), Bench(9), Table(9)],
                [Batch("a", 50, Monday) with { FieldCover = cover }],
                new SiteRules
                {
                    ForecastNights = 1,
                    RowCoverGainK = 2,
                    TunnelGainK = 1.9,
                },
                [Crop() with { FieldAboveC = 12 }],
                Nights(day => day < 25 ? 10 : 13)
            )
        );
        Assert.Equal((outOn, hold), (result.Batches[0].OutLast, result.Batches[0].HoldTrayDays));
    }

    // Grown on day 17 and before its table date of day 29, it is asked while the only bench is full, and finds no table. Once the aisle is
    // open the bench is not full any more, so it is not asked: it waits for no table until its date.
    [Fact]
    public void A_tray_that_the_last_pass_does_not_ask_does_not_wait()
    {
        var result = PlayOnce(
            Scenario(
                [Bench(1) with { AislePlaces = 1 }, Table(0)],
                [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(35) }],
                new SiteRules { Reliefs = [Relief.Aisle] },
                [s_unheated]
            )
        );

        Assert.Equal(0, result.Waiting[1][17]);
        Assert.Equal(1, result.Waiting[1][29]);
    }

    // One bench place, one place in the aisle, two trays to be sown on the day on which they are given up.
    [Fact]
    public void A_sowing_is_given_up_only_after_the_reliefs_of_the_round()
    {
        var result = PlayOnce(
            Scenario(
                [Bench(1) with { AislePlaces = 1 }, Table(4)],
                [Batch("a", 100, Monday)],
                new SiteRules
                {
                    Reliefs = [Relief.Aisle],
                    SowWaitDays = 0,
                    SowGiveUpDays = 0,
                },
                [s_unheated]
            )
        );

        Assert.Equal(2, result.Sown[0]);
        Assert.Equal(0, result.Batches[0].GivenUp);
    }

    // On day 21 one tray of "y" takes the last bench place and the other waits on the mat. No sowing waits for a mat, so the relief does
    // not open and the round is over: "x", which may go to the table before its date only while the bench is full, goes in the round of day
    // 22.
    [Fact]
    public void A_relief_that_does_not_open_brings_no_further_pass()
    {
        var result = PlayOnce(
            Scenario(
                [Mat(2), Bench(2), Table(5)],
                [Batch("x", 50, Monday) with { SetOut = Monday.AddDays(35) }, Batch("y", 100, Monday.AddDays(18))],
                new SiteRules { Reliefs = [Relief.OffMatEarly] }
            )
        );

        Assert.Equal(1, result.Waiting[1][21]);
        Assert.Equal(22, result.Batches[0].OnTable);
    }

    // "a" needs two places a tray and finds one: on the mat until Thursday, when it may start on a bench. "b" would fit on the mat from
    // Monday on, but stands behind it in the order until then.
    [Fact]
    public void A_sowing_that_would_fit_does_not_overtake_on_the_mat()
    {
        var result = PlayOnce(
            Scenario([Mat(1), Bench(3), Table(9)], [Batch("a", 20, Monday) with { TrayId = "big" }, Batch("b", 50, Monday)])
        );
        Assert.Equal((3, 3), (result.Batches[0].SownFirst, result.Batches[1].SownFirst));
        Assert.Equal([3, 3, 3, 0], result.Waiting[0][..4]);
        Assert.Equal([0, 0, 0, 1], Held(result, 0, 0, 3));
    }

    // The same on a bench: "a" is given up after the round of day 2, and "b" is sown on day 3.
    [Fact]
    public void A_sowing_that_would_fit_does_not_overtake_on_the_bench()
    {
        var result = PlayOnce(
            Scenario(
                [Bench(1), Table(9)],
                [Batch("a", 20, Monday) with { TrayId = "big" }, Batch("b", 50, Monday.AddDays(1))],
                new SiteRules { SowWaitDays = 9, SowGiveUpDays = 2 },
                [s_unheated]
            )
        );
        Assert.Equal((1, -1), (result.Batches[0].GivenUp, result.Batches[0].SownLast));
        Assert.Equal((0, 3), (result.Batches[1].GivenUp, result.Batches[1].SownFirst));
    }

    // On the very day on which "a" has waited its days for a mat it is refused by the benches too, and so keeps "b", which wants no heat,
    // from the one place.
    [Fact]
    public void From_the_day_it_tries_the_benches_a_refused_sowing_keeps_them_too()
    {
        var result = PlayOnce(
            Scenario(
                [Mat(0), Bench(1), Table(9)],
                [
                    Batch("a", 20, Monday) with
                    {
                        TrayId = "big",
                        SetOut = Monday.AddDays(30),
                    },
                    Batch("b", 50, Monday.AddDays(1), "cool") with
                    {
                        SetOut = Monday.AddDays(35),
                    },
                ],
                new SiteRules { SowWaitDays = 1, SowGiveUpDays = 1 },
                [Crop(), s_unheated with { Id = "cool" }]
            )
        );
        Assert.Equal((1, 2), (result.Batches[0].GivenUp, result.Batches[1].SownFirst));
    }

    // Both are hardened on Monday day 21, the planned date, and one tray a day may be set out: the two of "a" take the hands of days 21 and
    // 22. "b" wants nights of 12 C in the field, which come from the night after day 24 on: of its days of waiting only day 23 is the
    // weather's alone.
    [Fact]
    public void A_day_without_hands_left_is_no_hold()
    {
        var weather = Nights(day => day < 25 ? 10 : 13);
        var result = PlayOnce(
            Scenario(
                [Mat(9), Bench(9), Table(9)],
                [Batch("a", 100, Monday), Batch("b", 50, Monday, "tender")],
                new SiteRules { SetOutTraysADay = 1, ForecastNights = 1 },
                [Crop(), Crop("tender") with { FieldAboveC = 12 }],
                weather
            )
        );
        Assert.Equal((21, 22, 24), (result.Batches[0].OutFirst, result.Batches[0].OutLast, result.Batches[1].OutLast));
        Assert.Equal((0, 1), (result.Batches[0].HoldTrayDays, result.Batches[1].HoldTrayDays));

        // Three days after its date, one of them the weather's: 50 plants, 2 days late.
        Assert.Equal(100, result.Batches[1].LatePlantDays);
    }

    // Grown on Thursday day 17. The nights before days 18 to 22 are too cold for the table, so the rounds of days 17, 18 and 21 hold it,
    // and the weekend goes on as Friday did: five days. Where the table has no place, the weather is not all that keeps it, and on day 22
    // the place is.
    [Theory]
    [InlineData(1, 5, 22)]
    [InlineData(0, 0, -1)]
    public void A_cold_table_holds_only_while_it_has_a_place(int places, int hold, int onTable)
    {
        var result = PlayOnce(
            Scenario(
                [Mat(1), Bench(1), Table(places)],
                [Batch("a", 50, Monday)],
                new SiteRules { ForecastNights = 1 },
                weather: Nights(day => day is >= 18 and <= 22 ? 2 : 10)
            )
        );
        Assert.Equal((hold, onTable), (result.Batches[0].HoldTrayDays, result.Batches[0].OnTable));
        Assert.Equal([0, 0, 0, 0, 0, 1 - places], result.Waiting[2][17..23]);
    }

    // Half of the growth is there on day 10 at 08:00, 7 days after it came up, when "b" finds the bench full: the threshold reached at the
    // instant of the round counts, and the tray makes room at once, though its own date for the table is day 35 - 3 - 3 = 29.
    [Fact]
    public void A_tray_goes_to_the_table_early_at_the_very_hour_of_its_threshold()
    {
        var result = PlayOnce(
            Scenario(
                [Bench(1), Table(4)],
                [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(35) }, Batch("b", 50, Monday.AddDays(10))],
                new SiteRules { Reliefs = [Relief.TableEarly], EarlyTableAt = 0.5 },
                [s_unheated]
            )
        );
        Assert.Equal((10, 10), (result.Batches[0].OnTable, result.Batches[1].SownFirst));
        Assert.Equal([1L], result.ReliefUses);
    }

    // Half are up on day 3 at 08:00. On a mat the tray waits for three in four, at 30 exp(0.2 x 0.6745) = 34.3 degree-days, on day 4; from
    // the dark of a chamber it goes at once. It grows on the mat as on the bench, so it is grown on day 17 either way.
    [Theory]
    [InlineData(false, 4, 17)]
    [InlineData(true, 3, 17)]
    public void A_tray_leaves_a_chamber_as_it_comes_up(bool isChamber, int off, int onTable)
    {
        var mat = Mat(1) with { IsChamber = isChamber, HouseId = isChamber ? null : "main" };
        var result = PlayOnce(
            Scenario(
                [mat, Bench(1), Table(4)],
                [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(20) }],
                crops: [Crop() with { EmergeSigma = 0.2 }]
            )
        );
        Assert.Equal((off, onTable), (result.Batches[0].OffMat, result.Batches[0].OnTable));
    }

    // Up on day 3, but the bench has no place until day 10: it waits seven days in the dark, does not grow, and is grown 14 days later.
    [Fact]
    public void A_tray_that_must_stay_in_a_chamber_does_not_grow()
    {
        var bench = Bench(0) with { Changes = [new PlacesFrom(Monday.AddDays(10), 1)] };
        var batch = Batch("a", 50, Monday) with { SetOut = Monday.AddDays(20) };
        var result = PlayOnce(Scenario([Mat(1) with { IsChamber = true, HouseId = null }, bench, Table(4)], [batch]));
        Assert.Equal((10, 24), (result.Batches[0].OffMat, result.Batches[0].OnTable));
        Assert.Equal(7, result.Waiting[1].Count(waiting => waiting > 0));
    }

    // Up on day 3 at 08:00 and half grown on day 10 at 08:00, when the tray moves to a house at 15 C, where it grows at half the speed: the
    // rest takes 14 days instead of 7, so it is grown on day 24 at 08:00, and goes to the table.
    [Theory]
    [InlineData(0.5, null)]
    [InlineData(null, 7)]
    public void A_tray_finishes_in_a_cooler_house(double? share, int? days)
    {
        var batch = Batch("a", 50, Monday) with
        {
            SetOut = Monday.AddDays(20),
            Finish = ["cool"],
            FinishAt = share,
            FinishAfterDays = days,
        };
        var result = PlayOnce(TwoHouses([Bench(1), Bench(1, "cool", "cool"), Table(4)], [batch]));
        Assert.Equal((10, 24), (result.Batches[0].Finishing, result.Batches[0].OnTable));
    }

    // The one bench in the cool house is taken until day 24: "b", sown two days later, stays where it is, is grown on Saturday, day 19,
    // goes to the table on Monday, and has waited for nothing.
    [Fact]
    public void A_tray_that_finds_no_room_to_finish_stays_and_does_not_wait()
    {
        BatchOrder Cool(string id, int day) => Batch(id, 50, Monday.AddDays(day)) with { SetOut = Monday.AddDays(20), Finish = ["cool"] };
        var result = PlayOnce(TwoHouses([Bench(2), Bench(1, "cool", "cool"), Table(4)], [Cool("a", 0), Cool("b", 2)]));
        Assert.Equal((-1, 21), (result.Batches[1].Finishing, result.Batches[1].OnTable));
        Assert.Equal(0, result.Waiting.Sum(days => days.Sum()));
    }

    private static Scenario TwoHouses(IEnumerable<Space> spaces, IEnumerable<BatchOrder> batches)
    {
        var site = Scenario(spaces, batches, crops: [s_unheated]);
        var cool = site.Houses[0] with { Id = "cool", NightC = 15, DayC = 15, VentC = 15 };
        return site with { Houses = [.. site.Houses, cool] };
    }

    // From day 10 on "b" finds the bench full, and "a", half grown, might go to the table early were it not for the cold nights of days 11
    // to 19. It is grown on day 17, a Thursday, so the weather holds it on days 17 to 20. On the table on Monday, day 21, it has its three
    // nights on day 24 and goes out 10 days late, 6 of them not by the weather: out of time, with the relief as without, which moves
    // nothing.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_weather_holds_no_tray_that_is_not_grown(bool relieved)
    {
        var batch = PlayOnce(
            Scenario(
                [Bench(1), Table(4)],
                [Batch("a", 50, Monday) with { SetOut = Monday.AddDays(14) }, Batch("b", 50, Monday.AddDays(10))],
                new SiteRules { Reliefs = relieved ? [Relief.TableEarly] : [], EarlyTableAt = 0.5 },
                [s_unheated],
                Nights(day => day is >= 11 and <= 19 ? 2 : 10)
            )
        ).Batches[0];
        Assert.Equal((21, 24, 4, 0), (batch.OnTable, batch.OutLast, batch.HoldTrayDays, batch.PlantsInTime));
    }

    // Half are up on day 3 at 08:00, when "b" finds the mat full. Nine in ten, which it takes to leave the mat, are up at 30 exp(0.2 x
    // 1.2816) = 38.8 degree-days: on day 4.
    [Theory]
    [InlineData(0.5, 3)]
    [InlineData(0.6, 4)]
    public void A_tray_leaves_the_mat_early_at_the_very_hour_of_its_threshold(double earlyAt, int day)
    {
        var result = PlayOnce(
            Scenario(
                [Mat(1), Bench(4), Table(4)],
                [Batch("a", 50, Monday), Batch("b", 50, Monday.AddDays(3))],
                new SiteRules { Reliefs = [Relief.OffMatEarly], EarlyOffMatAt = earlyAt },
                [Crop() with { EmergeSigma = 0.2, LeaveMatAt = 0.9 }]
            )
        );
        Assert.Equal((day, day), (result.Batches[0].OffMat, result.Batches[1].SownFirst));
        Assert.Equal([4L - day], result.ReliefUses);
    }

    private static RecordedWeather Nights(Func<int, double> lowest) =>
        new([.. Enumerable.Range(-40, 400).Select(day => new DailyWeather(Monday.AddDays(day), lowest(day), 14, 0))], 2027, "weather.csv");

    // Alike in both dates, they are asked by name, whatever their order in the plan.
    [Fact]
    public void Of_two_batches_with_the_same_dates_the_first_by_name_goes_first()
    {
        var result = PlayOnce(Scenario([Mat(1), Bench(9), Table(9)], [Batch("b", 50, Monday), Batch("a", 50, Monday)]));
        Assert.Equal([3, 0], result.Batches.Select(batch => batch.SownFirst));
    }
}
