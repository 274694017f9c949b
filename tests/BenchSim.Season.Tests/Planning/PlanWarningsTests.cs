using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Seed;
using BenchSim.Season.Values;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Planning;

/// <summary>What is said of a plan that is no fault, each at the edge where it begins.</summary>
public class PlanWarningsTests
{
    // A factor below 1 where it does not matter: the dark days are told of in tests of their own.
    private static readonly SiteRules s_dim = new() { Light = new SiteRules().Light.SetItem(11, 0.5) };

    // 1 March 2027 is a Monday; Monday to Friday are worked. A tray sown on Saturday the 6th is sown on Monday the 8th, and one wanted on
    // Saturday 3 April goes out from Monday the 5th on, or on Friday the 2nd where it may go a day early.
    [Fact]
    public void A_date_that_is_not_worked_is_said_with_the_day_on_which_it_happens()
    {
        var order = Batch("a", 50, Monday.AddDays(5)) with { SetOut = Monday.AddDays(33) };
        Assert.Equal(
            [
                "batch \"a\" is to be sown on Saturday 2027-03-06, which is not a work day: it is sown on Monday 2027-03-08",
                "batch \"a\" is to be set out on Saturday 2027-04-03, which is not a work day: its trays go out on Monday 2027-04-05 at "
                    + "the earliest",
            ],
            Warnings([order])
        );
        Assert.EndsWith(
            "its trays go out on Friday 2027-04-02 at the earliest",
            Warnings([order], rules: s_dim with { SetOutEarlyDays = 1 })[1],
            StringComparison.Ordinal
        );
        Assert.Empty(Warnings([Batch("a", 50, Monday) with { SetOut = Monday.AddDays(28) }]));
    }

    // Four mat places. A two-place tray of 20 cells; flats of 200 seeds, every one of which comes.
    [Theory]
    [InlineData(200, "50", 0)]
    [InlineData(201, "50", 5)]
    [InlineData(40, "big", 0)]
    [InlineData(41, "big", 6)]
    public void More_trays_than_the_mats_have_places_for(int plants, string tray, int wanted)
    {
        var warnings = Warnings([Batch("a", plants, Monday) with { TrayId = tray }]);
        Assert.Equal(
            wanted == 0 ? [] : [$"batch \"a\" wants {wanted} mat places and its mats have 4: it cannot be sown in one go"],
            warnings
        );
    }

