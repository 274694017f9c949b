using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Season.Stands;
using MathNet.Numerics;

namespace BenchSim.Season.Tests.Planning;

/// <summary>Losses that come in lumps (docs/model.md section 4), against closed forms of the beta and the beta-binomial law.</summary>
public class StandLossTests
{
    private static readonly BetaLaw s_sure = new(1, 400);

    // Half lost with a correlation of 1/3: a sample of two, so every share from 0 to 1 is as likely.
    private static readonly StandLoss s_even = new(0.5, 1 / 3.0);

    private static readonly double[] s_chances = [1e-6, 0.001, 0.01, 0.1, 0.25, 0.5, 0.75, 0.9, 0.99, 0.999, 1 - 1e-6];

    // Beta(1, 1): u. Beta(1, 2): 1 - sqrt(1 - u). Beta(1/2, 1/2): sin^2(pi u / 2).
    [Fact]
    public void Shares_in_closed_form() => Assert.All(s_chances, u =>
        {
            Assert.Equal(u, s_even.Quantile(u), 2e-6);
            Assert.Equal(1 - Math.Sqrt(1 - u), new StandLoss(1 / 3.0, 0.25).Quantile(u), 2e-6);
            Assert.Equal(Math.Pow(Math.Sin(Math.PI * u / 2), 2), new StandLoss(0.5, 0.5).Quantile(u), 2e-6);
        });

    // Variance of Beta(l n, (1 - l) n): l (1 - l) / (n + 1), and n + 1 = 1 / r. The mid-quantiles of 100,000 cut the far end short.
    [Theory]
    [InlineData(0.03, 0.1)]
    [InlineData(0.03, 0.02)]
    [InlineData(0.2, 0.3)]
    [InlineData(0.01, 0.5)]
    public void The_mean_is_kept_and_the_spread_is_that_of_the_correlation(double mean, double correlation)
    {
        var loss = new StandLoss(mean, correlation);
        double[] shares = [.. Enumerable.Range(0, 100_000).Select(point => loss.Quantile((point + 0.5) / 100_000))];
        Assert.Equal(mean, shares.Average(), 1e-5);
        Assert.Equal(mean * (1 - mean) * correlation, shares.Average(share => (share - mean) * (share - mean)), 1e-5);
    }

    // What the regularized incomplete beta function says of a share a little smaller and a little larger.
    [Theory]
    [InlineData(0.03, 0.1)]
    [InlineData(0.03, 0.01)]
    [InlineData(0.05, 0.3)]
    [InlineData(0.02, 0.5)]
    [InlineData(0.01, 0.5)]
    [InlineData(0.000001, 0.5)]
    [InlineData(0.97, 0.2)]
    [InlineData(0.03, 0.00001)]
    public void Shares_are_true_to_a_hundred_thousandth(double mean, double correlation)
    {
        const double Close = 1e-5;
        var loss = new StandLoss(mean, correlation);
        var (a, b) = (mean * loss.Sample, (1 - mean) * loss.Sample);
        for (var point = 1; point < 1000; point++)
        {
            var u = point / 1000.0;
            var share = loss.Quantile(u);
            Assert.True(share <= Close || SpecialFunctions.BetaRegularized(a, b, share - Close) <= u);
            Assert.True(share >= 1 - Close || SpecialFunctions.BetaRegularized(a, b, share + Close) >= u);
        }
    }

