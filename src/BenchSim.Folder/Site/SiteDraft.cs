using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>What could be read of site.toml: parts with a fault are as if nothing were said of them, or left out.</summary>
internal sealed record SiteDraft
{
    /// <summary>The scenario so far: all that site.toml says but the weather.</summary>
    public Scenario Scenario { get; init; } = ScenarioFields.Nothing;

    /// <summary>Units of numbers that say none.</summary>
    public UnitSystem Units => Scenario.Units;

    /// <summary>The season; null where it could not be read.</summary>
    public SeasonWindow? Window { get; init; }

    /// <summary>Ids of every space that is written, those with a fault too, with their kind where it could be read.</summary>
    public IReadOnlyDictionary<string, SpaceKind?> SpaceIds { get; init; } = new Dictionary<string, SpaceKind?>(StringComparer.Ordinal);

    /// <summary>The spaces that written names mean, whatever their case; a name that means none stays as it is.</summary>
    public ImmutableArray<string> SpacesMeant(ImmutableArray<string> written) =>
        written.IsEmpty ? written : [.. written.Select(name => Spelling.Meant(name, [.. SpaceIds.Keys]))];

    /// <summary>False when a house or space had a fault, so that nothing can be said about which crop finds a place.</summary>
    public bool HasGoodSpaces { get; init; }

    /// <summary>Where mishaps name their crops.</summary>
    public ImmutableArray<Cell> MishapCrops { get; init; } = [];

    public WeatherDraft? Weather { get; init; }
}

/// <summary>The weather section: weather that is ready, or where the record is.</summary>
/// <param name="Keys">The keys as they are written.</param>
/// <param name="Ready">Constant weather or that of monthly normals; null where a record must be read.</param>
/// <param name="File">File of the record; blank where none is read.</param>
/// <param name="YearCell">Where the year is written.</param>
/// <param name="TemperatureUnits">Units of the record's bare temperatures.</param>
/// <param name="RainUnits">Units of the record's bare rain.</param>
internal sealed record WeatherDraft(
    WeatherKeys Keys,
    WeatherInput? Ready,
    Cell File,
    Cell YearCell,
    UnitSystem TemperatureUnits,
    UnitSystem RainUnits
)
{
    /// <summary>File of what was observed; null for none.</summary>
    public Cell? Observed { get; init; }

    /// <summary>File of the forecast; null for none.</summary>
    public Cell? Forecast { get; init; }

    /// <summary>Weather that needs no file.</summary>
    public static WeatherDraft Of(WeatherInput ready) => new(ready.Written, ready, default, default, default, default);
}
