using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>How a thing is bought, and how much of it is there: a line of supplies.csv.</summary>
public sealed record Supply
{
    /// <summary>What stands for the trays that cell trays stand in.</summary>
    public const string Carrier = "carrier";

    /// <summary>Id of the crop or tray type, or <see cref="Carrier"/>.</summary>
    public required string Item { get; init; }

    /// <summary>Variety of the crop; empty for every variety that has no line of its own, and for trays.</summary>
    public string Variety { get; init; } = "";

    /// <summary>Seeds, trays or carriers in a pack.</summary>
    public int Pack { get; init; } = 1;

    /// <summary>Price of a pack, in the user's money; null where not given.</summary>
    public double? Price { get; init; }

    /// <summary>Seeds, trays or carriers on hand.</summary>
    public int OnHand { get; init; }

    /// <summary>Who sells it; may be empty.</summary>
    public string Supplier { get; init; } = "";

    /// <summary>Days from ordering to having it.</summary>
    public int DeliveryDays { get; init; }

    /// <summary>Whether trays are used again as they come back empty.</summary>
    public bool IsReused { get; init; }

    /// <summary>Where it is written.</summary>
    public SourcePlace Place { get; init; }
}