    [Fact]
    public void Without_correlation_or_without_losses_every_batch_loses_the_same()
    {
        Assert.All(s_chances, u => Assert.Equal(0.03, new StandLoss(0.03, 0).Quantile(u)));
        Assert.All(s_chances, u => Assert.Equal(0, new StandLoss(0, 0.3).Quantile(u)));
        Assert.All(s_chances, u => Assert.Equal(0.03, new StandLoss(0.03, 1e-30).Quantile(u)));
        Assert.False(new StandLoss(0.03, 0).HasSpread);
        Assert.True(new StandLoss(0.03, 0.1).HasSpread);
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(0.51)]
    public void A_correlation_out_of_range_is_refused(double correlation) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new StandLoss(0.03, correlation));

    // Every cell comes up: what is left is beta-binomial. With even shares each number from 0 to n is as likely.
    [Theory]
    [InlineData(10, 8)]
    [InlineData(10, 1)]
    [InlineData(1000, 995)]
    [InlineData(1000, 100)]
    [InlineData(10_000_000, 8_000_000)]
    public void With_even_shares_each_number_of_plants_is_as_likely(int cells, int wanted) =>
        Assert.Equal((cells - wanted + 1.0) / (cells + 1.0), Stand.Chance(s_sure, cells, _ => 1, s_even, wanted), 1e-8);

    // P(K = k) = C(n, k) B(k + b, n - k + a) / B(b, a).
    [Theory]
    [InlineData(0.03, 0.1, 500, 450)]
    [InlineData(0.03, 0.1, 500, 490)]
    [InlineData(0.03, 0.1, 500, 300)]
    [InlineData(0.2, 0.02, 60, 50)]
    [InlineData(0.05, 0.5, 128, 100)]
    [InlineData(0.05, 0.001, 5000, 4700)]
    [InlineData(0.05, 0.00001, 5000, 4740)]
    public void Plants_left_of_a_batch_are_beta_binomial(double mean, double correlation, int cells, int wanted) =>
        Assert.Equal(
            Enumerable.Range(wanted, cells - wanted + 1).Sum(plants => BetaBinomial(cells, plants, mean, correlation)),
            Stand.Chance(s_sure, cells, _ => 1, new StandLoss(mean, correlation), wanted),
            1e-9
        );

    // Cells that come up with 0.9 or 0.4: binomial first, beta-binomial of what came.
    [Theory]
    [InlineData(0.9, 0.03, 0.1, 200, 170)]
    [InlineData(0.9, 0.03, 0.1, 200, 190)]
    [InlineData(0.4, 0.2, 0.3, 200, 20)]
    [InlineData(0.4, 0.2, 0.05, 200, 70)]
    [InlineData(0.01, 0.1, 0.1, 200, 9)]
    public void Cells_that_may_stay_empty_count(double cell, double mean, double correlation, int cells, int wanted)
    {
        var expected = 0.0;
        for (var up = wanted; up <= cells; up++)
        {
            var reached = Enumerable.Range(wanted, up - wanted + 1).Sum(plants => BetaBinomial(up, plants, mean, correlation));
            expected +=
                Math.Exp(SpecialFunctions.BinomialLn(cells, up) + (up * Math.Log(cell)) + ((cells - up) * Math.Log(1 - cell))) * reached;
        }

        Assert.Equal(expected, Stand.Chance(s_sure, cells, _ => cell, new StandLoss(mean, correlation), wanted), 1e-9);
    }

    // Even packet and even losses: one cell brings a plant with 1/2 x 1/2, two cells two plants with 1/3 x 1/3, ten ten with 1/11 x 1/11.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(10)]
    public void Both_laws_are_averaged_over(int cells) =>
        Assert.Equal(
            1.0 / ((cells + 1) * (cells + 1)),
            Stand.Chance(new BetaLaw(0.5, 2), cells, germination => germination, s_even, cells),
            1e-5
        );

    // Trays of one cell, five plants wanted: (n - 4) / (n + 1) is 42/47 = 0.8936 at 46 and 43/48 = 0.8958 at 47.
    [Fact]
    public void The_smallest_number_of_trays_with_even_shares() =>
        Assert.Equal(47, Stand.TraysFor(s_sure, 1, _ => 1, s_even, 5, 0.895).Trays);

    // Half lost with a correlation of 1/2: the share kept is of the arcsine law, below 1 % in (2/pi) asin(0.1) = 6.4 % of batches. With a
    // hundred times the obvious number of trays one plant in a hundred must be kept: no assurance above 93.6 % is reached.
    [Fact]
    public void Losses_that_no_number_of_trays_makes_good_are_a_fault_of_their_own()
    {
        var crop = SmallSite.Crop() with { StandLoss = 0.5, StandLossCorrelation = 0.5 };
        var site = SmallSite.Scenario(
            [SmallSite.Mat(40), SmallSite.Bench(90), SmallSite.Table(90)],
            [SmallSite.Batch("a", 1000, SmallSite.Monday)],
            new SiteRules { StandAssurance = 0.95 },
            [crop]
        );
        var fault = Assert.Single(SeasonPlanner.Make(site).Faults);
        Assert.Contains("too often nearly all of it is lost", fault.What, StringComparison.Ordinal);
        Assert.Contains("stand_loss_correlation", fault.Instead, StringComparison.Ordinal);
    }

    // What the plan says is what the played seasons bring: 3,000 of them, within four standard errors (chance of error under 1 in 10,000).
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_chance_of_the_plan_is_the_share_of_played_seasons(bool isPottedUp)
    {
        const int Seasons = 3000;
        var crop = SmallSite.Crop() with { StandLoss = 0.1, StandLossCorrelation = 0.15, PotUpLoss = 0.05 };
        var order = isPottedUp ? SmallSite.PotUpBatch("P", 130, SmallSite.Monday) : SmallSite.Batch("P", 130, SmallSite.Monday);
        var plan = SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(40), SmallSite.Bench(90), SmallSite.Table(90)],
                [order with { Germination = 0.9 }],
                crops: [crop]
            )
        );
        var player = new SeasonPlayer(plan, 11);
        var result = new SeasonResult();
        var reached = 0;
        var lost = 0.0;
        for (var season = 0; season < Seasons; season++)
        {
            player.Play(season, PlaceLimits.AsGiven, result);
            reached += result.Batches[0].PlantsOut >= order.Plants ? 1 : 0;
            lost += new BatchLuck(order, crop, s_sure, 11).StandLoss(season);
        }

        var chance = plan.Batches[0].StandChance;
        Assert.InRange(chance, 0.5, 0.99);
        Assert.Equal(chance, reached / (double)Seasons, 4 * Math.Sqrt(chance * (1 - chance) / Seasons));
        Assert.Equal(0.1, lost / Seasons, 4 * Math.Sqrt(0.1 * 0.9 * 0.15 / Seasons));
    }

    private static double BetaBinomial(int tries, int plants, double mean, double correlation)
    {
        var sample = (1 - correlation) / correlation;
        var (a, b) = (mean * sample, (1 - mean) * sample);
        return Math.Exp(
            SpecialFunctions.BinomialLn(tries, plants)
                + SpecialFunctions.BetaLn(plants + b, tries - plants + a)
                - SpecialFunctions.BetaLn(b, a)
        );
    }
}
