using System.Collections.Immutable;

namespace BenchSim.Season.Inputs;

/// <summary>The terms on which a variant is judged as an investment, all of them the user's. Money is in the user's currency.</summary>
public sealed record InvestTerms
{
    /// <summary>What it costs to build or buy, paid at the start; 0 or more.</summary>
    public required double Capital { get; init; }

    /// <summary>Years it serves, 1 to 60; each is one season.</summary>
    public required int LifeYears { get; init; }

    /// <summary>Discount rate, fraction a year, 0 to 1.</summary>
    public required double DiscountRate { get; init; }

    /// <summary>What is lost with a wanted plant that is not in time and is not replaced, money a plant.</summary>
    public double PlantOnTime { get; init; }

    /// <summary>Share of the plants not in time that are bought in instead, 0 to 1.</summary>
    public double BoughtInShare { get; init; }

    /// <summary>Price of a plant bought in, money a plant.</summary>
    public double BoughtInPrice { get; init; }

    /// <summary>Yearly upkeep beyond the fuel, labour and materials of the play, money a year.</summary>
    public double Upkeep { get; init; }

    /// <summary>Worth at the end of its life, money.</summary>
    public double Residual { get; init; }

    /// <summary>Where the figures come from, in the user's words; may be empty.</summary>
    public string Basis { get; init; } = "";

    /// <summary>Ranges the user gave, by the name of the key in [invest] they belong to.</summary>
    public ImmutableSortedDictionary<string, InvestRange> Ranges { get; init; } =
        ImmutableSortedDictionary.Create<string, InvestRange>(StringComparer.Ordinal);

    /// <summary>
    /// What one more plant in time is worth: its price where it would have been bought in, what would have been lost where it would not.
    /// </summary>
    public double PlantWorth => (BoughtInShare * BoughtInPrice) + ((1 - BoughtInShare) * PlantOnTime);
}
