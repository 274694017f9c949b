using BenchSim.Study.Mending;

namespace BenchSim.Study.Review;

/// <summary>What a purchase would have changed in a season on top of what would have cost nothing.</summary>
public sealed record PurchaseJudged
{
    /// <summary>Name of the purchase: that of its variant.</summary>
    public required string Name { get; init; }

    /// <summary>What of that which costs nothing was found for the agreed plan, by what could be known before the season.</summary>
    public required MendResult Sought { get; init; }

    /// <summary>Seasons played of each plan.</summary>
    public required int Seasons { get; init; }

    /// <summary>Days of the season whose weather was observed, and is that of every season played; 0 where the weather is drawn.</summary>
    public required int Observed { get; init; }

    /// <summary>The plan as it was agreed.</summary>
    public required MendFigures Agreed { get; init; }

    /// <summary>The same with what costs nothing.</summary>
    public required MendFigures Free { get; init; }

    /// <summary>The same with the purchase on top.</summary>
    public required MendFigures Bought { get; init; }

    /// <summary>What the purchase gains on top, season by season.</summary>
    public required MendGain Gain { get; init; }

    /// <summary>What the purchase alone would seem to gain, set beside the plan as it was agreed.</summary>
    public required MendGain Alone { get; init; }
}
