using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Results;

/// <summary>A scenario played many times: the answer, with what made it.</summary>
public sealed record StudyResult : Told<WholeSeason>
{
    private static readonly Cause[] s_causes = Enum.GetValues<Cause>();

    /// <summary>The plan that was played, with its scenario.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>Name of the variant that the plan was made with; null for the scenario as it is.</summary>
    public string? Variant { get; init; }

    /// <summary>Seasons played.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <inheritdoc cref="WholeFigures.Fits"/>
    public Chance Fits
    {
        get => this[WholeFigures.Fits];
        init => this[WholeFigures.Fits] = value;
    }

    /// <inheritdoc cref="WholeFigures.FitsWeatherCounted"/>
    public Chance FitsWeatherCounted
    {
        get => this[WholeFigures.FitsWeatherCounted];
        init => this[WholeFigures.FitsWeatherCounted] = value;
    }

    /// <inheritdoc cref="WholeFigures.SownTooLate"/>
    public Chance SownTooLate
    {
        get => this[WholeFigures.SownTooLate];
        init => this[WholeFigures.SownTooLate] = value;
    }

    /// <inheritdoc cref="WholeFigures.OverHeldForPlace"/>
    public Chance OverHeldForPlace
    {
        get => this[WholeFigures.OverHeldForPlace];
        init => this[WholeFigures.OverHeldForPlace] = value;
    }

    /// <inheritdoc cref="WholeFigures.TooFewInTime"/>
    public Chance TooFewInTime
    {
        get => this[WholeFigures.TooFewInTime];
        init => this[WholeFigures.TooFewInTime] = value;
    }

    /// <summary>Seasons that do not fit with every late day counted, by cause; one entry a cause.</summary>
    public ImmutableSortedDictionary<Cause, int> Causes
    {
        get => s_causes.ToImmutableSortedDictionary(cause => cause, cause => this[WholeFigures.Causes][(int)cause]);
        init => this[WholeFigures.Causes] = [.. s_causes.Select(cause => value[cause])];
    }

    /// <summary>Plants wanted in the field, all batches.</summary>
    public required int PlantsWanted { get; init; }

    /// <inheritdoc cref="WholeFigures.PlantsInTime"/>
    public Estimate PlantsInTime
    {
        get => this[WholeFigures.PlantsInTime];
        init => this[WholeFigures.PlantsInTime] = value;
    }

    /// <inheritdoc cref="WholeFigures.PlantsLate"/>
    public Estimate PlantsLate
    {
        get => this[WholeFigures.PlantsLate];
        init => this[WholeFigures.PlantsLate] = value;
    }

    /// <inheritdoc cref="WholeFigures.PlantsShort"/>
    public Estimate PlantsShort
    {
        get => this[WholeFigures.PlantsShort];
        init => this[WholeFigures.PlantsShort] = value;
    }

    /// <inheritdoc cref="WholeFigures.LatePlantDays"/>
    public Estimate LatePlantDays
    {
        get => this[WholeFigures.LatePlantDays];
        init => this[WholeFigures.LatePlantDays] = value;
    }

    /// <inheritdoc cref="WholeFigures.OverHeld"/>
    public Estimate OverHeld
    {
        get => this[WholeFigures.OverHeld];
        init => this[WholeFigures.OverHeld] = value;
    }

    /// <inheritdoc cref="WholeFigures.Discarded"/>
    public Estimate Discarded
    {
        get => this[WholeFigures.Discarded];
        init => this[WholeFigures.Discarded] = value;
    }

    /// <inheritdoc cref="WholeFigures.StillStanding"/>
    public Estimate StillStanding
    {
        get => this[WholeFigures.StillStanding];
        init => this[WholeFigures.StillStanding] = value;
    }

    /// <inheritdoc cref="WholeFigures.ReliefUses"/>
    public ImmutableArray<Estimate> ReliefUses
    {
        get => this[WholeFigures.ReliefUses];
        init => this[WholeFigures.ReliefUses] = value;
    }

    /// <inheritdoc cref="WholeFigures.MishapStrikes"/>
    public ImmutableArray<Estimate> MishapStrikes
    {
        get => this[WholeFigures.MishapStrikes];
        init => this[WholeFigures.MishapStrikes] = value;
    }

    /// <inheritdoc cref="WholeFigures.MishapTrays"/>
    public ImmutableArray<Estimate> MishapTrays
    {
        get => this[WholeFigures.MishapTrays];
        init => this[WholeFigures.MishapTrays] = value;
    }

    /// <inheritdoc cref="WholeFigures.PlantsLostToMishaps"/>
    public Estimate PlantsLostToMishaps
    {
        get => this[WholeFigures.PlantsLostToMishaps];
        init => this[WholeFigures.PlantsLostToMishaps] = value;
    }

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
