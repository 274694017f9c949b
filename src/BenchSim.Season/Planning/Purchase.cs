using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>What is to be bought of one thing, in the packs it is sold in.</summary>
/// <param name="Supply">How it is bought, and what is on hand.</param>
/// <param name="Name">Name shown to people.</param>
/// <param name="Unit">What is counted: seeds, trays, flats or carriers.</param>
/// <param name="Needed">How many the plan needs.</param>
/// <param name="NeededBy">First day on which one is used; null where none is.</param>
/// <param name="Growers">How many each grower needs, in order of name; empty for what is used again.</param>
public sealed record Purchase(
    Supply Supply,
    string Name,
    string Unit,
    long Needed,
    DateOnly? NeededBy,
    ImmutableArray<(string Grower, long Count)> Growers
)
{
    /// <summary>Packs to buy: what is not on hand, rounded up to whole packs.</summary>
    public long Packs => (Math.Max(0, Needed - Supply.OnHand) + Supply.Pack - 1) / Supply.Pack;

    /// <summary>What is left when everything is used as planned.</summary>
    public long LeftOver => Supply.OnHand + Packs * Supply.Pack - Needed;

    /// <summary>Cost of the packs, in the user's money; null where no price is given.</summary>
    public double? Cost => Packs * Supply.Price;

    /// <summary>Last day on which to order it; null where nothing is bought.</summary>
    public DateOnly? OrderBy => Packs == 0 ? null : NeededBy?.AddDays(-Supply.DeliveryDays);
}
