using BenchSim.Engine.Randomness;
using BenchSim.Study.Learning;
using MathNet.Numerics;

namespace BenchSim.Study.Tests.Learning;

/// <summary>
/// Lessons against the closed normal and beta forms, and by simulation-based calibration (Talts, Betancourt, Simpson, Vehtari and Gelman
/// 2018, arXiv 1804.06788): where truths are drawn from the law before and batches from the truths, the share of the law after that lies
/// below the truth is uniform.
/// </summary>
public class LessonTests
{
    private const int Parts = 20;
    private const int Truths = 2000;

    // So seldom each of the calibrations fails by chance; the seeds are fixed.
    private const double ErrorChance = 0.001;

    // The precision of the mean logarithm is 1/deviation^2 and 1/sigma^2 for each batch.
    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(20)]
    public void Batches_that_are_known_give_the_closed_normal_form(int batches)
    {
        const double Deviation = 0.3;
        const double Cv = 0.15;
        var (lesson, sigma, sum) = (new MeanLesson(100, Deviation, Cv), Math.Sqrt(Math.Log(1 + (Cv * Cv))), 0.0);
        for (var batch = 0; batch < batches; batch++)
        {
            var value = 130 + batch;
            sum += Math.Log(value / 100.0) + (sigma * sigma / 2);
            lesson.See(new BatchValue(value, value));
        }

        var precision = (1 / (Deviation * Deviation)) + (batches / (sigma * sigma));
        var (mean, sd) = (sum / (sigma * sigma) / precision, 1 / Math.Sqrt(precision));
        var learned = lesson.Lesson();
        Assert.Equal(100 * Math.Exp(mean), learned.New, 1e-3);
        Assert.Equal(100 * Math.Exp(mean - (1.6448536 * sd)), learned.Low, 0.01);
        Assert.Equal(100 * Math.Exp(mean + (1.6448536 * sd)), learned.High, 0.01);
        Assert.Equal((100.0, batches), (learned.Old, learned.Seen));
    }

    // A value read in a source, and batches of cv 0.3 at half as much again: of the way of the logarithm one goes a fifth, twenty 4/5.
    [Fact]
    public void One_batch_moves_a_value_a_little_and_twenty_nearly_all_the_way()
    {
        var (one, twenty) = (Way(1), Way(20));
        Assert.InRange(one, 0.15, 0.25);
        Assert.InRange(twenty, 0.8, 0.9);

        static double Way(int batches)
        {
            var lesson = new MeanLesson(100, 0.15, 0.3);
            var typical = 150 * Math.Exp(-0.5 * Math.Log(1.09));
            for (var batch = 0; batch < batches; batch++)
            {
                lesson.See(new BatchValue(typical, typical));
            }

            return Math.Log(lesson.Lesson().New / 100) / Math.Log(1.5);
        }
    }

    [Fact]
    public void A_narrow_interval_is_nearly_a_value_and_one_that_bounds_nothing_says_nothing()
    {
        var (known, narrow) = (new MeanLesson(100, 0.3, 0.15), new MeanLesson(100, 0.3, 0.15));
        known.See(new BatchValue(120, 120));
        narrow.See(new BatchValue(119.9, 120.1));
        narrow.See(new BatchValue(0, double.PositiveInfinity));
        Assert.Equal(known.Lesson().New, narrow.Lesson().New, 0.01);
        Assert.Equal(known.Lesson().High, narrow.Lesson().High, 0.01);
    }

    // Of so many batches each is looked at every 10 units of heat: not ready at one look, ready at the next. Some are never seen ready.
    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    public void Means_are_as_uncertain_as_they_say(int batches)
    {
        var random = new Random(batches);
        var ranks = new int[Parts];
        for (var truth = 0; truth < Truths; truth++)
        {
            var mean = 100 * Math.Exp(0.3 * Probit(random));
            var lesson = new MeanLesson(100, 0.3, 0.15);
            for (var batch = 0; batch < batches; batch++)
            {
                var value = mean * Lognormal.MeanOne(Uniform(random), 0.15);
                var below = Math.Floor(value / 10) * 10;
                lesson.See(below >= 130 ? new BatchValue(130, double.PositiveInfinity) : new BatchValue(below, below + 10));
            }

            ranks[Enumerable.Range(1, Parts - 1).Count(part => lesson.Quantile(part / (double)Parts) < mean)]++;
        }

        Assert.True(Chance(ranks) > ErrorChance, string.Join(' ', ranks));
    }

    // 0.1 with a deviation of 0.5 of its log odds is worth 1/(0.09 x 0.25) plants.
    [Fact]
    public void Counts_are_added_to_what_a_share_is_worth()
    {
        var lesson = new ShareLesson(0.1, 0.5);
        lesson.See(30, 100);
        lesson.See(10, 100);
        Assert.Equal(44.4444, ShareLesson.Worth(0.1, 0.5), 1e-3);
        Assert.Equal((4.4444 + 40) / 244.4444, lesson.Lesson().New, 1e-4);
        Assert.Equal(200, lesson.Lesson().Seen);
        var low = lesson.Lesson().Low;
        Assert.Equal(0.05, SpecialFunctions.BetaRegularized(44.4444, 200, low), 1e-3);
    }

    [Fact]
    public void Shares_are_as_uncertain_as_they_say()
    {
        var random = new Random(3);
        var ranks = new int[Parts];
        for (var truth = 0; truth < Truths; truth++)
        {
            var lesson = new ShareLesson(0.2, 0.5);
            var share = lesson.Quantile(Uniform(random));
            lesson.See(Enumerable.Range(0, 40).Count(_ => random.NextDouble() < share), 40);
            ranks[Enumerable.Range(1, Parts - 1).Count(part => lesson.Quantile(part / (double)Parts) < share)]++;
        }

        Assert.True(Chance(ranks) > ErrorChance, string.Join(' ', ranks));
    }

    private static double Uniform(Random random) => Math.Max(random.NextDouble(), 1e-12);

    private static double Probit(Random random) => Normal.Quantile(Uniform(random));

    // Of ranks at least as uneven, by chi-square.
    private static double Chance(int[] ranks)
    {
        var expected = ranks.Average();
        var sum = ranks.Sum(count => (count - expected) * (count - expected) / expected);
        return SpecialFunctions.GammaUpperRegularized((ranks.Length - 1) / 2.0, sum / 2);
    }
}
