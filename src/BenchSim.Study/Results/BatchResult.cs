using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Results;

/// <summary>One batch over the seasons.</summary>
public sealed record BatchResult : Told<BatchSeason>
{
    /// <summary>What was meant to happen.</summary>
    public required BatchPlan Plan { get; init; }

    /// <inheritdoc cref="BatchFigures.SownFirst"/>
    public DateSpread SownFirst
    {
        get => this[BatchFigures.SownFirst];
        init => this[BatchFigures.SownFirst] = value;
    }

    /// <inheritdoc cref="BatchFigures.SownLast"/>
    public DateSpread SownLast
    {
        get => this[BatchFigures.SownLast];
        init => this[BatchFigures.SownLast] = value;
    }

    /// <inheritdoc cref="BatchFigures.OffMat"/>
    public DateSpread OffMat
    {
        get => this[BatchFigures.OffMat];
        init => this[BatchFigures.OffMat] = value;
    }

    /// <inheritdoc cref="BatchFigures.PottedUp"/>
    public DateSpread PottedUp
    {
        get => this[BatchFigures.PottedUp];
        init => this[BatchFigures.PottedUp] = value;
    }

    /// <inheritdoc cref="BatchFigures.OnTable"/>
    public DateSpread OnTable
    {
        get => this[BatchFigures.OnTable];
        init => this[BatchFigures.OnTable] = value;
    }

    /// <inheritdoc cref="BatchFigures.OutFirst"/>
    public DateSpread OutFirst
    {
        get => this[BatchFigures.OutFirst];
        init => this[BatchFigures.OutFirst] = value;
    }

    /// <inheritdoc cref="BatchFigures.OutMedian"/>
    public DateSpread OutMedian
    {
        get => this[BatchFigures.OutMedian];
        init => this[BatchFigures.OutMedian] = value;
    }

    /// <inheritdoc cref="BatchFigures.OutLast"/>
    public DateSpread OutLast
    {
        get => this[BatchFigures.OutLast];
        init => this[BatchFigures.OutLast] = value;
    }

    /// <inheritdoc cref="BatchFigures.Complete"/>
    public Chance Complete
    {
        get => this[BatchFigures.Complete];
        init => this[BatchFigures.Complete] = value;
    }

    /// <inheritdoc cref="BatchFigures.PlantsOut"/>
    public Estimate PlantsOut
    {
        get => this[BatchFigures.PlantsOut];
        init => this[BatchFigures.PlantsOut] = value;
    }

    /// <inheritdoc cref="BatchFigures.PlantsInTime"/>
    public Estimate PlantsInTime
    {
        get => this[BatchFigures.PlantsInTime];
        init => this[BatchFigures.PlantsInTime] = value;
    }

    /// <inheritdoc cref="BatchFigures.PlantsShort"/>
    public Estimate PlantsShort
    {
        get => this[BatchFigures.PlantsShort];
        init => this[BatchFigures.PlantsShort] = value;
    }

    /// <inheritdoc cref="BatchFigures.LatePlantDays"/>
    public Estimate LatePlantDays
    {
        get => this[BatchFigures.LatePlantDays];
        init => this[BatchFigures.LatePlantDays] = value;
    }

    /// <inheritdoc cref="BatchFigures.DaysLate"/>
    public Estimate DaysLate
    {
        get => this[BatchFigures.DaysLate];
        init => this[BatchFigures.DaysLate] = value;
    }

    /// <inheritdoc cref="BatchFigures.OverHeld"/>
    public Estimate OverHeld
    {
        get => this[BatchFigures.OverHeld];
        init => this[BatchFigures.OverHeld] = value;
    }

    /// <inheritdoc cref="BatchFigures.GivenUp"/>
    public Estimate GivenUp
    {
        get => this[BatchFigures.GivenUp];
        init => this[BatchFigures.GivenUp] = value;
    }

    /// <inheritdoc cref="BatchFigures.HoldTrayDays"/>
    public Estimate HoldTrayDays
    {
        get => this[BatchFigures.HoldTrayDays];
        init => this[BatchFigures.HoldTrayDays] = value;
    }

    /// <summary>Trays and flats thrown out, by name of the reason, in the order of the names.</summary>
    public ImmutableSortedDictionary<string, Estimate> Discarded
    {
        get =>
            BatchSeason
                .Reasons.Zip(this[BatchFigures.Discarded])
                .ToImmutableSortedDictionary(pair => pair.First.ToString(), pair => pair.Second, StringComparer.Ordinal);
        init => this[BatchFigures.Discarded] = [.. BatchSeason.Reasons.Select(reason => value[reason.ToString()])];
    }

    /// <inheritdoc cref="BatchFigures.BlockedTrayDays"/>
    public ImmutableArray<Estimate> BlockedTrayDays
    {
        get => this[BatchFigures.BlockedTrayDays];
        init => this[BatchFigures.BlockedTrayDays] = value;
    }
}
