using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Mending;

/// <summary>What would mend a plan.</summary>
public sealed record MendResult
{
    /// <summary>The plan as it is.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>How it was sought.</summary>
    public required MendOptions Options { get; init; }

    /// <summary>The plan as it is, in the seasons of the trial.</summary>
    public required MendFigures Before { get; init; }

    /// <summary>The plan as it is, in the seasons in which changes were tried alone.</summary>
    public MendFigures BeforeAlone { get; init; } = null!;

    /// <summary>Whether the plan meets the goal as it is; then nothing was sought.</summary>
    public bool IsMetBefore => Before.Fits.Low >= Options.Goal;

    /// <summary>Changes that were tried.</summary>
    public int Tried { get; init; }

    /// <summary>Changes left out because they are marked as not here.</summary>
    public int NotHere { get; init; }

    /// <summary>The changes that help by themselves, the one that helps most first; equal ones stand under the cheapest of them.</summary>
    public ImmutableArray<MendOption> Singles { get; init; } = [];

    /// <summary>The changes chosen, in the order in which they were joined; empty where nothing helps.</summary>
    public ImmutableArray<MendStep> Steps { get; init; } = [];

    /// <summary>Changes of what the field asked for that help by themselves; they are in no set.</summary>
    public ImmutableArray<MendOption> OfTheOrder { get; init; } = [];

    /// <summary>Spaces that are full but that need not be larger.</summary>
    public ImmutableArray<MendSpace> FullForNothing { get; init; } = [];

    /// <summary>What stands in the way with all that was chosen, the worst first.</summary>
    public ImmutableArray<MendHindrance> InTheWay { get; init; } = [];

    /// <summary>Intervals shown in all.</summary>
    public int Comparisons { get; init; } = 1;

    /// <summary>Confidence of each interval, so that all of them hold at once with 95 % (Bonferroni).</summary>
    public double EachConfidence { get; init; } = Confidence.Usual;

    /// <summary>The plan with all that was chosen, in the seasons of the trial.</summary>
    public MendFigures After => Steps.IsEmpty ? Before : Steps[^1].After;

    /// <summary>Whether it then meets the goal.</summary>
    public bool IsMet => After.Fits.Low >= Options.Goal;
}

/// <summary>A plan in the seasons of the trial.</summary>
public sealed record MendFigures
{
    /// <summary>Chance that it fits, by the days that count (<see cref="MendOptions.CountsWeather"/>).</summary>
    public required Chance Fits { get; init; }

    /// <summary>Chance that it fits with every late day counted.</summary>
    public required Chance FitsWeatherCounted { get; init; }

    /// <summary>Wanted plants not out in time in a usual season, by the days that count: the median.</summary>
    public required long LateUsual { get; init; }

    /// <summary>The same in a bad season, one of ten: the 90th percentile.</summary>
    public required long LateBad { get; init; }

    /// <summary>The same on average.</summary>
    public required double Late { get; init; }

    /// <summary>Hours of work a season, mean.</summary>
    public required double WorkHours { get; init; }

    /// <summary>What work, heat, mix and seed cost a season, mean; null where work or heat has no price.</summary>
    public required double? Money { get; init; }
}

/// <summary>What some changes gain against the plan as it is, season by season.</summary>
/// <param name="Fits">Chance of fit.</param>
/// <param name="Late">Wanted plants not out in time, by the days that count; a difference below 0 is what is gained.</param>
public sealed record MendGain(FitChange Fits, MeasureChange Late);

/// <summary>One change by itself.</summary>
/// <param name="Change">The change.</param>
/// <param name="Plan">The plan with it.</param>
/// <param name="After">The plan with it, in the seasons of the trial.</param>
/// <param name="Gain">What it gains.</param>
/// <param name="AsGood">Other changes that gain as much, as far as the seasons played show.</param>
public sealed record MendOption(MendChange Change, SeasonPlan Plan, MendFigures After, MendGain Gain, ImmutableArray<MendChange> AsGood)
{
    /// <summary>What is to be known before it is made.</summary>
    public required MendTerms Terms { get; init; }
}

/// <summary>One change of those chosen, made after those before it.</summary>
/// <param name="Change">The change.</param>
/// <param name="Plan">The plan with it and those before it.</param>
/// <param name="After">That plan in the seasons of the trial.</param>
/// <param name="Gain">What it gains with those before it, against the plan as it is.</param>
/// <param name="AsGood">Other changes that gained as much at this step, as far as could be told.</param>
public sealed record MendStep(MendChange Change, SeasonPlan Plan, MendFigures After, MendGain Gain, ImmutableArray<MendChange> AsGood)
{
    /// <summary>What is to be known before it is made.</summary>
    public required MendTerms Terms { get; init; }
}

/// <summary>What is to be known of a change before it is made.</summary>
/// <param name="GivesWay">Batches that are later for it, worst first, with plants more that are late a season.</param>
/// <param name="DecideBy">Last day on which it can be decided.</param>
public sealed record MendTerms(ImmutableArray<(BatchPlan Batch, double Plants)> GivesWay, DateOnly DecideBy);

/// <summary>A space that runs out, and that need not be larger.</summary>
/// <param name="Space">The space.</param>
/// <param name="Seasons">Share of seasons in which it runs out.</param>
/// <param name="Larger">The change that made it larger.</param>
/// <param name="Then">Space that is waited for more when it is larger; null for none.</param>
/// <param name="IsWorse">Whether more plants are late when it is larger.</param>
public sealed record MendSpace(Space Space, double Seasons, PlacesChange Larger, Space? Then, bool IsWorse);

/// <summary>Why plants are still late.</summary>
public enum MendReason
{
    /// <summary>There is no place.</summary>
    Room,

    /// <summary>The weather holds trays that are ready.</summary>
    Weather,

    /// <summary>Too few come up or come through.</summary>
    Short,

    /// <summary>It is not ready by its date.</summary>
    Date,
}

/// <summary>A crop of which plants are late with all that was chosen.</summary>
/// <param name="Batch">Its worst batch.</param>
/// <param name="Plants">Plants late a season, mean, of all its batches.</param>
/// <param name="Reason">What most of them are late for.</param>
public sealed record MendHindrance(BatchPlan Batch, double Plants, MendReason Reason);
