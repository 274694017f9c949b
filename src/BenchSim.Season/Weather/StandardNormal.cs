using MathNet.Numerics;

namespace BenchSim.Season.Weather;

/// <summary>The standard normal distribution.</summary>
internal static class StandardNormal
{
    /// <summary>The value below which a standard normal draw falls with the given chance.</summary>
    /// <param name="chance">Chance, strictly between 0 and 1.</param>
    public static double Quantile(double chance) => -Math.Sqrt(2) * SpecialFunctions.ErfcInv(2 * chance);

    /// <summary>Chance that a standard normal draw falls below a value.</summary>
    /// <param name="value">The value.</param>
    public static double Below(double value) => 0.5 * SpecialFunctions.Erfc(-value / Math.Sqrt(2));
}
