using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Seed;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Planning;

/// <summary>What is said of a plan that is no fault, each at the edge where it begins.</summary>
public class PlanWarningsTests
{
    // A factor below 1 where it does not matter: the dark days are told of in tests of their own.
    private static readonly SiteRules Dim = new() { Light = new SiteRules().Light.SetItem(11, 0.5) };

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

    // Five trays sown on 8 March: mats of 4 places that have 60 from the 1st on, of 60 that have 4 from then on, or of 60 in a house that opens later.
    [Theory]
    [InlineData(4, 60, false, null)]
    [InlineData(60, 4, false, 4)]
    [InlineData(60, 60, true, 0)]
    public void The_places_are_those_of_the_day_of_sowing(int places, int later, bool opensLate, int? said)
    {
        var mat = Mat(places) with { Changes = [new PlacesFrom(Monday, later)] };
        var site = Scenario([mat, Bench(90), Table(90)], [Batch("a", 250, Monday.AddDays(7))], Dim);
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
        Assert.Empty(Warnings([order], tomato, Dim with { SeedStorage = new SeedStorage(8, 10) }));
        Assert.Single(Warnings([order], tomato));

        // No constants are known for this one.
        Assert.Single(Warnings([order with { CropId = "plain" }], rules: Dim with { SeedStorage = new SeedStorage(8, 10) }));
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

    // Every day is alike. "plain" wants nights of 5 C on the table and, here, 6 C for the field; more than 25 mm of rain in two days is too wet.
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
            Dim with
            {
                CoverGainK = cover,
            },
            [Crop() with { FieldAboveC = 6 }],
            new ConstantWeather(nights, 20, rain)
        );
        string[] said = why is null ? [] : [$"no tray of \"plain\" ever goes out: {why}"];
        Assert.Equal(said, Plan(site).Warnings.Select(warning => warning.What).ToArray());
    }

    // Where no night ahead is looked at, trays do go to the table; but no night there hardens them.
    [Theory]
    [InlineData(3, 1)]
    [InlineData(0, 0)]
    public void Nights_that_are_not_looked_at_harden_nothing_all_the_same(int hardeningNights, int warnings)
    {
        var site = Scenario(
            [Mat(4), Bench(90), Table(90)],
            [Batch("a", 50, Monday)],
            Dim with
            {
                ForecastNights = 0,
            },
            [Crop() with { HardeningNights = hardeningNights }],
            new ConstantWeather(4, 20, 0)
        );
        Assert.Equal(
            warnings,
            Plan(site)
                .Warnings.Count(warning => warning.What.Contains("every night on the hardening table is colder", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void One_table_that_is_warm_enough_lets_trays_out_of_the_house()
    {
        // 4 C in the open, 20 C on a table in the house: only the field, at 6 C, keeps them.
        var site = Scenario(
            [Mat(4), Bench(90), Table(90), Table(90) with { Id = "inside", HouseId = "main" }],
            [Batch("a", 50, Monday)],
            Dim,
            [Crop() with { FieldAboveC = 6 }],
            new ConstantWeather(4, 20, 0)
        );
        Assert.Contains(
            "it goes to the field only where nights have 6 C or more",
            Assert.Single(Plan(site).Warnings).What,
            StringComparison.Ordinal
        );
    }

    private static string[] Warnings(ImmutableArray<BatchOrder> orders, Crop? crop = null, SiteRules? rules = null) =>
        [.. Plan(Site(orders, crop ?? Crop(), rules ?? Dim)).Warnings.Select(warning => warning.What)];

    private static Scenario Site(ImmutableArray<BatchOrder> orders, Crop crop, SiteRules rules) =>
        Scenario([Mat(4), Bench(90), Table(90)], orders, rules, crop.Id == "plain" ? [crop] : [crop, Crop()]);
}
