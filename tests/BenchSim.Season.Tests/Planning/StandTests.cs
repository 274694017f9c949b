using System.Numerics;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Tests.Planning;

/// <summary>How seed becomes a stand (docs/model.md section 4), worked out by hand.</summary>
public class StandTests
{
    // A packet that always germinates in full, so that the luck is that of the cells alone.
    private static readonly BetaLaw s_sure = new(1, 400);

    private static readonly StandLoss s_noLoss = new(0, 0);

    // The best is 80 %: straight lines between the points, level beyond them.
    [Theory]
    [InlineData(5, 0.5)]
    [InlineData(10, 0.5)]
    [InlineData(15, 0.75)]
    [InlineData(20, 1)]
    [InlineData(25, 0.875)]
    [InlineData(30, 0.75)]
    [InlineData(40, 0.75)]
    public void Germination_at_a_temperature_relative_to_the_best(double medium, double expected)
    {
        var crop = SmallSite.Crop() with { GerminationCurve = [new(10, 40), new(20, 80), new(30, 60)] };
        Assert.Equal(expected, Stand.RelativeGermination(crop, medium), 1e-12);
    }

    [Fact]
    public void Without_a_curve_all_comes_and_of_an_empty_curve_nothing()
    {
        Assert.Equal(1, Stand.RelativeGermination(SmallSite.Crop(), 15));
        Assert.Equal(1, Stand.RelativeGermination(SmallSite.Crop() with { GerminationCurve = default }, 15));
        Assert.Equal(0, Stand.RelativeGermination(SmallSite.Crop() with { GerminationCurve = [new(10, 0), new(20, 0)] }, 15));
    }

    // 1 - 0.2 x 0.2; 1 - 0.5^3.
    [Theory]
    [InlineData(0.8, 1, 0.8)]
    [InlineData(0.8, 2, 0.96)]
    [InlineData(0.5, 3, 0.875)]
    public void Chance_of_a_cell(double seed, int seeds, double expected) => Assert.Equal(expected, Stand.CellChance(seed, seeds), 1e-12);

    [Fact]
    public void Chance_of_a_stand_from_sure_seed_is_binomial()
    {
        // Ten coins, at least eight heads: 56 of 1024. Ten cells never bring eleven plants, and ten of ten at 0.9 come with 0.9^10.
        Assert.Equal(56 / 1024.0, Stand.Chance(s_sure, 10, germination => germination / 2, s_noLoss, 8), 1e-12);
        Assert.Equal(0.3486784401, Stand.Chance(s_sure, 10, germination => germination * 0.9, s_noLoss, 10), 1e-10);
        Assert.Equal(0, Stand.Chance(s_sure, 10, _ => 1, s_noLoss, 11));
        Assert.Equal(1, Stand.Chance(s_sure, 10, _ => 1, s_noLoss, 10));
    }

    [Fact]
    public void Chance_of_a_stand_is_averaged_over_the_packet()
    {
        // A test of two seeds with one up: every germination from 0 to 1 is as likely. Then every number of plants from 0 to 10 of ten
        // cells is as likely: at least 8 in 3 cases of 11.
        Assert.Equal(3 / 11.0, Stand.Chance(new BetaLaw(0.5, 2), 10, germination => germination, s_noLoss, 8), 1e-5);
    }

    // Every cell comes: the wanted plants over the cells of a tray, rounded up.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(49, 1)]
    [InlineData(50, 1)]
    [InlineData(51, 2)]
    [InlineData(100, 2)]
    [InlineData(101, 3)]
    [InlineData(5000, 100)]
    public void Trays_without_losses(int wanted, int trays) =>
        Assert.Equal((trays, 1.0), Stand.TraysFor(s_sure, 50, _ => 1, s_noLoss, wanted, 0.9));

