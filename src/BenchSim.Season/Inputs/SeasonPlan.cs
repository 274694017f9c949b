using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>A scenario with the dates and numbers of its batches worked out and frozen.</summary>
public sealed record SeasonPlan
{
    private readonly int? _sownInTimeDays;

    /// <summary>The scenario it was made from.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>Batches in the order of <see cref="Scenario.Batches"/>.</summary>
    public required ImmutableArray<BatchPlan> Batches { get; init; }

    /// <summary>Days played: from day 0 to the last day, both counted.</summary>
    public required int Days { get; init; }

    /// <summary>
    /// Calendar days a sowing may wait and still count as sown in time: <see cref="SiteRules.SowWaitDays"/>, in a variant those of the
    /// base, so that both are judged alike.
    /// </summary>
    public int SownInTimeDays
    {
        get => _sownInTimeDays ?? Scenario.Rules.SowWaitDays;
        init => _sownInTimeDays = value;
    }

    /// <summary>The days that are over, where the season is under way; null where it is played from its first day.</summary>
    public SeasonPast? Past { get; init; }

    /// <summary>The first day that is played, where the season is under way; null where it is played from its first day.</summary>
    public DateOnly? Today => Past is { } past ? FirstDay.AddDays(past.Today) : null;

    /// <summary>Things the user should know that are no faults, in the order found.</summary>
    public ImmutableArray<Fault> Warnings { get; init; } = [];

    /// <summary>First day of the clock.</summary>
    public DateOnly FirstDay => Scenario.Window.Opens;

    /// <summary>Last day of the play.</summary>
    public DateOnly LastDay => FirstDay.AddDays(Days - 1);
}
