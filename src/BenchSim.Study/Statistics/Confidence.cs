using System.Runtime.CompilerServices;
using BenchSim.Engine.Randomness;

namespace BenchSim.Study.Statistics;

/// <summary>How sure an interval is.</summary>
internal static class Confidence
{
    /// <summary>Of an interval that is shown by itself, and of several together that have to hold at once.</summary>
    public const double Usual = 0.95;

    /// <summary>Of each of several intervals, so that all of them hold at once with <see cref="Usual"/> (Bonferroni).</summary>
    /// <param name="intervals">How many there are.</param>
    public static double OfEach(int intervals) => 1 - ((1 - Usual) / Math.Max(1, intervals));

    /// <summary>How many standard errors a normal interval reaches to either side.</summary>
    public static double NormalReach(double confidence) => Normal.Quantile((1 + confidence) / 2);

    /// <summary>The one check every interval makes of its confidence.</summary>
    public static void ThrowIfOutside(double confidence, [CallerArgumentExpression(nameof(confidence))] string? name = null)
    {
        if (!(confidence > 0 && confidence < 1))
        {
            throw new ArgumentOutOfRangeException(name, confidence, "Between 0 and 1, both excluded.");
        }
    }
}
