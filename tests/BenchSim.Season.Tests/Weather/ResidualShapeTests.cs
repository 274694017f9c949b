using BenchSim.Engine.Randomness;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

/// <summary>The law of a residual through its quantiles, against laws whose quantiles are known.</summary>
public class ResidualShapeTests
{
    [Fact]
    public void The_normal_law_leaves_scores_as_they_are()
    {
        for (var score = -6.0; score <= 6; score += 0.3)
        {
            Assert.Equal(score, ResidualShape.Normal.At(score));
            Assert.Equal(score, ResidualShape.Normal.ScoreOf(score), 1e-12);
        }
    }

    // The law of the exponential less 1: mean 0, variance 1, skew 2, quantile -ln(1 - u) - 1. The sample is its quantiles at 20,000 even
    // chances, so no luck is in it. A hundred normal days among them move the quantiles by half a hundredth; straight lines between the
    // quantiles lie above a hollow curve and widen it by a hundredth or two, which is taken off again.
    [Fact]
    public void The_quantiles_are_those_of_the_sample()
    {
        const int Days = 20_000;
        var shape = ResidualShape.OfSample([.. Enumerable.Range(0, Days).Select(day => Quantile((day + 0.5) / Days))]);
        for (var score = -2.5; score <= 2.5; score += 0.5)
        {
            Assert.Equal(Quantile(Normal.Cumulative(score)), shape.At(score), 0.06);
        }

        // Beyond them straight on, at the slope of the last whole unit.
        Assert.Equal(shape.At(2.5) + (1.5 * (shape.At(2.5) - shape.At(1.5))), shape.At(4), 1e-9);
        Assert.Equal(shape.At(-2.5) - (1.5 * (shape.At(-1.5) - shape.At(-2.5))), shape.At(-4), 1e-9);

        static double Quantile(double chance) => -Math.Log(1 - chance) - 1;
    }

    // Worked out by summing over 16,000 narrow strips of the normal law.
    [Fact]
    public void Mean_is_0_and_variance_1_whatever_the_sample()
    {
        var random = new Random(3);
        foreach (var days in new[] { 2, 30, 600 })
        {
            var shape = ResidualShape.OfSample([.. Enumerable.Range(0, days).Select(_ => 7 + Math.Pow(random.NextDouble(), 3))]);
            var (mean, square) = (0.0, 0.0);
            for (var strip = -8_000; strip < 8_000; strip++)
            {
                var score = (strip + 0.5) / 1000;
                var chance = Math.Exp(-0.5 * score * score) / Math.Sqrt(2 * Math.PI) / 1000;
                mean += chance * shape.At(score);
                square += chance * shape.At(score) * shape.At(score);
            }

            Assert.Equal(0, mean, 1e-6);
            Assert.Equal(1, square, 1e-6);
        }
    }

    [Fact]
    public void The_score_of_a_residual_gives_it_back()
    {
        var random = new Random(4);

        // Half the days alike: no residual stands for two scores even so.
        var shape = ResidualShape.OfSample([.. Enumerable.Range(0, 500).Select(day => day % 2 == 0 ? 0 : random.NextDouble())]);
        var last = double.NegativeInfinity;
        for (var score = -5.0; score <= 5; score += 0.01)
        {
            Assert.True(shape.At(score) > last);
            last = shape.At(score);
            Assert.Equal(score, shape.ScoreOf(last), 1e-9);
        }
    }

    [Fact]
    public void A_sample_that_does_not_differ_or_is_none_has_the_normal_law()
    {
        Assert.Same(ResidualShape.Normal, ResidualShape.OfSample([]));
        Assert.Same(ResidualShape.Normal, ResidualShape.OfSample([0.3]));
        var flat = ResidualShape.OfSample([.. Enumerable.Repeat(0.0, 1000)]);
        for (var score = -3.0; score <= 3; score += 0.5)
        {
            Assert.Equal(score, flat.At(score), 1e-9);
        }
    }

    [Fact]
    public void Laws_are_equal_number_for_number()
    {
        double[] sample = [0.1, -0.4, 0.9, -1.3, 0.2];
        Assert.Equal(ResidualShape.OfSample([.. sample]), ResidualShape.OfSample([.. sample.Reverse()]));
        Assert.NotEqual(ResidualShape.OfSample([.. sample]), ResidualShape.OfSample([.. sample.Select(residual => -residual)]));
        Assert.Equal(ResidualShape.OfSample([.. sample]).GetHashCode(), ResidualShape.OfSample([.. sample]).GetHashCode());
        Assert.False(ResidualShape.Normal.Equals(null));
        Assert.False(ResidualShape.Normal.Equals((object)"normal"));
    }
}
