using System.Collections.Immutable;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>What could be read of site.toml: parts with a fault are null or left out.</summary>
internal sealed record SiteDraft
{
    public string? Name { get; init; }

    public string Question { get; init; } = "";

    public UnitSystem Units { get; init; }

    public SeasonWindow? Window { get; init; }

    public ImmutableArray<House> Houses { get; init; } = [];

    public ImmutableArray<Space> Spaces { get; init; } = [];

    /// <summary>Ids of every space that is written, those with a fault too, with their kind where it could be read.</summary>
    public IReadOnlyDictionary<string, SpaceKind?> SpaceIds { get; init; } = new Dictionary<string, SpaceKind?>(StringComparer.Ordinal);

    /// <summary>False when a house or space had a fault, so that nothing can be said about which crop finds a place.</summary>
    public bool HasGoodSpaces { get; init; }

    public SiteRules Rules { get; init; } = new();

    public WeatherDraft? Weather { get; init; }

    public PlaySettings Play { get; init; } = new();
}

/// <summary>The weather section: weather that is ready, or where the record is.</summary>
/// <param name="Ready">Constant weather or that of monthly normals; null where a record must be read.</param>
/// <param name="File">File of the record; blank where none is read.</param>
/// <param name="IsGenerated">Whether a generator is fitted to the record, instead of playing its years.</param>
/// <param name="Year">Year to play; null for a drawn one.</param>
/// <param name="YearCell">Where the year is written.</param>
/// <param name="TemperatureUnits">Units of the record's bare temperatures.</param>
/// <param name="RainUnits">Units of the record's bare rain.</param>
internal sealed record WeatherDraft(
    WeatherInput? Ready,
    Cell File,
    bool IsGenerated,
    int? Year,
    Cell YearCell,
    UnitSystem TemperatureUnits,
    UnitSystem RainUnits
)
{
    /// <summary>Weather that needs no file.</summary>
    public static WeatherDraft Of(WeatherInput ready) => new(ready, default, false, null, default, default, default);
}
