using BenchSim.Study.Results;

namespace BenchSim.Study.Precision;

/// <summary>What was seen after so many seasons.</summary>
/// <param name="Fits">Chance that a season fits.</param>
/// <param name="LatePlantDays">Late plant-days.</param>
public readonly record struct PrecisionLook(Chance Fits, Estimate LatePlantDays)
{
    /// <summary>Seasons played by then.</summary>
    public int Seasons => Fits.Seasons;
}
