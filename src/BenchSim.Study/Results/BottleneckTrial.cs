using BenchSim.Season.Inputs;

namespace BenchSim.Study.Results;

/// <summary>One space with more room, everything else as it is, on the same luck and the same plan.</summary>
public sealed record BottleneckTrial
{
    /// <summary>The space.</summary>
    public required Space Space { get; init; }

    /// <summary>Places it has more; null where it has no limit.</summary>
    public required int? PlacesAdded { get; init; }

    /// <summary>Chance that a season fits, weather holds excepted.</summary>
    public required FitChange Fits { get; init; }

    /// <summary>Late plant-days; a difference below 0 is what is saved.</summary>
    public required MeasureChange LatePlantDays { get; init; }
}
