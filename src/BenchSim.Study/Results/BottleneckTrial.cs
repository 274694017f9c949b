using System.Collections.Immutable;
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

    /// <summary>Plants out in time; a difference above 0 is what it brings.</summary>
    public required MeasureChange PlantsInTime { get; init; }

    /// <summary>Late plant-days; a difference below 0 is what is saved.</summary>
    public required MeasureChange LatePlantDays { get; init; }

    /// <summary>Tray-days waited for places of each kind, in the order of <see cref="SpaceKind"/>: where more wait it is crowded.</summary>
    public required ImmutableArray<MeasureChange> Waited { get; init; }

    /// <summary>Days from sowing to field size, mean of the trays that go out: where it is more, they grow slower.</summary>
    public required MeasureChange Growing { get; init; }

    /// <summary>
    /// True when it helps as a grower feels it: more plants are really out in time, or, where they are no fewer, fewer days late.
    /// </summary>
    public bool Helps =>
        PlantsInTime is { IsReal: true } plants ? plants.Difference > 0 : LatePlantDays is { IsReal: true, Difference: < 0 };
}