    [Fact]
    public void The_smallest_number_of_trays_that_reaches_the_assurance()
    {
        // Trays of ten cells, 0.9 each, nine wanted: one tray brings them with 0.9^10 + 10 x 0.9^9 x 0.1 = 0.7360989, two with 0.99999994.
        var (trays, chance) = Stand.TraysFor(s_sure, 10, _ => 0.9, s_noLoss, 9, 0.736);
        Assert.Equal(1, trays);
        Assert.Equal(0.7360989291, chance, 1e-9);
        (trays, chance) = Stand.TraysFor(s_sure, 10, _ => 0.9, s_noLoss, 9, 0.737);
        Assert.Equal(2, trays);
        Assert.Equal(0.9999999418508202, chance, 1e-12);
    }

    // Trays of one cell, each a coin: P(heads of n >= wanted) = sum of C(n, j) from j = wanted on, over 2^n, in whole numbers.
    [Theory]
    [InlineData(1, 0.8749)]
    [InlineData(1, 0.8751)]
    [InlineData(3, 0.5)]
    [InlineData(7, 0.99)]
    [InlineData(100, 0.9)]
    [InlineData(100, 0.9999)]
    [InlineData(400, 0.9)]
    public void Of_coins_the_smallest_number_is_exact(int wanted, double assurance)
    {
        var tries = wanted;
        while (Heads(tries, wanted) < assurance)
        {
            tries++;
        }

        var (trays, chance) = Stand.TraysFor(s_sure, 1, _ => 0.5, s_noLoss, wanted, assurance);
        Assert.Equal(tries, trays);
        Assert.Equal(Heads(tries, wanted), chance, 1e-9);
    }

    // The same of trays of several cells.
    [Theory]
    [InlineData(5, 100, 0.9)]
    [InlineData(7, 400, 0.99)]
    [InlineData(50, 400, 0.999)]
    public void Of_trays_of_coins_the_smallest_number_is_exact(int each, int wanted, double assurance)
    {
        var trays = 1;
        while (Heads(trays * each, wanted) < assurance)
        {
            trays++;
        }

        var found = Stand.TraysFor(s_sure, each, _ => 0.5, s_noLoss, wanted, assurance);
        Assert.Equal(trays, found.Trays);
        Assert.Equal(Heads(trays * each, wanted), found.Chance, 1e-9);
    }

    [Fact]
    public void Seed_that_hardly_comes_needs_many_trays_and_at_last_no_number_does()
    {
        // One plant wanted from trays of one cell. At 2 % each, 1 - 0.98^n reaches 0.9 at n = 114 (0.98^114 = 0.09993); at 1.5 %, 1 -
        // 0.985^n at 153 (0.985^153 = 0.09903). A hundred times the obvious number is 100 x (1 + 1) = 200 trays; at 1 % that brings 1 -
        // 0.99^200 = 0.866.
        Assert.Equal(114, Stand.TraysFor(s_sure, 1, _ => 0.02, s_noLoss, 1, 0.9).Trays);
        Assert.Equal(153, Stand.TraysFor(s_sure, 1, _ => 0.015, s_noLoss, 1, 0.9).Trays);
        var (trays, chance) = Stand.TraysFor(s_sure, 1, _ => 0.01, s_noLoss, 1, 0.9);
        Assert.Equal(-1, trays);
        Assert.Equal(1 - Math.Pow(0.99, 200), chance, 1e-9);
        Assert.Equal((-1, 0.0), Stand.TraysFor(s_sure, 50, _ => 0, s_noLoss, 100, 0.9));
    }

    private static double Heads(int tries, int wanted)
    {
        var (sum, ways) = (BigInteger.Zero, BigInteger.One);
        for (var heads = 0; heads <= tries; heads++)
        {
            sum += heads >= wanted ? ways : 0;
            ways = ways * (tries - heads) / (heads + 1);
        }

        return (double)(sum * BigInteger.Pow(10, 18) / BigInteger.Pow(2, tries)) / 1e18;
    }
}
