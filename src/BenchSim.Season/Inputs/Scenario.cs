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

    /// <summary>How dates of three numbers are written in the files; null for told apart by a day above 12.</summary>
    public DateOrder? DateOrder { get; init; }

    /// <summary>Latitude of the site, degrees, north positive; null when not given, and then the sun in a house is its lift.</summary>
    public double? Latitude { get; init; }

    /// <summary>
    /// Coefficient of the sun's radiation from a day's range of temperature (FAO-56 eq. 50), per square root of a kelvin.
    /// </summary>
    public double SunCoefficient { get; init; } = Heat.Sun.Inland;

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

    /// <summary>What goes wrong in some seasons, in the order of the file; empty for nothing.</summary>
    public ImmutableArray<Mishap> Mishaps { get; init; } = [];

    /// <summary>How things are bought and what is on hand, in the order of the file; empty where nothing is said.</summary>
    public ImmutableArray<Supply> Supplies { get; init; } = [];

    /// <summary>What was done and seen so far, in the order of the file; empty where no log is kept. No season is played by it.</summary>
    public ImmutableArray<LogEntry> Log { get; init; } = [];

    /// <summary>What the user says that values may truly be, in the order of the file; it changes no season that is played.</summary>
    public ImmutableArray<RangeRow> Ranges { get; init; } = [];

    /// <summary>Where the weather comes from.</summary>
    public required WeatherInput Weather { get; init; }

    /// <summary>What was seen of its weather; used where the season is played from a day on.</summary>
    public SeenWeather Seen { get; init; } = SeenWeather.None;

    /// <summary>The days whose weather is known, where the season is played from a day on; else null.</summary>
    public KnownDays? Known { get; init; }

    /// <summary>
    /// Whether a variant is planned anew: its sow dates are worked out under what it changes, to the set-out dates of the base. False for a
    /// base, and for a variant that keeps the sow dates of the base.
    /// </summary>
    public bool IsPlannedAnew { get; init; }

    /// <summary>
    /// Terms of the money case of a variant; null for a base, and for a variant without them. They change nothing that is played.
    /// </summary>
    public InvestTerms? Invest { get; init; }

    /// <summary>How often to play, and with which seed.</summary>
    public required PlaySettings Play { get; init; }
}
