using System.Collections.Immutable;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Planning;

/// <summary>What the weather means for a plan, each figure worked out by hand. The season runs from 1 March to 29 June 2027.</summary>
public class ClimateSummaryTests
{
    // One cubic hall: cover 100 m2 at 5 W/m2K, no leak, 500 W a kelvin. At 20 C under a sky of 10 C: 500 x 10 x 24 h = 120 kWh a day.
    private static readonly HouseBody s_body = new()
    {
        Shell = new HouseShell(100, 0, 0, 50, 100, 10),
        Covering = "test",
        UValue = 5,
        AirChanges = 0,
        Transmission = 0.6,
    };

    // The trays sown on 1 March are out on the 22nd and the play ends on 26 April, four weeks after the last could be thrown out and a
    // fortnight: a season that closes on the 20th ends before.
    private static readonly DateOnly s_closes = new(2027, 4, 20);

    private static readonly HouseHeat s_heat = new()
    {
        Fuel = Fuels.Electricity,
        Efficiency = 0.8,
        DesignOutdoorC = -5,
    };

    [Fact]
    public void Fuel_is_added_up_by_month_from_the_first_planned_tray_to_the_closing_of_the_season()
    {
        var need = Assert.Single(ClimateSummary.Of(Plan(house => house with { Body = s_body, Heat = s_heat }, closes: s_closes)).Houses);

        // 150 kWh a day at 80 %, from the sowing on 1 March to 20 April: 31 and 20 days.
        Assert.Equal([new(2027, 3, 1), new(2027, 4, 1)], need.Months.Select(month => month.First));
        Assert.Equal([4650, 3000], need.Months.Select(month => Math.Round(month.Units, 6)));
        Assert.Equal(150 * 51, need.Mean, 1e-6);
        Assert.Equal((need.Mean, need.Mean), (need.Least, need.Most));

        // 500 W a kelvin from -5 C to the warmer set-point.
        Assert.Equal(500 * 25, need.Load!.Value.Watts, 1e-9);
    }

    [Fact]
    public void The_load_is_that_of_the_warmer_set_point()
    {
        var need = Assert.Single(
            ClimateSummary.Of(Plan(house => house with { Body = s_body, Heat = s_heat, NightC = 15, DayC = 20 })).Houses
        );
        Assert.Equal(20, need.Load!.Value.InsideC);
    }

    [Fact]
    public void A_house_is_heated_from_its_opening_date()
    {
        var need = Assert.Single(
            ClimateSummary
                .Of(
                    Plan(
                        house => house with { Body = s_body, Heat = s_heat, Opening = HouseOpening.FromDate, OpensOn = new(2027, 4, 11) },
                        closes: s_closes
                    )
                )
                .Houses
        );

        // 11 to 20 April; its benches take no tray before, and the batch has been out for long.
        Assert.Equal(new DateOnly(2027, 4, 1), need.Months[0].First);
        Assert.Equal(10 * 150, need.Months[0].Units, 1e-6);
    }

    [Fact]
    public void The_fuel_told_beforehand_is_that_of_the_seasons_played()
    {
        // A house open all season, and one opened when needed that takes the fourth tray from 4 March to the 17th: it goes to the table on
        // the 18th. Heated from the 3rd, 15 days of 150 kWh.
        var plan = Plan(house => house with { Body = s_body, Heat = s_heat });
        var scenario = plan.Scenario with
        {
            Batches = [SmallSite.Batch("a", 200, SmallSite.Monday)],
            Houses =
            [
                plan.Scenario.Houses[0],
                plan.Scenario.Houses[0] with
                {
                    Id = "spare",
                    Name = "Spare",
                    Opening = HouseOpening.WhenNeeded,
                },
            ],
            Spaces =
            [
                SmallSite.Mat(4),
                SmallSite.Bench(3),
                SmallSite.Bench(1) with
                {
                    Id = "spare-bench",
                    HouseId = "spare",
                },
                SmallSite.Table(9),
            ],
        };
        var two = SmallSite.Plan(scenario);
        var summary = ClimateSummary.Of(two);
        var played = new SeasonResult();
        new SeasonPlayer(two, scenario.Play.Seed).Play(0, PlaceLimits.AsGiven, played);
        Assert.Equal(15 * 150, summary.Houses[1].Mean, 1e-6);
        Assert.Equal(
            played.HeatWattHours.Select(house => house.Sum() / 800.0),
            summary.Houses.Select(house => Math.Round(house.Mean, 6)) // kWh at 80 %
        );
        Assert.Equal([24.0 * 15], summary.Airs[1].Months.Select(month => month.HeatedHours));
    }

