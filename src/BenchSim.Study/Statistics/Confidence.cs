using System.Runtime.CompilerServices;

namespace BenchSim.Study.Statistics;

/// <summary>The one check every interval makes of its confidence.</summary>
internal static class Confidence
{
    public static void ThrowIfOutside(double confidence, [CallerArgumentExpression(nameof(confidence))] string? name = null)
    {
        if (!(confidence > 0 && confidence < 1))
        {
            throw new ArgumentOutOfRangeException(name, confidence, "Between 0 and 1, both excluded.");
        }
    }
}
