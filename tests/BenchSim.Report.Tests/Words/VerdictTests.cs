using System.Collections.Immutable;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Words;

/// <summary>What the verdict says, word for word. The Wilson intervals are worked by hand in the comments.</summary>
public partial class VerdictTests
{
    private const string InTime =
        "(In time is at most 3 days after the planned day, days on which only the weather held them back not counted.)";

    private static readonly DateOnly s_fifth = new(2027, 4, 5);

    [Fact]
    public void A_plan_short_of_mats_is_told_so()
    {
        // 340 of 1000: centre (0.34 + 1.92073/1000)/1.0038415 = 0.340613; half 1.959964/1.0038415 *
        // sqrt(0.2244/1000 + 3.84146/4e6) = 0.029312.
        var result = Short();
        var verdict = Verdict.Of(result);

        Assert.False(verdict.Fits);
        Assert.StartsWith(
            "In a usual year 700 of 12,400 plants are late; in one year of ten 1,200 or more. ",
            verdict.Headline,
            StringComparison.Ordinal
        );
        Assert.Equal(
            "The plan fits in 34 % of 1,000 seasons. In most of the rest, trays stood too long without a place to go to.",
            verdict.Chance
        );
        Assert.Equal(
            [
                "The plan fits in 34 % of 1,000 seasons (95 % interval 31.1 to 37 %).",
                "Of the 660 seasons that do not fit, in 400 trays stood too long without a place to go to, in 320 fewer than 95 % of the "
                    + "plants were in time and in 30 a batch was sown too late or not in full; a season can fail in more than one way.",
                "In 610 of the 660 seasons that do not fit, the cause is lack of room: with places without limit the same season "
                    + "would have fitted.",
                "The heat mats run out first: in 94 % of seasons (95 % interval 92.4 to 95.3 %), typically on 5 April (between 1 and "
                    + "11 April in eight seasons of ten); "
                    + "on the worst day of a season, typically 20 April, about 12 trays have no place (8 to 17 in eight seasons of ten).",
                "The hardening table runs out too: in 3 % of seasons (95 % interval 2.1 to 4.3 %), typically on 20 May (between 28 April "
                    + "and 25 May in eight seasons of ten); "
                    + "in most seasons no tray waits, in the worst of them 4 trays found no place on one day.",
                "12,400 plants wanted. In time: typically 11,300 plants (between 10,900 and 12,000 in eight seasons of ten). " + InTime,
                "Out, but late: typically 700 plants (between 300 and 1,200 in eight seasons of ten).",
                "Never out: no plants in most seasons, but 120 or more in one season of ten.",
            ],
            verdict.Sentences.ToArray()
        );
        Assert.Contains(verdict.LeavesOut, sentence => sentence.Contains("overstate", StringComparison.Ordinal));
        Assert.Contains(verdict.LeavesOut, sentence => sentence.Contains("forecast is taken as perfect", StringComparison.Ordinal));
        Assert.Contains(verdict.LeavesOut, sentence =>
            sentence.Contains("tenth to the ninetieth percentile of 1,000 seasons", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void It_says_which_mishaps_are_counted_or_that_none_is()
    {
        var none = Fitting(1000);
        Assert.Contains(
            "No mishap is counted: a night without heat, a missed watering or mice would come on top.",
            Verdict.Of(none).LeavesOut,
            StringComparer.Ordinal
        );
        Mishap[] two =
        [
            new()
            {
                Id = "heater",
                Name = "A night without heat",
                Chance = 0.1,
            },
            new()
            {
                Id = "mice",
                Name = "Mice",
                Chance = 0.25,
            },
        ];
        var some = none with { Plan = none.Plan with { Scenario = none.Plan.Scenario with { Mishaps = [.. two] } } };
        Assert.Contains(
            "Mishaps counted, with their chance a season: A night without heat (10 %), Mice (25 %). Other mishaps would come on top.",
            Verdict.Of(some).LeavesOut,
            StringComparer.Ordinal
        );
    }

    // Two batches of 240 plants, the first with eight seeds a cell, the second with three: all of them kept together.
    [Theory]
    [InlineData(1, 1, "")]
    [InlineData(8, 1, ", of which 240 are clusters of up to 8 seedlings")]
    [InlineData(8, 3, ", all of them clusters of up to 8 seedlings")]
    public void Plants_that_are_clusters_are_called_so(int first, int second, string clusters)
    {
        var none = Fitting(1000);
        BatchPlan Kept(int batch, int seeds) =>
            none.Plan.Batches[batch] with
            {
                Order = none.Plan.Batches[batch].Order with { SeedsPerCell = seeds },
                Crop = none.Plan.Batches[batch].Crop with { KeepPerCell = seeds },
                Flat = null,
            };
        var result = none with { Plan = none.Plan with { Batches = [Kept(0, first), Kept(1, second)] } };
        Assert.Equal(
            $"12,400 plants wanted{clusters}: all are out in time in every one of 1,000 seasons. " + InTime,
            Verdict.Of(result).Sentences[^1]
        );
    }

    [Fact]
    public void A_plan_that_always_fits_is_not_called_certain()
    {
        // 1000 of 1000: low 1000/(1000 + 3.84146) = 0.99617.
        var verdict = Verdict.Of(Fitting(1000));

        Assert.True(verdict.Fits);
        Assert.Equal("No plant is late in any of 1,000 years played.", verdict.Headline);
        Assert.Equal("The plan fits in all 1,000 seasons.", verdict.Chance);
        Assert.Equal(
            [
                "The plan fits in all 1,000 seasons (95 % interval 99.6 to 100 %).",
                "No tray is refused a place in any of the 1,000 seasons.",
                "12,400 plants wanted: all are out in time in every one of 1,000 seasons. " + InTime,
            ],
            verdict.Sentences.ToArray()
        );
    }

    [Fact]
    public void A_plan_that_never_fits_is_not_called_impossible()
    {
        var verdict = Verdict.Of(
            Short() with
            {
                Fits = Figures.Chance(0, 1000),
                FitsWeatherCounted = Figures.Chance(0, 1000),
                Causes = Causes(1000),
            }
        );

        Assert.False(verdict.Fits);
        Assert.Equal(
            "The plan fits in none of 1,000 seasons. In some of the rest, trays stood too long without a place to go to.",
            verdict.Chance
        );
        Assert.Equal("The plan fits in none of 1,000 seasons (95 % interval 0 to 0.4 %).", verdict.Sentences[0]);
        Assert.StartsWith("In 1,000 of the 1,000 seasons that do not fit", verdict.Sentences[2], StringComparison.Ordinal);
    }

    // Wilson's interval of 905 of 1,000 holds 90 %.
    [Theory]
    [InlineData(999, true, "The plan fits in 99.9 % of 1,000 seasons")]
    [InlineData(905, null, "The plan fits in 90.5 % of 1,000 seasons")]
    [InlineData(600, false, "The plan fits in 60 % of 1,000 seasons")]
    [InlineData(1, false, "The plan fits in 0.1 % of 1,000 seasons")]
    public void Whether_it_fits_follows_the_interval(int hits, bool? fits, string chance)
    {
        var verdict = Verdict.Of(Short() with { Fits = Figures.Chance(hits, 1000), FitsWeatherCounted = Figures.Chance(hits, 1000) });

        Assert.Equal(fits, verdict.Fits);
        Assert.StartsWith(chance + ". ", verdict.Chance, StringComparison.Ordinal);
        Assert.StartsWith(chance + " (95 % interval ", verdict.Sentences[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Few_seasons_are_counted_and_called_rough()
    {
        // 3 of 7, Wilson: 0.1582 to 0.7495.
        var verdict = Verdict.Of(SyntheticStudy.Tiny(7) with { Fits = Figures.Chance(3, 7), FitsWeatherCounted = Figures.Chance(3, 7) });

        Assert.False(verdict.Fits);
        Assert.Equal("The plan fits in 3 of 7 seasons (95 % interval 15.8 to 75 %).", verdict.Sentences[0]);
        Assert.Equal(
            "These are only 7 seasons: take every figure as a rough guide, and play at least 30, better 1,000, before deciding "
                + "anything.",
            verdict.Sentences[1]
        );
    }

    [Fact]
    public void One_season_speaks_for_itself_alone()
    {
        var verdict = Verdict.Of(Fitting(1));

        Assert.Null(verdict.Fits);
        Assert.Equal("No plant is late in the one season played.", verdict.Headline);
        Assert.Equal("The plan fits in the one season played.", verdict.Chance);
        Assert.Equal(
            [
                "The plan fits in the one season played.",
                "One season says nothing about another: play at least 30, better 1,000, before deciding anything.",
                "No tray is refused a place in the one season played.",
                "12,400 plants wanted: all are out in time in the one season played. " + InTime,
            ],
            verdict.Sentences.ToArray()
        );
    }

    [Fact]
    public void A_shortage_in_the_wanted_figure_alone_is_told_with_care()
    {
        var result = Fitting(1000);
        var groups = result.Groups.SetItem(1, result.Groups[1] with { Shortage = Estimate(6, 2, 9, 0, 12) });

        Assert.Contains(
            "Yet with places without limit the plan would use more of the benches than there are: the largest shortage is "
                + "typically 6 places (between 2 and 9 in eight seasons of ten). The trays find room by other ways here, so none "
                + "waits; keep an eye on it.",
            Verdict.Of(result with { Groups = groups }).Sentences,
            StringComparer.Ordinal
        );
    }

    [Fact]
    public void The_first_to_run_out_is_not_the_odd_early_season()
    {
        // The tables run out earlier in the year, but in 30 seasons against 940: the mats come first.
        var result = Short();
        var table = result.Groups[2] with { RunsOutOn = new DateSpread(new(2027, 2, 10), new(2027, 2, 10), new(2027, 2, 10), 30, 1000) };

        Assert.StartsWith(
            "The heat mats run out first",
            Verdict.Of(result with { Groups = result.Groups.SetItem(2, table) }).Sentences[3],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_site_without_mats_is_told_that_it_has_none()
    {
        var result = Short();
        var mats = result.Groups[0] with { Places = [.. result.Groups[0].Places.Select(_ => 0)] };

        Assert.StartsWith(
            "The site has no heat mat places, but trays ask for them: in 94 % of " + "seasons",
            Verdict.Of(result with { Groups = result.Groups.SetItem(0, mats) }).Sentences[3],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void One_tray_has_no_place()
    {
        var result = Short();
        var mats = result.Groups[0] with { WorstWaiting = Estimate(1, 1, 3, 0, 4) };

        Assert.Contains(
            "about 1 tray has no place (1 to 3 in eight seasons of ten)",
            Verdict.Of(result with { Groups = result.Groups.SetItem(0, mats) }).Sentences[3],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Where_a_tray_takes_more_than_one_place_places_are_counted()
    {
        var result = Short();
        var scenario = result.Plan.Scenario with { TrayTypes = [result.Plan.Scenario.TrayTypes[0] with { PlacesEach = 2 }] };

        Assert.Contains(
            "about 12 places are missing (8 to 17",
            Verdict.Of(result with { Plan = result.Plan with { Scenario = scenario } }).Sentences[3],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Two_causes_as_frequent_are_both_named()
    {
        var causes = Causes(330).SetItem(Cause.Germination, 330);

        Assert.Equal(
            "In 330 of the 660 seasons that do not fit, the cause is lack of room: with places without limit the same season would "
                + "have fitted. As often, the cause is loss of plants: even with room for all, too few come up or live.",
            Verdict.Of(Short() with { Causes = causes }).Sentences[2]
        );
    }

    [Fact]
    public void Weather_counted_is_told_where_it_differs() =>
        Assert.Contains(
            "Counting also the days on which only the weather held trays back, it fits in 30 % of 1,000 seasons (95 % interval 27.2 "
                + "to 32.9 %).",
            Verdict.Of(Short() with { FitsWeatherCounted = Figures.Chance(300, 1000) }).Sentences,
            StringComparer.Ordinal
        );

    [Fact]
    public void Reliefs_in_force_are_named_in_their_order()
    {
        var result = Short();
        var scenario = result.Plan.Scenario with { Rules = new SiteRules { Reliefs = [Relief.TableEarly, Relief.Aisle] } };
        var verdict = Verdict.Of(result with { Plan = result.Plan with { Scenario = scenario } });

        Assert.Equal(
            "Ways of making room in force, in this order: take trays to the table early, stand trays in the aisle. The report "
                + "counts each use.",
            verdict.LeavesOut[0]
        );
    }

    [Fact]
    public void Generated_weather_is_said_to_vary_less_than_real_weather()
    {
        string[] LeftOut(WeatherInput weather)
        {
            var result = Short();
            return
            [
                .. Verdict
                    .Of(result with { Plan = result.Plan with { Scenario = result.Plan.Scenario with { Weather = weather } } })
                    .LeavesOut,
            ];
        }

        const string less = "differ somewhat less from one another than real ones";
        const string record = "its years differ as those of the record do";
        Assert.Contains(LeftOut(SyntheticHeat.Normals("site.toml")), sentence => sentence.Contains(less, StringComparison.Ordinal));
        Assert.Contains(LeftOut(SyntheticHeat.Weather("weather.csv", 4)), sentence => sentence.Contains(record, StringComparison.Ordinal));
        Assert.Contains(LeftOut(SyntheticHeat.Weather("weather.csv", 4)), sentence =>
            sentence.Contains("4.0 years of record, which is short", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(LeftOut(SyntheticHeat.Weather("weather.csv", 12)), sentence =>
            sentence.Contains("short", StringComparison.Ordinal)
        );
        Assert.Contains(LeftOut(SyntheticHeat.Normals("site.toml")), sentence =>
            sentence.Contains("monthly normals", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(LeftOut(new RecordedWeather([], null, "weather.csv")), sentence =>
            sentence.Contains(less, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Dates_carry_the_year_where_the_play_runs_into_a_second_one()
    {
        var result = Short();
        var verdict = Verdict.Of(result with { Plan = result.Plan with { Days = 400 } });

        Assert.Contains(
            "typically on 5 April 2027 (between 1 and 11 April 2027 in eight seasons of " + "ten)",
            verdict.Sentences[3],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void No_result_is_a_fault() => Assert.Throws<ArgumentNullException>(() => Verdict.Of(null!));

    /// <summary>1,000 seasons, mats short in April.</summary>
    private static StudyResult Short()
    {
        var result = Fitting(1000);
        return result with
        {
            Fits = Figures.Chance(340, 1000),
            FitsWeatherCounted = Figures.Chance(340, 1000),
            SownTooLate = Figures.Chance(30, 1000),
            OverHeldForPlace = Figures.Chance(400, 1000),
            TooFewInTime = Figures.Chance(320, 1000),
            Causes = Causes(610),
            PlantsInTime = Estimate(11300, 10900, 12000, 9000, 12400),
            PlantsLate = Estimate(700, 300, 1200, 0, 3000),
            PlantsShort = Estimate(0, 0, 120, 0, 500),
            Groups =
            [
                result.Groups[0] with
                {
                    RunsOut = Figures.Chance(940, 1000),
                    RunsOutOn = new DateSpread(new(2027, 4, 1), s_fifth, new(2027, 4, 11), 940, 1000),
                    Shortage = Estimate(12, 8, 17, 0, 25),
                    WorstWaiting = Estimate(12, 8, 17, 0, 25),
                    WorstWaitingOn = new DateSpread(new(2027, 4, 14), new(2027, 4, 20), new(2027, 4, 22), 940, 1000),
                },
                result.Groups[1],
                result.Groups[2] with
                {
                    RunsOut = Figures.Chance(30, 1000),
                    RunsOutOn = new DateSpread(new(2027, 4, 28), new(2027, 5, 20), new(2027, 5, 25), 30, 1000),
                    Shortage = Estimate(0, 0, 0, 0, 4),
                    WorstWaiting = Estimate(0, 0, 0, 0, 4),
                    WorstWaitingOn = new DateSpread(new(2027, 4, 29), new(2027, 5, 22), new(2027, 5, 25), 30, 1000),
                },
            ],
        };
    }

    /// <summary>Nothing waits, nothing is late.</summary>
    private static StudyResult Fitting(int seasons)
    {
        var result = SyntheticStudy.Tiny();
        var none = Estimate(0, 0, 0, 0, 0) with { Seasons = seasons };
        return result with
        {
            Seasons = seasons,
            Fits = Figures.Chance(seasons, seasons),
            FitsWeatherCounted = Figures.Chance(seasons, seasons),
            SownTooLate = Figures.Chance(0, seasons),
            OverHeldForPlace = Figures.Chance(0, seasons),
            TooFewInTime = Figures.Chance(0, seasons),
            Causes = Causes(0),
            PlantsWanted = 12400,
            PlantsInTime = Estimate(12400, 12400, 12400, 12400, 12400),
            PlantsLate = none,
            PlantsShort = none,
            Discarded = none,
            StillStanding = none,
            PlantsLostToMishaps = none,
            Groups =
            [
                .. result.Groups.Select(group =>
                    group with
                    {
                        RunsOut = Figures.Chance(0, seasons),
                        RunsOutOn = new(null, null, null, 0, seasons),
                        Shortage = none,
                        WorstWaiting = none,
                        WorstWaitingOn = new(null, null, null, 0, seasons),
                    }
                ),
            ],
        };
    }

    private static ImmutableSortedDictionary<Cause, int> Causes(int place) =>
        ImmutableSortedDictionary.CreateRange(
            new Dictionary<Cause, int>
            {
                [Cause.Place] = place,
                [Cause.ThrownOut] = 0,
                [Cause.Germination] = 0,
                [Cause.SlowGrowth] = 0,
                [Cause.Hold] = 0,
            }
        );

    private static Estimate Estimate(double p50, double p10, double p90, double least, double most) =>
        new(p50, 1, p10, p50, p90, p90, least, most, 1000);
}