    [Fact]
    public void A_house_without_a_heater_or_a_set_point_is_left_out()
    {
        Assert.Empty(ClimateSummary.Of(Plan(house => house)).Houses);
        Assert.Empty(ClimateSummary.Of(Plan(house => house with { Body = s_body, Heat = s_heat, NightC = null, DayC = null })).Houses);
    }

    [Fact]
    public void Fuel_is_the_mean_of_the_years_of_a_record_with_the_mildest_and_the_coldest()
    {
        var summary = ClimateSummary.Of(
            Plan(house => house with { Body = s_body, Heat = s_heat }, Record((2021, 10), (2022, 0), (2023, 20)), closes: s_closes)
        );
        var need = Assert.Single(summary.Houses);

        // 150 kWh a day at 10 C, twice that at 0 C, none at 20 C.
        Assert.Equal(3, summary.Years);
        Assert.Equal(0, need.Least);
        Assert.Equal(300 * 51, need.Most, 1e-6);
        Assert.Equal(150 * 51, need.Mean, 1e-6);
        Assert.Equal([4650, 3000], need.Months.Select(month => Math.Round(month.Units, 6)));
    }

    [Fact]
    public void A_fixed_year_in_the_middle_of_a_record_is_the_only_one_counted()
    {
        // Frost in the years before and after it.
        var summary = ClimateSummary.Of(Plan(house => house, Record((2021, -5), (2022, 10), (2023, -5)) with { FixedYear = 2022 }));
        Assert.Equal((1, 0), (summary.Frost!.Years, summary.Frost.FrostAfter[0].Hits));
    }

    [Fact]
    public void A_day_holds_where_every_table_holds()
    {
        // A table in the open, in frost, and one in the house that is kept at 20 C: there is always one to go to.
        var plan = Plan(house => house, Record((2021, -2), (2022, -2)));
        ImmutableArray<Space> spaces = [.. plan.Scenario.Spaces, SmallSite.Table(9) with { Id = "inside", HouseId = "main" }];
        var both = plan with
        {
            Scenario = plan.Scenario with { Spaces = spaces },
            Batches = [.. plan.Batches.Select(batch => batch with { Tables = [2, 3] })],
        };
        var holds = ClimateSummary.Of(both).Holds[0];
        Assert.Equal(" main", string.Join(' ', holds.Under));
        Assert.Equal(0, holds.Fortnights[0].Mean);
    }

    [Fact]
    public void Hold_days_of_three_years_have_their_spread()
    {
        // Three days held in the first year, as above, and none in two more: mean 1, variance (4 + 1 + 1) / 2 = 3. To 20 June the season
        // has eight whole fortnights.
        var record = With(Record((2021, 10), (2022, 10), (2023, 10)), new(2021, 3, 10), day => day with { TminC = 4 });
        var holds = ClimateSummary.Of(Plan(house => house, record, closes: new(2027, 6, 20))).Holds[0];
        Assert.Equal(1, holds.Fortnights[0].Mean, 1e-12);
        Assert.Equal(Math.Sqrt(3), holds.Fortnights[0].StandardDeviation, 1e-12);
        Assert.Equal((8, 14), (holds.Fortnights.Length, holds.Fortnights[^1].Days));
    }

