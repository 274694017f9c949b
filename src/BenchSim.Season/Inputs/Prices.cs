namespace BenchSim.Season.Inputs;

/// <summary>Prices in the user's money; null where not given, and then no cost that needs it is shown.</summary>
public sealed record Prices
{
    /// <summary>An hour of work.</summary>
    public double? LabourHour { get; init; }

    /// <summary>A litre of potting mix.</summary>
    public double? MixLitre { get; init; }

    /// <summary>A thousand seeds, where the plan gives no price of its own.</summary>
    public double? ThousandSeeds { get; init; }

    /// <summary>Currency sign or code shown before amounts; may be empty.</summary>
    public string Currency { get; init; } = "";
}
