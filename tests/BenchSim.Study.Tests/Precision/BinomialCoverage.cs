using BenchSim.Study.Precision;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Tests.Precision;

/// <summary>
/// The exact chance that an interval covers the chance it estimates: the sum of the binomial chances of every count whose interval does.
/// For a rule with looks, the chances of the counts with which the rule plays on are carried from look to look.
/// </summary>
internal static class BinomialCoverage
{
    /// <summary>Coverage of Wilson's 95 % interval, and the seasons it takes on average, where a rule decides when to stop.</summary>
    /// <param name="goal">The rule.</param>
    /// <param name="p">The chance.</param>
    public static (double Covered, double Seasons) OfRule(PrecisionGoal goal, double p)
    {
        int[] looks = [.. goal.Looks()];
        double[] playing = [1];
        double covered = 0;
        double seasons = 0;
        var before = 0;
        foreach (var look in looks)
        {
            playing = Sum(playing, Binomial(look - before, p));
            before = look;
            for (var hits = 0; hits <= look; hits++)
            {
                (var low, var high) = Wilson.Interval(hits, look);
                if (look != looks[^1] && !goal.IsReached(new Study.Results.Chance(hits, look, low, high)))
                {
                    continue;
                }

                seasons += look * playing[hits];
                covered += low <= p && p <= high ? playing[hits] : 0;
                playing[hits] = 0;
            }
        }

        return (covered, seasons);
    }

    /// <summary>Coverage of Wilson's 95 % interval after a fixed number of seasons.</summary>
    public static double OfFixed(int seasons, double p) =>
        Binomial(seasons, p).Where((_, hits) => Wilson.Interval(hits, seasons) is var (low, high) && low <= p && p <= high).Sum();

    private static double[] Binomial(int n, double p)
    {
        var chances = new double[n + 1];
        var logarithm = n * Math.Log(1 - p);
        for (var hits = 0; hits <= n; hits++)
        {
            chances[hits] = Math.Exp(logarithm);
            logarithm += Math.Log((double)(n - hits) / (hits + 1)) + Math.Log(p / (1 - p));
        }

        return chances;
    }

    private static double[] Sum(double[] one, double[] other)
    {
        var sum = new double[one.Length + other.Length - 1];
        for (var i = 0; i < one.Length; i++)
        {
            // What is left out here is far below the last digit shown.
            if (one[i] < 1e-14)
            {
                continue;
            }

            for (var j = 0; j < other.Length; j++)
            {
                sum[i + j] += one[i] * other[j];
            }
        }

        return sum;
    }
}
