namespace BenchSim.Study.Levelling;

/// <summary>Most places wanted on any day of a played season without limits of place, as planned and levelled, on the same luck.</summary>
/// <param name="Before">Mean as planned.</param>
/// <param name="After">Mean when levelled.</param>
/// <param name="Difference">Mean of levelled less planned.</param>
/// <param name="HalfWidth">
/// Half the width of the paired Student interval of the difference, allowing for all groups shown; NaN for one season.
/// </param>
/// <param name="Differing">Seasons in which the two are not the same.</param>
public sealed record PlayedPeak(double Before, double After, double Difference, double HalfWidth, int Differing)
{
    /// <summary>Lower end of the interval.</summary>
    public double Low => Difference - HalfWidth;

    /// <summary>Upper end of the interval.</summary>
    public double High => Difference + HalfWidth;

    /// <summary>Whether the interval leaves out no difference.</summary>
    public bool IsReal => Differing > 0 && (Low > 0 || High < 0);
}
