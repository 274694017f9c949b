using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Results;

/// <summary>One batch over the seasons.</summary>
public sealed record BatchResult
{
    /// <summary>What was meant to happen.</summary>
    public required BatchPlan Plan { get; init; }

    /// <summary>Day the first tray (or flat) is sown.</summary>
    public required DateSpread SownFirst { get; init; }

    /// <summary>Day the last tray (or flat) is sown.</summary>
    public required DateSpread SownLast { get; init; }

    /// <summary>Day the last tray (or flat) leaves the mats.</summary>
    public required DateSpread OffMat { get; init; }

    /// <summary>Day the last flat is potted up.</summary>
    public required DateSpread PottedUp { get; init; }

    /// <summary>Day the first tray reaches a table.</summary>
    public required DateSpread OnTable { get; init; }

    /// <summary>Day the first tray goes out.</summary>
    public required DateSpread OutFirst { get; init; }

    /// <summary>Day the median tray goes out.</summary>
    public required DateSpread OutMedian { get; init; }

    /// <summary>Day the last tray goes out.</summary>
    public required DateSpread OutLast { get; init; }

    /// <summary>Plants that reach the field.</summary>
    public required Estimate PlantsOut { get; init; }

    /// <summary>Wanted plants that reach the field in time (days a weather hold was the only hindrance not counted as late).</summary>
    public required Estimate PlantsInTime { get; init; }

    /// <summary>Wanted plants that never reach the field.</summary>
    public required Estimate PlantsShort { get; init; }

    /// <summary>Late plant-days: for each wanted plant its days late, plants that never go out charged to the season's end.</summary>
    public required Estimate LatePlantDays { get; init; }

    /// <summary>Days the last tray goes out after the planned date, weather holds included, in seasons in which one goes out; never below 0.</summary>
    public required Estimate DaysLate { get; init; }

    /// <summary>Trays over-held.</summary>
    public required Estimate OverHeld { get; init; }

    /// <summary>Mean trays and flats discarded, by reason, in the order of the reasons' names.</summary>
    public required ImmutableSortedDictionary<string, Estimate> Discarded { get; init; }

    /// <summary>Trays or flats given up unsown.</summary>
    public required Estimate GivenUp { get; init; }

    /// <summary>Tray-days on which a weather hold was the only hindrance.</summary>
    public required Estimate HoldTrayDays { get; init; }

    /// <summary>Tray-days waited for a place, by position of the first preference in <see cref="Scenario.Spaces"/>.</summary>
    public required ImmutableArray<Estimate> BlockedTrayDays { get; init; }

    /// <summary>Chance that the batch brings its wanted plants in time.</summary>
    public required Chance Complete { get; init; }
}
