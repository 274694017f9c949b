using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Makes chances from counts.</summary>
internal static class Chances
{
    /// <summary>A chance with its 95 % Wilson interval.</summary>
    public static Chance Of(int hits, int seasons)
    {
        (var low, var high) = Wilson.Interval(hits, seasons);
        return new Chance(hits, seasons, low, high);
    }
}