    [Fact]
    public void A_fixed_year_is_the_only_one_counted()
    {
        var summary = ClimateSummary.Of(
            Plan(house => house with { Body = s_body, Heat = s_heat }, Record((2021, 10), (2022, 0)) with { FixedYear = 2022 })
        );
        Assert.Equal(1, summary.Years);
        Assert.Equal(1, summary.Frost!.Years);
        Assert.Equal(1, summary.Frost.FrostAfter[^1].Share);
        // 300 kWh a day from 1 March to the end of the play, 57 days.
        Assert.Equal(300 * 57, summary.Houses[0].Mean, 1e-6);
    }

    [Fact]
    public void Thresholds_are_the_distinct_ones_of_the_crops_in_the_plan()
    {
        var thresholds = ClimateSummary.Of(Plan(house => house)).Thresholds;
        Assert.Equal([3, 5], thresholds.Select(threshold => threshold.TemperatureC));
        Assert.Equal("plain", Assert.Single(thresholds[0].ToField));
        Assert.Empty(thresholds[0].ToTable);
        Assert.Equal("plain", Assert.Single(thresholds[1].ToTable));
    }

    [Fact]
    public void Frosts_of_autumn_do_not_count_as_late_ones_of_spring()
    {
        // Ten degrees, a warm week around 1 July, and frost from November on; the season closes at the end of November.
        var record = Record((2021, 10), (2022, 10));
        ImmutableArray<DailyWeather> days =
        [
            .. record.Days.Select(day =>
                (day.Date.Month, day.Date.Day) switch
                {
                    (11 or 12, _) => day with { TminC = -5, TmaxC = -5 },
                    (6, >= 23) or (7, <= 9) => day with { TminC = 15, TmaxC = 15 },
                    _ => day,
                }
            ),
        ];
        var plan = Plan(house => house, record with { Days = days }, closes: new(2027, 11, 30));
        var summary = ClimateSummary.Of(plan);
        Assert.InRange(summary.Frost!.Last, new DateOnly(2027, 6, 23), new DateOnly(2027, 7, 9));
        Assert.Equal(0, summary.Frost.FrostAfter[0].Share);
        Assert.Equal(new DateOnly(2027, 11, 30), summary.Nights!.Last);
        Assert.Equal(1, summary.Nights.FrostAfter[0].Share);

        // A season that closes within 45 days of the warmest is spring to its end.
        var brief = ClimateSummary.Of(Plan(house => house, record with { Days = days }, closes: new(2027, 7, 31)));
        Assert.Equal(new DateOnly(2027, 7, 31), brief.Frost!.Last);
    }

    [Fact]
    public void Hold_days_of_the_table_are_those_with_a_cold_night_in_the_forecast()
    {
        // 10 C but for 4 C on 10 March 2021: below 5 C for the table, not below 3 C for the field. Three forecast nights: held on 7, 8 and
        // 9 March, in one of two years.
        var summary = ClimateSummary.Of(
            Plan(house => house, With(Record((2021, 10), (2022, 10)), new(2021, 3, 10), day => day with { TminC = 4 }))
        );
        Assert.Equal([HoldKind.Table, HoldKind.WetField, HoldKind.Field], summary.Holds.Select(holds => holds.Kind));
        Assert.Equal([5, null, 3], summary.Holds.Select(holds => holds.AboveC));
        Assert.Equal("", Assert.Single(summary.Holds[0].Under));
        Assert.Equal("plain", Assert.Single(summary.Holds[0].Crops));
        var first = summary.Holds[0].Fortnights[0];

        // Three days and none: mean 1.5, variance 2 x 1.5^2.
        Assert.Equal((new DateOnly(2027, 3, 1), 14, 1.5, 2), (first.First, first.Days, first.Mean, first.Years));
        Assert.Equal(Math.Sqrt(4.5), first.StandardDeviation, 1e-12);
        Assert.All(summary.Holds[0].Fortnights.Skip(1), fortnight => Assert.Equal(0, fortnight.Mean));
        Assert.All(summary.Holds[2].Fortnights, fortnight => Assert.Equal(0, fortnight.Mean));

        // 121 days: eight fortnights and nine days.
        Assert.Equal(9, summary.Holds[0].Fortnights.Length);
        Assert.Equal(9, summary.Holds[0].Fortnights[^1].Days);
    }

