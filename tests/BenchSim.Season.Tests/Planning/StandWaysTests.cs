using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Stands;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Planning;

/// <summary>The ways to a stand, by hand: trays of 50 cells and 3.5 litres of mix.</summary>
public class StandWaysTests
{
    private static readonly SiteRules s_rules = new()
    {
        Prices = new Prices
        {
            ThousandSeeds = 10,
            MixLitre = 0.2,
            LabourHour = 30,
        },
        Minutes = new WorkMinutes { Sow = 6 },
        Mix = new PottingMix { Settling = 0.3 },
    };

    [Fact]
    public void Four_ways_with_trays_seeds_chance_and_cost()
    {
        // Seed of which all comes: 100 plants are two trays, at one seed a cell or two. A tray takes 3.5 litres, 5 loose where
        // 30 % is lost, 5 x 0.20 = 1.00 of mix, and 6 minutes of 30 an hour, 3.00; a hundred seeds cost 1.00.
        var ways = Ways(Batch("a", 100, Monday));
        Assert.Equal(
            [
                ("as planned", 2, 1, 100, 9),
                ("one seed a cell", 2, 1, 100, 9),
                ("two seeds a cell and thin", 2, 2, 200, 10),
                ("an extra tray", 3, 1, 150, 13.5),
            ],
            ways.Select(way => (way.What, way.Trays, way.SeedsPerCell, way.Seeds, Math.Round(way.Cost!.Value, 9)))
        );
        Assert.All(ways, way => Assert.Equal(1, way.Chance));

        // A price of its own: 30 a thousand.
        Assert.Equal(3 + 8, Ways(Batch("a", 100, Monday) with { ThousandSeeds = 30 })[0].Cost!.Value, 1e-9);
    }

    // A tray of 50 cells: with 2 s a seed 100 s, 1.20 s a cell 60 s, so 160 s at 30 an hour, 1.3333 a tray; two seeds a cell take 260 s to
    // sow and 50 x 0.8 = 40 s to thin, 300 s, 2.50 a tray.
    [Fact]
    public void Seconds_a_seed_and_a_cell_count_in_the_cost()
    {
        var rules = s_rules with
        {
            Seconds = new WorkSeconds
            {
                SowSeed = 2,
                SowCell = 1.2,
                ThinCell = 0.8,
            },
        };
        var ways = Ways(Batch("a", 100, Monday), rules);
        Assert.Equal((9 + (2 * 4 / 3.0), 10 + 5), (ways[1].Cost!.Value, ways[2].Cost!.Value));
    }

    [Fact]
    public void A_crop_grown_in_clusters_has_no_way_to_single_plants()
    {
        var site = Scenario(
            [Mat(9), Bench(9), Table(9)],
            [Batch("a", 100, Monday) with { SeedsPerCell = 4 }],
            s_rules,
            [Crop() with { KeepPerCell = 4 }]
        );
        Assert.Equal("as planned, an extra tray", string.Join(", ", StandWays.Of(site, Plan(site).Batches[0]).Select(way => way.What)));
    }

    [Fact]
    public void Chances_of_seed_that_comes_by_halves()
    {
        // A test of two seeds with one up: every germination is as likely, and every number of plants from 0 to n of n cells. 10 of 50 or
        // more: 41 in 51; of 100, 91 in 101, over the assurance of 0.9; of 150, 141 in 151.
        var ways = Ways(Batch("a", 10, Monday) with { Germination = 0.5 }, s_rules with { GerminationSample = 2 });
        Assert.Equal([2, 2, 3], new[] { ways[0], ways[1], ways[3] }.Select(way => way.Trays));
        Assert.Equal(91 / 101.0, ways[0].Chance, 1e-4);
        Assert.Equal(91 / 101.0, ways[1].Chance, 1e-4);
        Assert.Equal(141 / 151.0, ways[3].Chance, 1e-4);
    }

    [Fact]
    public void Losses_and_a_cool_house_count()
    {
        // Half of the best at the house's temperature and a fifth lost later: a cell of one seed brings a plant with 0.4, of two with (1 -
        // 0.5^2) 0.8 = 0.6. 25 plants: two trays, one with 25 cells of 50 that come with 0.6, three with an extra one.
        var crop = Crop() with { GerminationCurve = [new(20, 50), new(25, 100)], StandLoss = 0.2 };
        var ways = Ways(Batch("a", 25, Monday), crop: crop);
        Assert.Equal([2, 2, 1, 3], ways.Select(way => way.Trays));
        Assert.Equal(Binomial.AtLeast(100, 0.4, 25), ways[0].Chance, 1e-9);
        Assert.Equal(Binomial.AtLeast(100, 0.4, 25), ways[1].Chance, 1e-9);
        Assert.Equal(Binomial.AtLeast(50, 0.6, 25), ways[2].Chance, 1e-9);
        Assert.Equal(Binomial.AtLeast(150, 0.4, 25), ways[3].Chance, 1e-9);
    }

    [Fact]
    public void Without_one_of_the_prices_there_is_no_cost()
    {
        var prices = s_rules.Prices;
        Assert.All([prices with { ThousandSeeds = null }, prices with { MixLitre = null }, prices with { LabourHour = null }], missing =>
            Assert.All(Ways(Batch("a", 100, Monday), s_rules with { Prices = missing }), way => Assert.Null(way.Cost))
        );
    }

    [Fact]
    public void A_way_that_no_number_of_trays_reaches_has_no_cost()
    {
        // One seed in 200 comes: two of 50 cells a tray are planned by hand, a hundred times the obvious number of trays is not enough.
        var crop = Crop() with { GerminationCurve = [new(20, 0.005), new(25, 100)] };
        var ways = Ways(Batch("a", 40, Monday) with { Trays = 2 }, crop: crop);
        Assert.Equal((-1, 0, (double?)null), (ways[1].Trays, ways[1].Seeds, ways[1].Cost));
    }

    [Fact]
    public void A_batch_that_is_potted_up_has_none() => Assert.Empty(Ways(PotUpBatch("a", 100, Monday)));

    private static System.Collections.Immutable.ImmutableArray<StandWay> Ways(BatchOrder order, SiteRules? rules = null, Crop? crop = null)
    {
        var scenario = Scenario([Mat(90), Bench(90), Table(90)], [order], rules ?? s_rules, [crop ?? Crop()]);
        scenario = scenario with { TrayTypes = scenario.TrayTypes.SetItem(0, scenario.TrayTypes[0] with { MediumLitres = 3.5 }) };
        return StandWays.Of(scenario, Plan(scenario).Batches[0]);
    }
}
