using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Study.Sizing;

/// <summary>How large a space has to be, with the curve behind the answer.</summary>
public sealed record SizeResult
{
    /// <summary>The plan that was played.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>The space.</summary>
    public required Space Space { get; init; }

    /// <summary>The goal.</summary>
    public required SizeGoal Goal { get; init; }

    /// <summary>Seasons played at each number of places, the same ones.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>The smallest number of places played that meets the goal; null where none does.</summary>
    public required SizePoint? Answer { get; init; }

    /// <summary>Every number of places that was played, the smallest first.</summary>
    public required ImmutableArray<SizePoint> Curve { get; init; }

    /// <summary>
    /// Largest number of places tried: one more than what the space ever holds without a limit asks for, or what it has if that is more.
    /// </summary>
    public required int Largest { get; init; }

    /// <summary>True when every number from 0 to <see cref="Largest"/> was played.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>The space without limit.</summary>
    public required SizePoint Unlimited { get; init; }

    /// <summary>Every space without limit.</summary>
    public required SizePoint Everywhere { get; init; }

    /// <summary>Who waits for whom where the space has no limit.</summary>
    public required ImmutableArray<WaitResult> Waits { get; init; }

    /// <summary>Fewest seasons that can show the goal to be met, were every one of them to fit.</summary>
    public required int FewestSeasons { get; init; }

    /// <summary>Seasons played in all, each number of places and both plays without limit counted.</summary>
    public long SeasonsInAll => (long)Seasons * (Curve.Length + 2);

    /// <summary>Numbers of places above the answer at which the goal is missed again.</summary>
    public ImmutableArray<SizePoint> MissedAbove =>
        Answer is { } answer ? [.. Curve.Where(point => point.Places > answer.Places && !point.IsMet)] : [];
}