    [Fact]
    public void A_row_cover_spares_the_hold_it_is_warm_enough_for()
    {
        // One degree of cover makes 5 C of 4 C.
        var plan = Plan(house => house, With(Record((2021, 10), (2022, 10)), new(2021, 3, 10), day => day with { TminC = 4 }));
        var covered = plan with { Scenario = plan.Scenario with { Rules = plan.Scenario.Rules with { CoverGainK = 1 } } };
        Assert.Equal(0, ClimateSummary.Of(covered).Holds[0].Fortnights[0].Mean);
    }

    [Fact]
    public void Rain_holds_the_field_for_two_days()
    {
        // 30 mm on 10 March against a limit of 25 mm: the field is held on 11 and 12 March for every crop, in one year of two, and the
        // table is not.
        var summary = ClimateSummary.Of(
            Plan(house => house, With(Record((2021, 10), (2022, 10)), new(2021, 3, 10), day => day with { RainMm = 30 }))
        );
        Assert.Equal([0, 1, 1], summary.Holds.Select(holds => holds.Fortnights[0].Mean));
    }

    [Fact]
    public void A_table_in_a_house_is_held_by_the_house_s_own_nights()
    {
        // The house is kept at 20 C: frost outdoors holds the field, never the table.
        var plan = Plan(house => house, Record((2021, -2), (2022, -2)));
        var table = plan.Scenario.Spaces[2] with { HouseId = "main" };
        var summary = ClimateSummary.Of(plan with { Scenario = plan.Scenario with { Spaces = plan.Scenario.Spaces.SetItem(2, table) } });
        Assert.Equal("main", Assert.Single(summary.Holds[0].Under));
        Assert.Equal([0, 0, 14], summary.Holds.Select(holds => holds.Fortnights[0].Mean));
    }

    [Fact]
    public void Mats_run_on_the_days_a_tray_is_planned_on_them()
    {
        // 100 plants are two trays on the mat from Monday 1 to Thursday 4 March: three days of 24 hours, 400 W on half the time: 14.4 kWh.
        // 400 W on a circuit of 120 V and 15 A, which may carry 1,440 W.
        var power = new MatPower(400, 0.5, 120, 15, null);
        var need = Assert.Single(ClimateSummary.Of(Powered(power, [SmallSite.Batch("a", 100, SmallSite.Monday)])).Mats);
        Assert.Equal(("mat", 3, 14.4), (need.Space.Id, need.Days, Math.Round(need.KilowattHours, 9)));
        Assert.Equal((400, 1440, true), (need.Circuit!.Value.LoadWatts, need.Circuit.Value.LimitWatts, need.Circuit.Value.IsWithin));

        // Sown on the Tuesday as well, on mats until Friday: four days with a tray on them.
        need = Assert.Single(
            ClimateSummary
                .Of(Powered(power, [SmallSite.Batch("a", 50, SmallSite.Monday), SmallSite.Batch("b", 50, SmallSite.Monday.AddDays(1))]))
                .Mats
        );
        Assert.Equal(4, need.Days);
    }

    [Theory]
    [InlineData(null, 15.0)]
    [InlineData(120.0, null)]
    public void Without_volts_or_amperes_no_circuit_is_checked(double? volts, double? amperes)
    {
        var summary = ClimateSummary.Of(Powered(new MatPower(400, 1, volts, amperes, null), [SmallSite.Batch("a", 100, SmallSite.Monday)]));
        Assert.Null(Assert.Single(summary.Mats).Circuit);
    }

