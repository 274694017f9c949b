using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Bottlenecks;

namespace BenchSim.Study.Results;

/// <summary>A scenario played many times: the answer, with what made it.</summary>
public sealed record StudyResult
{
    /// <summary>The plan that was played, with its scenario.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>Seasons played.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Chance that a season fits, days of weather hold excepted.</summary>
    public required Chance Fits { get; init; }

    /// <summary>Chance that a season fits, every late day counted, weather or not.</summary>
    public required Chance FitsWeatherCounted { get; init; }

    /// <summary>Chance that in a season some batch is sown too late or not in full: the first of the three conditions of a fit is not met.</summary>
    public required Chance SownTooLate { get; init; }

    /// <summary>Chance that in a season some tray is over-held for lack of a place: the second condition is not met.</summary>
    public required Chance OverHeldForPlace { get; init; }

    /// <summary>Chance that in a season fewer wanted plants than the service goal are in time, holds excepted: the third condition is not met.</summary>
    public required Chance TooFewInTime { get; init; }

    /// <summary>Seasons that do not fit with every late day counted, by cause; one entry a cause.</summary>
    public required ImmutableSortedDictionary<Cause, int> Causes { get; init; }

    /// <summary>Plants wanted in the field, all batches.</summary>
    public required int PlantsWanted { get; init; }

    /// <summary>Wanted plants out in time, all batches.</summary>
    public required Estimate PlantsInTime { get; init; }

    /// <summary>Wanted plants out, but late.</summary>
    public required Estimate PlantsLate { get; init; }

    /// <summary>Wanted plants that never go out.</summary>
    public required Estimate PlantsShort { get; init; }

    /// <summary>Late plant-days, all batches.</summary>
    public required Estimate LatePlantDays { get; init; }

    /// <summary>Trays over-held.</summary>
    public required Estimate OverHeld { get; init; }

    /// <summary>Trays and flats thrown out.</summary>
    public required Estimate Discarded { get; init; }

    /// <summary>Trays and flats still standing on the last day.</summary>
    public required Estimate StillStanding { get; init; }

    /// <summary>Uses of each relief, in the order of the site's list: trays moved, or tray-days in the aisle.</summary>
    public required ImmutableArray<Estimate> ReliefUses { get; init; }

    /// <summary>Spaces in the order of the scenario.</summary>
    public required ImmutableArray<SpaceResult> Spaces { get; init; }

    /// <summary>Mats, benches and tables, those the site has, in that order.</summary>
    public required ImmutableArray<GroupResult> Groups { get; init; }

    /// <summary>Who waits for whom, as far as the plan can bring it: trays not sown yet first, then by the space they stand in.</summary>
    public ImmutableArray<WaitResult> Waits { get; init; } = [];

    /// <summary>What more room in each space would save; null where it was not asked.</summary>
    public BottleneckResult? Bottlenecks { get; init; }

    /// <summary>Batches in the order of the plan.</summary>
    public required ImmutableArray<BatchResult> Batches { get; init; }

    /// <summary>Growers in order of name.</summary>
    public required ImmutableArray<GrowerResult> Growers { get; init; }

    /// <summary>Houses in the order of the scenario.</summary>
    public ImmutableArray<HouseResult> Houses { get; init; } = [];

    /// <summary>Mats whose electricity is given, in the order of the scenario.</summary>
    public ImmutableArray<MatPowerResult> MatPower { get; init; } = [];

    /// <summary>Work.</summary>
    public required WorkResult Work { get; init; }
}
