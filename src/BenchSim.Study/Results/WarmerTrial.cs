using BenchSim.Season.Inputs;

namespace BenchSim.Study.Results;

/// <summary>One house heated as the warmest one, everything else as it is, on the same luck and with the same planned dates.</summary>
public sealed record WarmerTrial
{
    /// <summary>The house, as it is.</summary>
    public required House House { get; init; }

    /// <summary>The house as warm as the warmest.</summary>
    public required House Warmer { get; init; }

    /// <summary>Chance that a season fits, weather holds excepted.</summary>
    public required FitChange Fits { get; init; }

    /// <summary>Plants out in time; a difference above 0 is what it brings.</summary>
    public required MeasureChange PlantsInTime { get; init; }

    /// <summary>Late plant-days; a difference below 0 is what is saved.</summary>
    public required MeasureChange LatePlantDays { get; init; }
}
