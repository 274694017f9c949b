using BenchSim.Engine.Randomness;
using BenchSim.Season.Doubt;

namespace BenchSim.Study.Trust;

/// <summary>
/// Intervals by resampling: the sets are drawn again with replacement, and the statistic is worked out each time. Its standard deviation
/// gives a normal interval about the statistic itself (Efron and Tibshirani 1993, An Introduction to the Bootstrap, chapter 12): drawing
/// with replacement adds to a share what the sample does not have, so the quantiles of the draws lie too high.
/// </summary>
/// <param name="sets">Number of sets.</param>
/// <param name="seed">Seed of the resampling.</param>
internal sealed class Bootstrap(int sets, ulong seed)
{
    /// <summary>Times that the sets are drawn again.</summary>
    public const int Times = 400;

    private readonly int[][] _draws = Draw(sets, PhiloxKey.Of(seed, "bootstrap"));

    /// <summary>A statistic with its 90 % interval.</summary>
    /// <param name="statistic">The statistic of the sets with these numbers, each as often as it was drawn.</param>
    public ShareEstimate Of(Func<int[], double> statistic)
    {
        var value = statistic([.. Enumerable.Range(0, sets)]);
        var again = Array.ConvertAll(_draws, drawn => statistic(drawn));
        var mean = again.Average();
        var reach = Judgement.Reach * Math.Sqrt(again.Sum(each => (each - mean) * (each - mean)) / (Times - 1));
        return new ShareEstimate(value, value - reach, value + reach);
    }

    private static int[][] Draw(int sets, PhiloxKey key) =>
        [
            .. Enumerable
                .Range(0, Times)
                .Select(time =>
                    Enumerable
                        .Range(0, sets)
                        .Select(set => (int)(Philox.Block(new PhiloxBlock((uint)set, (uint)time, 0, 0), key).Uniform0 * sets))
                        .ToArray()
                ),
        ];
}