    [Fact]
    public void Only_the_mats_that_trays_stand_on_first_are_on()
    {
        // Both mats suit the crop, and its trays stand on the first; the other has no day.
        var plan = Powered(new MatPower(400, 1, null, null, null), [SmallSite.Batch("a", 100, SmallSite.Monday)]);
        ImmutableArray<Space> spaces =
        [
            .. plan.Scenario.Spaces,
            SmallSite.Mat(4) with
            {
                Id = "spare",
                Power = new MatPower(100, 1, null, null, null),
            },
        ];
        var two = SmallSite.Plan(plan.Scenario with { Spaces = spaces });
        Assert.Equal([("mat", 3), ("spare", 0)], ClimateSummary.Of(two).Mats.Select(mat => (mat.Space.Id, mat.Days)));
    }

    [Fact]
    public void A_house_that_opened_before_the_season_is_heated_from_its_first_day()
    {
        // The season opens on 10 March here, and the batch is sown on Monday 15: 22 days of March at 150 kWh, told from the 10th, and all
        // of April: the play ends on 10 May.
        var plan = Plan(house => house with { Body = s_body, Heat = s_heat, Opening = HouseOpening.FromDate, OpensOn = new(2027, 3, 5) });
        var later = SmallSite.Plan(
            plan.Scenario with
            {
                Window = plan.Scenario.Window with { Opens = new(2027, 3, 10) },
                Batches = [SmallSite.Batch("a", 100, new(2027, 3, 15))],
            }
        );
        var months = Assert.Single(ClimateSummary.Of(later).Houses).Months;
        Assert.Equal((new DateOnly(2027, 3, 10), 22 * 150.0), (months[0].First, Math.Round(months[0].Units, 6)));
        Assert.Equal((new DateOnly(2027, 4, 1), 30 * 150.0), (months[1].First, Math.Round(months[1].Units, 6)));
    }

    [Fact]
    public void Weather_that_is_the_same_every_day_has_no_chances()
    {
        var summary = ClimateSummary.Of(Plan(house => house with { Body = s_body, Heat = s_heat }));
        Assert.Equal(1, summary.Years);
        Assert.Null(summary.Frost);
        Assert.Null(summary.Nights);
        Assert.Empty(summary.Holds);
    }

    [Fact]
    public void A_season_of_more_than_a_year_is_counted_over_its_first_year()
    {
        // 1 March 2027 to 30 June 2028: nights are counted to the day before the anniversary.
        var summary = ClimateSummary.Of(Plan(house => house, Record((2020, 10), (2021, 10), (2022, 10)), closes: new(2028, 6, 30)));
        Assert.Equal(new DateOnly(2028, 2, 28), summary.Nights!.Last);
        Assert.Equal(2, summary.Years);
    }

    [Fact]
    public void Generated_weather_is_counted_over_two_hundred_years()
    {
        var model = new BenchSim.Season.Weather.WeatherNormals
        {
            Source = "invented",
            Months = [.. Enumerable.Repeat(new BenchSim.Season.Weather.MonthNormals(5, 15, 10, 60), 12)],
        }.ToModel();
        var summary = ClimateSummary.Of(
            Plan(house => house with { Body = s_body, Heat = s_heat }, new GeneratedWeather(model, null), s_closes)
        );
        Assert.Equal((200, 200, 200), (summary.Years, summary.Frost!.Years, summary.Holds[0].Fortnights[0].Years));

        // 5 to 15 C about the set-point of 20 C: nearly all days are below it by 10 K in the mean, as at 10 C day and night.
        var need = Assert.Single(summary.Houses);
        Assert.InRange(need.Mean, 0.97 * 150 * 51, 1.03 * 150 * 51);
        Assert.True(need.Least < need.Mean && need.Mean < need.Most);
    }

