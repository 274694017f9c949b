using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Reference;

/// <summary>
/// Every key of site.toml and of a variant and every column of the tables, by section and file. The reader knows no other: a name that is
/// not here is a fault, and docs/folder.md shows the same list.
/// </summary>
public static class FolderReference
{
    /// <summary>The sections of site.toml, in their order. A section may have its keys in two tables.</summary>
    public static ImmutableArray<FieldTable> Site { get; } =
    [
        ScenarioFields.Site,
        ScenarioFields.Season,
        HouseFields.Table,
        HeatFields.Table,
        SpaceFields.Table,
        PowerFields.Table,
        SpaceFields.Change,
        MishapFields.Table,
        RuleFields.Table,
        ReliefFields.Table,
        WorkMinuteFields.Table,
        WorkSecondFields.Table,
        SeedFields.Table,
        MixFields.Table,
        PriceFields.Table,
        WeatherFields.Table,
        ScenarioFields.Play,
    ];

    /// <summary>The columns of plan.csv, crops.csv, trays.csv, supplies.csv, ranges.csv, log.csv and a weather record.</summary>
    public static ImmutableArray<FieldTable> Columns { get; } =
    [PlanFields.Table, CropFields.Table, TrayFields.Table, SupplyFields.Table, RangeFields.Table, LogFields.Table, RecordFields.Table];

    /// <summary>What only a variant has.</summary>
    public static ImmutableArray<FieldTable> Variant { get; } =
    [VariantFields.Root, VariantFields.Plan, InvestFields.Table, InvestFields.Ranges];

    /// <summary>All of it.</summary>
    public static IEnumerable<FieldTable> All => [.. Site, .. Columns, .. Variant];

    /// <summary>A key of site.toml; null for one that it has not.</summary>
    /// <param name="section">Name of its section.</param>
    /// <param name="key">Its name.</param>
    public static Field? KeyOf(string section, string key) =>
        Site.Where(table => string.Equals(table.Section, section, StringComparison.Ordinal))
            .SelectMany(table => table.Fields)
            .FirstOrDefault(field => string.Equals(field.Name, key, StringComparison.Ordinal));

    /// <summary>Names of the sections of site.toml.</summary>
    public static ImmutableArray<string> Sections { get; } =
    [.. Site.Select(table => table.Section).Where(name => !name.Contains('.', StringComparison.Ordinal)).Distinct(StringComparer.Ordinal)];

    /// <summary>Names that may stand at the top of a variant file.</summary>
    internal static ImmutableArray<string> VariantRoot { get; } = [.. VariantFields.Root.Names, .. Sections];

    private static readonly Dictionary<string, ImmutableArray<string>> s_keys = Site.Concat(Variant)
        .Append(SweepFields.Table)
        .GroupBy(table => table.Section, StringComparer.Ordinal)
        .ToDictionary(group => group.Key, group => group.SelectMany(table => table.Names).ToImmutableArray(), StringComparer.Ordinal);

    /// <summary>Keys of a section; the sections themselves for the empty name.</summary>
    internal static ImmutableArray<string> KeysOf(string section) => section.Length == 0 ? Sections : s_keys[section];

    /// <summary>Headings of the sections of site.toml that have a key.</summary>
    internal static ImmutableArray<string> HeadingsWith(string key) =>
        [
            .. Site.Where(table => table.Names.Contains(key, StringComparer.Ordinal))
                .Select(table => table.Heading)
                .Distinct(StringComparer.Ordinal),
        ];

    /// <summary>A section as its heading is written.</summary>
    internal static string HeadingOf(string section) =>
        section.Length == 0
            ? "site.toml"
            : Site.Concat(Variant)
                .Append(SweepFields.Table)
                .First(table => string.Equals(table.Section, section, StringComparison.Ordinal))
                .Heading;
}
