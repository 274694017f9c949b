using BenchSim.Engine.Randomness;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Doubt;

/// <summary>What a value may truly be.</summary>
/// <param name="Shape">How likely which part of it is.</param>
/// <param name="Low">Low end; above 0 for a lognormal range, above 0 and below 1 for odds.</param>
/// <param name="High">High end, above the low one.</param>
/// <param name="Value">The value in force; only a triangular range looks at it, and takes the nearer end where it lies outside.</param>
public readonly record struct ValueRange(RangeShape Shape, double Low, double High, double Value)
{
    /// <summary>The range of a length of time, a heat sum, a spread or a coefficient.</summary>
    /// <param name="value">The value in force, above 0.</param>
    /// <param name="deviation">Standard deviation of the logarithm, above 0.</param>
    public static ValueRange OfFactor(double value, double deviation)
    {
        var reach = Math.Exp(Judgement.Reach * deviation);
        return new ValueRange(RangeShape.Lognormal, value / reach, value * reach, value);
    }

    /// <summary>The range of a share.</summary>
    /// <param name="value">The value in force, above 0 and below 1.</param>
    /// <param name="deviation">Standard deviation of the logarithm of the odds, above 0.</param>
    public static ValueRange OfShare(double value, double deviation)
    {
        var (odds, reach) = (value / (1 - value), Math.Exp(Judgement.Reach * deviation));
        return new ValueRange(RangeShape.Odds, Share(odds / reach), Share(odds * reach), value);
    }

    /// <summary>The range of a temperature or of a difference of two.</summary>
    /// <param name="value">The value in force, degrees Celsius or kelvin.</param>
    /// <param name="reach">How far off it may be at most, kelvin, above 0.</param>
    public static ValueRange OfTemperature(double value, double reach) => new(RangeShape.Triangular, value - reach, value + reach, value);

    /// <summary>The value that the true one is below with a chance.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double Quantile(double u) =>
        Shape switch
        {
            RangeShape.Uniform => Low + (u * (High - Low)),
            RangeShape.Triangular => TriangularQuantile(u),
            RangeShape.Lognormal => Math.Exp(NormalQuantile(Math.Log(Low), Math.Log(High), u)),
            _ => Share(Math.Exp(NormalQuantile(Math.Log(Low / (1 - Low)), Math.Log(High / (1 - High)), u))),
        };

    private static double Share(double odds) => odds / (1 + odds);

    // A normal law of which one in twenty lies below the one end and one in twenty above the other.
    private static double NormalQuantile(double low, double high, double u) =>
        ((low + high) / 2) + ((high - low) / (2 * Judgement.Reach) * Normal.Quantile(u));

    private double TriangularQuantile(double u)
    {
        var (width, mode) = (High - Low, Math.Clamp(Value, Low, High));
        return u * width < mode - Low ? Low + Math.Sqrt(u * width * (mode - Low)) : High - Math.Sqrt((1 - u) * width * (High - mode));
    }
}