    [Fact]
    public void Hold_days_of_two_crops_are_told_by_temperature_coldest_first()
    {
        // "a" hardens above 5 and leaves above 3; "b" hardens above 2 and leaves above 1; "c" is as "a". Held at 4 C day and night: "a" and
        // "c" from the table alone.
        var plan = SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(9), SmallSite.Bench(9), SmallSite.Table(9)],
                [
                    SmallSite.Batch("3", 50, SmallSite.Monday, "c"),
                    SmallSite.Batch("1", 50, SmallSite.Monday, "a"),
                    SmallSite.Batch("2", 50, SmallSite.Monday, "b"),
                    SmallSite.Batch("4", 50, SmallSite.Monday, "a"),
                ],
                crops: [SmallSite.Crop("a"), SmallSite.Crop("b") with { TableAboveC = 2, FieldAboveC = 1 }, SmallSite.Crop("c")],
                weather: Record((2021, 4))
            )
        );
        var holds = ClimateSummary.Of(plan).Holds;
        Assert.Equal(
            [
                (HoldKind.Table, 2, "b", 0),
                (HoldKind.Table, 5, "a c", 14),
                (HoldKind.WetField, null, "", 0),
                (HoldKind.Field, 1, "b", 0),
                (HoldKind.Field, 3, "a c", 0),
            ],
            holds.Select(hold => (hold.Kind, hold.AboveC, string.Join(' ', hold.Crops), hold.Fortnights[0].Mean))
        );
        Assert.All(holds, hold => Assert.Equal((0, 1), (hold.Fortnights[0].StandardDeviation, hold.Fortnights[0].Years)));
        Assert.Equal(holds[0].Fortnights[0].First.AddDays(14), holds[0].Fortnights[1].First);
        Assert.Equal(
            [(1, "", "b"), (2, "b", ""), (3, "", "a c"), (5, "a c", "")],
            ClimateSummary
                .Of(plan)
                .Thresholds.Select(each => (each.TemperatureC, string.Join(' ', each.ToTable), string.Join(' ', each.ToField)))
        );
    }

    // Planned for the table on day 17 and the field on day 21. Of one night of forecast, those after the rounds of days 17 to 28 are too
    // cold for the table: 12 of the 14 days. All 14 in one year of two are 7 in the mean, which is not more than half. Under a cover of
    // 3 K the table lets them out; the field, which asks for 3 C in the open, holds on days 21 to 28: 8 of its 14.
    // What is told of is more than the days of hold_warning_days: 7 where the site does not say.
    [Theory]
    [InlineData(29, 0, true, HoldKind.Table, 17, 12)]
    [InlineData(29, 3, true, HoldKind.Field, 21, 8)]
    [InlineData(28, 3, true, null, 0, 0)]
    [InlineData(31, 0, false, null, 0, 0)]
    [InlineData(29, 0, true, HoldKind.Table, 17, 12, 11)]
    [InlineData(29, 0, true, null, 0, 0, 12)]
    [InlineData(28, 3, true, HoldKind.Field, 21, 7, 6)]
    public void A_batch_that_the_weather_holds_on_most_days_from_its_date_is_told(
        int lastCold,
        double cover,
        bool oneYear,
        HoldKind? kind,
        int from,
        double mean,
        int warnedAbove = 7
    )
    {
        var monday = SmallSite.Monday;
        RecordedWeather weather = new(
            [
                .. Enumerable
                    .Range(-40, 730)
                    .Select(day => new DailyWeather(monday.AddDays(day), day >= 18 && day <= lastCold ? 2 : 10, 14, 0)),
            ],
            oneYear ? 2027 : null,
            "weather.csv"
        );
        var plan = SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(9), SmallSite.Bench(9), SmallSite.Table(9)],
                [SmallSite.Batch("a", 50, monday), SmallSite.Batch("b", 50, monday.AddDays(60))],
                new SiteRules
                {
                    ForecastNights = 1,
                    CoverGainK = cover,
                    HoldWarningDays = warnedAbove,
                },
                weather: weather
            )
        );
        Assert.Equal(
            kind is null ? [] : [("a", kind.Value, monday.AddDays(from), 14, mean)],
            ClimateSummary.Of(plan).Held.Select(hold => (hold.Batch.Order.Id, hold.Kind, hold.From, hold.Days, hold.Mean)).ToArray()
        );
    }

    [Fact]
    public void Hold_days_of_one_temperature_are_told_by_table_the_open_one_first()
    {
        // In frost: "a" hardens in the house at 20 C, "b" in the open.
        var plan = SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(9), SmallSite.Bench(9), SmallSite.Table(9), SmallSite.Table(9) with { Id = "inside", HouseId = "main" }],
                [SmallSite.Batch("1", 50, SmallSite.Monday, "a"), SmallSite.Batch("2", 50, SmallSite.Monday, "b")],
                crops: [SmallSite.Crop("a"), SmallSite.Crop("b")],
                weather: Record((2021, -2), (2022, -2))
            )
        );
        var apart = plan with { Batches = [plan.Batches[0] with { Tables = [3] }, plan.Batches[1] with { Tables = [2] }] };
        Assert.Equal(
            [("", "b", 14), ("main", "a", 0)],
            ClimateSummary
                .Of(apart)
                .Holds[..2]
                .Select(hold => (string.Join(' ', hold.Under), string.Join(' ', hold.Crops), hold.Fortnights[0].Mean))
        );
    }

    [Fact]
    public void Electricity_goes_to_the_mat_on_which_trays_can_stand()
    {
        // Sown on 1 March: the first mat's house opens in April, so the second is on, for the three days to the 4th.
        var power = new MatPower(100, 1, null, null, null);
        var site = SmallSite.Scenario(
            [
                SmallSite.Mat(4) with
                {
                    Id = "shut",
                    HouseId = "late",
                    Power = power,
                },
                SmallSite.Mat(4) with
                {
                    Power = power,
                },
                SmallSite.Bench(9),
                SmallSite.Table(9),
            ],
            [SmallSite.Batch("a", 100, SmallSite.Monday)]
        );
        site = site with
        {
            Houses = [.. site.Houses, site.Houses[0] with { Id = "late", Opening = HouseOpening.FromDate, OpensOn = new(2027, 4, 1) }],
        };
        Assert.Equal([0, 3], ClimateSummary.Of(SmallSite.Plan(site)).Mats.Select(mat => mat.Days));
    }

    private static SeasonPlan Powered(MatPower power, ImmutableArray<BatchOrder> orders) =>
        SmallSite.Plan(SmallSite.Scenario([SmallSite.Mat(4) with { Power = power }, SmallSite.Bench(9), SmallSite.Table(9)], orders));

    private static RecordedWeather With(RecordedWeather record, DateOnly date, Func<DailyWeather, DailyWeather> change) =>
        record with
        {
            Days = [.. record.Days.Select(day => day.Date == date ? change(day) : day)],
        };

    private static RecordedWeather Record(params (int Year, double C)[] years) =>
        new(
            [
                .. years.SelectMany(year =>
                    Enumerable
                        .Range(0, new DateOnly(year.Year, 12, 31).DayOfYear)
                        .Select(day => new DailyWeather(new DateOnly(year.Year, 1, 1).AddDays(day), year.C, year.C, 0))
                ),
            ],
            null,
            "record.csv"
        );

    private static SeasonPlan Plan(Func<House, House> change, WeatherInput? weather = null, DateOnly? closes = null)
    {
        var scenario = SmallSite.Scenario(
            [SmallSite.Mat(4), SmallSite.Bench(9), SmallSite.Table(9)],
            [SmallSite.Batch("a", 100, SmallSite.Monday)],
            weather: weather
        );
        var plan = SmallSite.Plan(scenario);
        var window = closes is { } last ? scenario.Window with { Closes = last } : scenario.Window;
        return plan with { Scenario = scenario with { Houses = [.. scenario.Houses.Select(change)], Window = window } };
    }
}
