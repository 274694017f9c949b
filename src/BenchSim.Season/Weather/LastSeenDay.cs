namespace BenchSim.Season.Weather;

/// <summary>Where a generator stands after the last day that is known, to draw on from there.</summary>
public sealed record LastSeenDay
{
    /// <summary>The day.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Whether it rained.</summary>
    public required bool IsWet { get; init; }

    /// <summary>Normal score of the highest temperature.</summary>
    internal double ScoreMax { get; init; }

    /// <summary>Normal score of the lowest temperature.</summary>
    internal double ScoreMin { get; init; }

    /// <summary>What the year so far says of what its days have in common.</summary>
    internal YearBelief Year { get; init; }
}
