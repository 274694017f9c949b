using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Tests.Planning;

/// <summary>
/// The chance of the stand of a batch that is potted up: seedlings, cells for them, and losses after it, all three at once.
/// </summary>
public class PotUpStandTests
{
    // A packet that always germinates in full, so that the luck is that of the seeds and plants alone.
    private static readonly BetaLaw s_sure = new(1, 400);

    private static readonly StandLoss s_noLoss = new(0, 0);

    // Each seed brings a seedling with chance a half, and each potted plant reaches the field with chance "kept".
    [Theory]
    [InlineData(2, 2, 0.5, 1, 7 / 16.0)] // a plant from a seed with 1/4, from one of two with 1 - (3/4)^2
    [InlineData(2, 1, 0.5, 1, 3 / 8.0)] // one cell: a seedling comes with 3/4, and is kept with a half
    [InlineData(2, 2, 0.5, 2, 1 / 16.0)]
    [InlineData(2, 1, 0.5, 2, 0)]
    [InlineData(1, 9, 0.5, 2, 0)]
    [InlineData(2, 1, 1, 1, 3 / 4.0)]
    [InlineData(3, 2, 1, 2, 1 / 2.0)] // two or three heads of three coins
    [InlineData(3, 2, 0.5, 2, 1 / 8.0)] // two cells are filled with a half, and both kept with a quarter
    [InlineData(3, 3, 0.5, 2, 5 / 32.0)] // each seed brings a plant with 1/4: 3 x 1/16 x 3/4 + 1/64
    public void By_hand(int seeds, int cells, double kept, int wanted, double expected) =>
        Assert.Equal(
            expected,
            PotUpStand.Chance(s_sure, seeds, germination => germination / 2, cells, new StandLoss(1 - kept, 0), wanted),
            1e-12
        );

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0.5)] // at least two of three coins
    public void Where_no_seedling_comes_or_every_one(double seedling, double expected) =>
        Assert.Equal(expected, PotUpStand.Chance(s_sure, 3, _ => seedling, 3, new StandLoss(0.5, 0), 2), 1e-12);

    // With cells for every seedling each seed brings a plant by itself: binomial with the product of the chances.
    [Theory]
    [InlineData(50, 0.6, 0.9, 20)]
    [InlineData(50, 0.6, 0.9, 30)]
    [InlineData(3200, 0.7, 0.95, 900)]
    [InlineData(1400, 0.7, 0.95, 930)]
    [InlineData(30_000, 0.7, 0.5, 10_300)]
    [InlineData(30_000, 0.7, 0.5, 10_500)]
    [InlineData(400, 0.01, 0.99, 3)]
    public void With_cells_for_all_it_is_that_of_the_seeds(int seeds, double seedling, double kept, int wanted) =>
        Assert.Equal(
            Binomial.AtLeast(seeds, seedling * kept, wanted),
            PotUpStand.Chance(s_sure, seeds, _ => seedling, long.MaxValue, new StandLoss(1 - kept, 0), wanted),
            1e-9
        );

    // With far more seedlings than cells the trays are full: binomial of the cells.
    [Theory]
    [InlineData(936, 0.97, 900)]
    [InlineData(936, 0.97, 910)]
    [InlineData(100, 0.5, 50)]
    public void With_seedlings_to_spare_it_is_that_of_full_trays(int cells, double kept, int wanted) =>
        Assert.Equal(
            Binomial.AtLeast(cells, kept, wanted),
            PotUpStand.Chance(s_sure, 10 * cells, _ => 0.7, cells, new StandLoss(1 - kept, 0), wanted),
            1e-9
        );

    [Fact]
    public void It_is_averaged_over_the_packet()
    {
        // A test of two seeds with one up: every number of seedlings from 0 to 10 of ten seeds is as likely. Eight cells of which none is
        // lost: at least 8 in 3 cases of 11.
        Assert.Equal(3 / 11.0, PotUpStand.Chance(new BetaLaw(0.5, 2), 10, germination => germination, 8, s_noLoss, 8), 1e-5);
    }

    [Fact]
    public void Too_few_trays_bring_no_stand_however_many_flats()
    {
        // 120 plants from one tray of 50 cells.
        var order = SmallSite.PotUpBatch("P", 120, SmallSite.Monday) with { Trays = 1, Flats = 5 };
        Assert.Equal(0, SmallSite.Plan(Site(order)).Batches[0].StandChance);
        Assert.Equal(1, SmallSite.Plan(Site(order with { Trays = 3 })).Batches[0].StandChance);
    }

    // What the plan says is what the played seasons bring: 3,000 of them, within four standard errors (chance of error under 1 in 10,000).
    [Theory]
    [InlineData(null, null)]
    [InlineData(3, 1)]
    public void The_chance_of_the_plan_is_the_share_of_played_seasons(int? trays, int? flats)
    {
        const int Seasons = 3000;
        var crop = SmallSite.Crop() with { StandLoss = 0.1, PotUpLoss = 0.05 };
        var order = SmallSite.PotUpBatch("P", 130, SmallSite.Monday) with { Germination = 0.8, Trays = trays, Flats = flats };
        var plan = SmallSite.Plan(Site(order, crop));
        var player = new SeasonPlayer(plan, 11);
        var result = new SeasonResult();
        var reached = 0;
        for (var season = 0; season < Seasons; season++)
        {
            player.Play(season, PlaceLimits.AsGiven, result);
            reached += result.Batches[0].PlantsOut >= order.Plants ? 1 : 0;
        }

        var chance = plan.Batches[0].StandChance;
        Assert.InRange(chance, 0.1, 0.99);
        Assert.Equal(chance, reached / (double)Seasons, 4 * Math.Sqrt(chance * (1 - chance) / Seasons));
    }

    private static Scenario Site(BatchOrder order, Crop? crop = null) =>
        SmallSite.Scenario([SmallSite.Mat(40), SmallSite.Bench(90), SmallSite.Table(90)], [order], crops: [crop ?? SmallSite.Crop()]);
}
