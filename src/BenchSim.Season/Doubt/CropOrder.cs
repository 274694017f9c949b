using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Doubt;

/// <summary>Keeps together what belongs together in a crop some of whose values were set by themselves.</summary>
internal static class CropOrder
{
    // Temperatures that must not meet stay so far apart, kelvin.
    private const double Apart = 0.5;

    /// <summary>
    /// The crop with its temperatures in their order. A base and its heat are a pair that one trial gave: where a temperature of emergence is
    /// another, the heat follows, so that the days to coming up at the temperature of the trial stay those that the heat alone gives.
    /// </summary>
    /// <param name="given">The crop as it is given.</param>
    /// <param name="set">The crop with other values.</param>
    public static Crop Mended(Crop given, Crop set)
    {
        var (at, low) = (given.GerminateAtC, Math.Min(set.EmergeBaseC, given.GerminateAtC - Apart));
        var optimum = Math.Max(set.EmergeOptimumC, low + Apart);
        double? plateau = set.WrittenEmergePlateauC is { } written ? Math.Max(written, optimum) : null;
        var ordered = set with
        {
            EmergeBaseC = low,
            EmergeOptimumC = optimum,
            WrittenEmergePlateauC = plateau,
            EmergeCeilingC = Math.Max(set.EmergeCeilingC, Math.Max(plateau ?? optimum, at) + Apart),
            GrowthBaseC = Math.Min(set.GrowthBaseC, given.ReferenceC - Apart),
            GrowthCapC = Math.Max(set.GrowthCapC, given.ReferenceC),
        };
        var (before, after) = (EmergenceRate.Of(given, at), EmergenceRate.Of(ordered, at));
        return before.Equals(after) ? ordered : ordered with { EmergeHeat = set.EmergeHeat * after / before };
    }
}