    // Five trays sown on 8 March: mats of 4 places that have 60 from the 1st on, of 60 that have 4 from then on, or of 60 in a house that
    // opens later.
    [Theory]
    [InlineData(4, 60, false, null)]
    [InlineData(60, 4, false, 4)]
    [InlineData(60, 60, true, 0)]
    public void The_places_are_those_of_the_day_of_sowing(int places, int later, bool opensLate, int? said)
    {
        var mat = Mat(places) with { Changes = [new PlacesFrom(Monday, later)] };
        var site = Scenario([mat, Bench(90), Table(90)], [Batch("a", 250, Monday.AddDays(7))], s_dim);
        var plan = Plan(
            opensLate
                ? site with
                {
                    Houses = [site.Houses[0] with { Opening = HouseOpening.FromDate, OpensOn = Monday.AddDays(30) }],
                }
                : site
        );
        Assert.Equal(
            said is null ? null : $"batch \"a\" wants 5 mat places and its mats have {said}: it cannot be sown in one go",
            plan.Warnings.Select(warning => warning.What).SingleOrDefault(what => what.Contains("mat places", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void For_a_batch_potted_up_the_flats_count()
    {
        // 1,000 plants are 20 trays and, of 200 seeds each, 5 flats.
        Assert.StartsWith(
            "batch \"a\" wants 5 mat places",
            Assert.Single(Warnings([PotUpBatch("a", 1000, Monday)])),
            StringComparison.Ordinal
        );
        Assert.Empty(Warnings([PotUpBatch("a", 800, Monday)]));
    }

    [Fact]
    public void The_flats_places_count_and_not_those_of_the_trays_they_fill()
    {
        // Five flats of one place each, for trays of two places.
        var warning = Assert.Single(Warnings([PotUpBatch("a", 1000, Monday) with { TrayId = "big" }]));
        Assert.StartsWith("batch \"a\" wants 5 mat places", warning, StringComparison.Ordinal);
    }

    [Fact]
    public void One_batch_in_the_dark_is_enough() =>
        Assert.Single(Warnings([Batch("a", 50, Monday), Batch("b", 50, new DateOnly(2027, 4, 12))], rules: new SiteRules()));

    [Fact]
    public void Without_bottom_heat_no_mat_is_too_small() =>
        Assert.Empty(Warnings([Batch("a", 300, Monday)], Crop() with { BottomHeat = false }));

    // Sown on 1 March 2027.
    [Theory]
    [InlineData("2026-03-01", 0)]
    [InlineData("2026-02-28", 1)]
    [InlineData(null, 0)]
    public void A_test_of_more_than_a_year_ago(string? tested, int warnings)
    {
        var order = Batch("a", 50, Monday) with { TestedOn = tested is null ? null : DateOnly.Parse(tested) };
        Assert.Equal(warnings, Warnings([order]).Length);
    }

    [Fact]
    public void An_old_test_is_fine_where_the_seed_is_aged()
    {
        var (tomato, order) = (
            Crop("tomato"),
            Batch("a", 50, Monday, "tomato") with
            {
                TestedOn = new DateOnly(2025, 1, 1),
                Germination = 0.9,
            }
        );
        Assert.Empty(Warnings([order], tomato, s_dim with { SeedStorage = new SeedStorage(8, 10) }));
        Assert.Single(Warnings([order], tomato));

        // No constants are known for this one.
        Assert.Single(Warnings([order with { CropId = "plain" }], rules: s_dim with { SeedStorage = new SeedStorage(8, 10) }));
    }

    // The season closes on 29 June.
    [Theory]
    [InlineData(29, 0)]
    [InlineData(30, 1)]
    public void Set_out_after_the_season_closes(int june, int warnings)
    {
        var order = Batch("a", 50, null) with { SetOut = new DateOnly(2027, 6, june) };
        Assert.Equal(
            warnings,
            Warnings([order]).Count(warning => warning.Contains("after the season closes on 2027-06-29", StringComparison.Ordinal))
        );
    }

    // Up three days after sowing: on Sunday 14 and on Monday 15 March.
    [Theory]
    [InlineData(11, 1)]
    [InlineData(12, 0)]
    public void Seedlings_before_mid_March(int sow, int warnings)
    {
        SiteRules bright = new();
        Assert.Equal(warnings, Warnings([Batch("a", 50, new DateOnly(2027, 3, sow))], rules: bright).Length);
        Assert.Empty(Warnings([Batch("a", 50, new DateOnly(2027, 3, sow))], rules: bright with { Light = bright.Light.SetItem(0, 0.9) }));
    }

    [Fact]
    public void Seedlings_before_mid_March_in_a_season_that_opened_the_year_before()
    {
        var site = Site([Batch("a", 50, new DateOnly(2027, 1, 11))], Crop(), new SiteRules());
        var plan = Plan(site with { Window = new SeasonWindow(new DateOnly(2026, 10, 1), new DateOnly(2027, 6, 29)) });
        Assert.Contains("before mid-March", Assert.Single(plan.Warnings).What, StringComparison.Ordinal);
    }

    // Every day is alike. "plain" wants nights of 5 C on the table and, here, 6 C for the field; more than 25 mm of rain in two days is too
    // wet.
    [Theory]
    [InlineData(6, 12.5, 0, null)]
    [InlineData(5, 12.5, 0, "every night has 5 C, and it goes to the field only where nights have 6 C or more")]
    [InlineData(5, 12.6, 0, "the field is too wet every day")]
    [InlineData(4, 12.6, 0, "every night on the hardening table is colder than the 5 C that it wants there")]
    [InlineData(4, 0, 1, "every night has 4 C, and it goes to the field only where nights have 6 C or more")]
    public void What_the_same_weather_every_day_keeps_back_it_keeps_back_for_ever(double nights, double rain, double cover, string? why)
    {
        var site = Scenario(
            [Mat(4), Bench(90), Table(90)],
            [Batch("a", 50, Monday), Batch("b", 50, Monday.AddDays(7))],
            s_dim with
            {
                CoverGainK = cover,
            },
            [Crop() with { FieldAboveC = 6 }],
            new ConstantWeather(nights, 20, rain)
        );
        string[] said = why is null ? [] : [$"no tray of \"plain\" ever goes out: {why}"];
        Assert.Equal(said, Plan(site).Warnings.Select(warning => warning.What).ToArray());
    }

    // Under a row cover of 1 K, nights of 5 C have the 6 C that the field wants; the crop is told of once for each cover that keeps it.
    [Fact]
    public void The_cover_of_the_field_lets_trays_out()
    {
        var site = Scenario(
            [Mat(4), Bench(90), Table(90)],
            [
                Batch("a", 50, Monday),
                Batch("b", 50, Monday) with
                {
                    FieldCover = FieldCover.RowCover,
                },
                Batch("c", 50, Monday) with
                {
                    FieldCover = FieldCover.LowTunnel,
                },
                Batch("d", 50, Monday),
            ],
            s_dim with
            {
                RowCoverGainK = 1,
                LowTunnelGainK = 0.5,
            },
            [Crop() with { FieldAboveC = 6 }],
            new ConstantWeather(5, 20, 0)
        );
        Assert.Equal(
            [
                "no tray of \"plain\" ever goes out: every night has 5 C, and it goes to the field only where nights have 6 C or more",
                "no tray of \"plain\" ever goes out: every night has 5.5 C under its low tunnel, "
                    + "and it goes to the field only where nights have 6 C or more",
            ],
            Plan(site).Warnings.Select(warning => warning.What).ToArray()
        );
    }

    // Where no night ahead is looked at, trays do go to the table; but they are carried in every night.
    [Theory]
    [InlineData(3, 1)]
    [InlineData(0, 0)]
    public void Nights_for_which_trays_are_carried_in_harden_nothing(int hardeningNights, int warnings)
    {
        var site = Scenario(
            [Mat(4), Bench(90), Table(90)],
            [Batch("a", 50, Monday)],
            s_dim with
            {
                ForecastNights = 0,
            },
            [Crop() with { HardeningNights = hardeningNights, FieldAboveC = -1 }],
            new ConstantWeather(-1, 20, 0)
        );
        Assert.Equal(
            warnings,
            Plan(site)
                .Warnings.Count(warning =>
                    warning.What.Contains(
                        "trays are carried in for every night on the hardening table, which is colder than 0 C",
                        StringComparison.Ordinal
                    )
                )
        );
    }

    [Fact]
    public void One_table_that_is_warm_enough_lets_trays_out_of_the_house()
    {
        // 4 C in the open, 20 C on a table in the house: only the field, at 6 C, keeps them.
        var site = Scenario(
            [Mat(4), Bench(90), Table(90), Table(90) with { Id = "inside", HouseId = "main" }],
            [Batch("a", 50, Monday)],
            s_dim,
            [Crop() with { FieldAboveC = 6 }],
            new ConstantWeather(4, 20, 0)
        );
        Assert.Contains(
            "it goes to the field only where nights have 6 C or more",
            Assert.Single(Plan(site).Warnings).What,
            StringComparison.Ordinal
        );
    }

    // Base 10, optimum 30, level to 32, ceiling 40, 100 degree-days: at 32 C 100 / 20 = 5 days; at 36 C 20 x 4 / 8 = 10 a day, 10 days.
    [Theory]
    [InlineData(32.0, null)]
    [InlineData(
        36.0,
        "mat \"mat\" is set to 36 C, and \"plain\" comes up fastest up to 32 C: half the seedlings take 10.0 days on that mat, "
            + "against 5.0 days at 32 C"
    )]
    [InlineData(
        40.0,
        "mat \"mat\" is set to 40 C, and \"plain\" comes up fastest up to 32 C: nothing comes up on that mat, against 5.0 days at 32 C"
    )]
    public void A_mat_above_the_plateau_of_a_crop(double matC, string? said)
    {
        var crop = Crop() with
        {
            EmergeBaseC = 10,
            EmergeOptimumC = 30,
            WrittenEmergePlateauC = 32,
            EmergeCeilingC = 40,
            EmergeHeat = 100,
            MaxMatC = null,
        };
        var site = Scenario(
            [Mat(90) with { MatC = matC }, Bench(90), Table(90)],
            [Batch("a", 10, Monday), Batch("b", 10, Monday)],
            s_dim,
            [crop]
        );
        var warnings = ImmutableArray.CreateBuilder<Fault>();

        // Planned on a mat that suits it, so that a mat on which nothing comes up is told of too.
        PlanWarnings.Add(site, Plan(site with { Spaces = site.Spaces.SetItem(0, Mat(90) with { MatC = 30 }) }).Batches, warnings);
        string[] told = [.. warnings.Select(warning => warning.What).Where(what => what.StartsWith("mat ", StringComparison.Ordinal))];
        Assert.Equal(said, told.SingleOrDefault());
    }

    // By hand, in the house of SmallSite at 20 C with every month's light full: up in 3 days, on Thursday 4 March. The library's row is of
    // 25 C, 15 degrees above the base: 14 x 15 = 210 degree-days are 21 days of 10, grown on Thursday 25 March, hardened in 3 nights on
    // Sunday, out on Monday 29 March: 28 days, 4 weeks, more than 3 and a half. Growth and the day off: 29 - 3 - 4 = 22 days for 14.
    // With rows of 15 C 14 x 5 = 70 degree-days are 7 days: grown on 11 March, out on Monday the 15th: 14 days, 2 weeks; 8 days for 14.
    // With five days in hand the first is to go out on the first work day from 3 April on, Monday the 5th: 35 days, 7 days in hand.
    [Theory]
    [InlineData(25, 3.0, 3.5, 0, null)]
    [InlineData(
        25,
        2.0,
        3.0,
        0,
        "batch \"a\" is planned to stand 4.0 weeks from sowing to setting out, and growers publish 2 to 3 for \"plain\": longer "
            + "by a house cooler than the published 25 C (8 days)"
    )]
    [InlineData(
        25,
        2.0,
        3.0,
        5,
        "batch \"a\" is planned to stand 5.0 weeks from sowing to setting out, and growers publish 2 to 3 for \"plain\": longer "
            + "by a house cooler than the published 25 C (8 days), days in hand after it is ready (7 days)"
    )]
    [InlineData(
        15,
        3.0,
        4.0,
        0,
        "batch \"a\" is planned to stand 2.0 weeks from sowing to setting out, and growers publish 3 to 4 for \"plain\": "
            + "shorter by a house warmer than the published 15 C (6 days)"
    )]
    public void Planned_weeks_outside_the_published_ones(double referenceC, double least, double most, int slack, string? said)
    {
        var crop = Crop() with { ReferenceC = referenceC, WeeksMin = least, WeeksMax = most };
        Assert.Equal(said, Warnings([Batch("a", 10, Monday)], crop, s_dim with { SlackDays = slack }).SingleOrDefault());
    }

    // At half the light 14 days of growth are 28: up on 4 March, grown on 1 April, hardened on Sunday, out on Monday 5 April, 35 days; of
    // the 29 days with the Sunday, half are lost. The second sowing, a week later, takes as long: one sentence for the crop, of the first
    // that stands longest.
    [Fact]
    public void Short_days_are_told_of_once_for_a_crop()
    {
        var crop = Crop() with { WeeksMin = 2, WeeksMax = 3 };
        var half = s_dim with { Light = [.. Enumerable.Repeat(0.5, 12)] };
        Assert.Equal(
            [
                "batch \"a\" is planned to stand 5.0 weeks from sowing to setting out, and growers publish 2 to 3 for \"plain\" (so does "
                    + "one more batch): longer by short days (15 days)",
            ],
            Warnings([Batch("a", 10, Monday), Batch("b", 10, Monday.AddDays(7))], crop, half)
        );
    }

    // Counted from coming up and without hardening: of the 28 days above 3 and 3 nights are not counted, and 22 days are 3.1 weeks.
    [Fact]
    public void Published_weeks_are_counted_as_days_to_ready_is()
    {
        var crop = Crop() with
        {
            ReferenceC = 25,
            WeeksMin = 1,
            WeeksMax = 2,
            DaysToReady = new WrittenDays(14, FromSowing: false, WithHardening: false),
        };
        Assert.StartsWith(
            "batch \"a\" is planned to stand 3.1 weeks from coming up to field size, and growers publish 1 to 2",
            Assert.Single(Warnings([Batch("a", 10, Monday)], crop)),
            StringComparison.Ordinal
        );
    }

    private static string[] Warnings(ImmutableArray<BatchOrder> orders, Crop? crop = null, SiteRules? rules = null) =>
        [.. Plan(Site(orders, crop ?? Crop(), rules ?? s_dim)).Warnings.Select(warning => warning.What)];

    private static Scenario Site(ImmutableArray<BatchOrder> orders, Crop crop, SiteRules rules) =>
        Scenario([Mat(4), Bench(90), Table(90)], orders, rules, crop.Id == "plain" ? [crop] : [crop, Crop()]);
}
