using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>Everything a season needs, read and checked: the site, the crops, the plan, the weather and how to play.</summary>
public sealed record Scenario
{
    /// <summary>Name of the site or the case.</summary>
    public required string Name { get; init; }

    /// <summary>The question the scenario answers, in the user's words; may be empty.</summary>
    public string Question { get; init; } = "";

    /// <summary>Units reports are written in.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>First and last day of the plan.</summary>
    public required SeasonWindow Window { get; init; }

    /// <summary>Houses in the order of the file.</summary>
    public required ImmutableArray<House> Houses { get; init; }

    /// <summary>Spaces in the order of the file, which is the order of preference.</summary>
    public required ImmutableArray<Space> Spaces { get; init; }

    /// <summary>Tray types that the plan uses, in order of id.</summary>
    public required ImmutableArray<TrayType> TrayTypes { get; init; }

    /// <summary>Crops that the plan uses, in order of id.</summary>
    public required ImmutableArray<Crop> Crops { get; init; }

    /// <summary>Batches in the order of the file, successions expanded.</summary>
    public required ImmutableArray<BatchOrder> Batches { get; init; }

    /// <summary>How the site is worked.</summary>
    public required SiteRules Rules { get; init; }

    /// <summary>Where the weather comes from.</summary>
    public required WeatherInput Weather { get; init; }

    /// <summary>
    /// Terms of the money case of a variant; null for a base, and for a variant without them. They change nothing that is played.
    /// </summary>
    public InvestTerms? Invest { get; init; }

    /// <summary>How often to play, and with which seed.</summary>
    public required PlaySettings Play { get; init; }
}
