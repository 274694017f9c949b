namespace BenchSim.Study.Sizing;

/// <summary>What a space has to be large enough for.</summary>
public sealed record SizeGoal
{
    /// <summary>Chance that a season fits, weather holds excepted, that must be reached: above 0 and below 1.</summary>
    public required double Share { get; init; }

    /// <summary>Confidence of the interval whose lower end must reach it: above 0 and below 1.</summary>
    public double Confidence { get; init; } = Statistics.Confidence.Usual;

    /// <summary>Plays every number of places, not only those that the search needs.</summary>
    public bool Every { get; init; }
}
