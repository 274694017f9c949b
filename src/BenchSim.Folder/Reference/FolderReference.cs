using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder;

/// <summary>
/// Every key of site.toml and every column of the tables. The reader knows no other: a name that is not here is a fault, and docs/folder.md
/// shows the same list.
/// </summary>
public static class FolderReference
{
    /// <summary>Name of the site file.</summary>
    public const string SiteFile = "site.toml";

    /// <summary>Name of the plan.</summary>
    public const string PlanFile = "plan.csv";

    /// <summary>Name of the file of the user's own crops.</summary>
    public const string CropFile = "crops.csv";

    /// <summary>Name of the file of the user's own tray types.</summary>
    public const string TrayFile = "trays.csv";

    /// <summary>Name of the folder of the variants.</summary>
    public const string VariantFolder = "variants";

    /// <summary>Name under which the columns of a weather record are listed; the file itself may have any name.</summary>
    public const string WeatherRecord = "weather record";

    private static readonly ImmutableArray<string> RootKeys =
    [
        "site",
        "season",
        "house",
        "space",
        "rules",
        "relief",
        "work_minutes",
        "seed",
        "prices",
        "weather",
        "play",
    ];

    private static readonly ImmutableArray<FieldTable> Rules =
    [
        RuleFields.Table,
        ReliefFields.Table,
        WorkMinuteFields.Table,
        SeedFields.Table,
        PriceFields.Table,
    ];

    /// <summary>Keys of site.toml, section by section.</summary>
    public static ImmutableArray<FieldDescription> SiteKeys { get; } =
    [
        .. SiteKeyList.Site,
        .. HeatKeyList.Heat,
        .. Rules.SelectMany(table => table.Fields).Select(FieldDescription.Of),
        .. WeatherKeyList.Weather,
    ];

    /// <summary>Columns of plan.csv, crops.csv, trays.csv and a weather record.</summary>
    public static ImmutableArray<FieldDescription> Columns { get; } = [.. PlanColumnList.Columns, .. CropColumnList.Columns];

    /// <summary>Keys that only a variant has; beside them it has those of site.toml, and columns of crops.csv and plan.csv.</summary>
    public static ImmutableArray<FieldDescription> VariantKeys { get; } = VariantKeyList.Keys;

    /// <summary>Keys at the top of a variant file.</summary>
    internal static ImmutableArray<string> VariantRootKeys { get; } = [.. NamesOf(VariantKeyList.Root), .. RootKeys];

    /// <summary>Keys of [[plan]] in a variant that are no columns of plan.csv.</summary>
    internal static ImmutableArray<string> VariantPlanKeys { get; } = NamesOf(VariantKeyList.Plan);

    private static readonly Dictionary<string, ImmutableArray<string>> KeyNames = NamesBySection([.. SiteKeys, .. VariantKeyList.Keys]);
    private static readonly Dictionary<string, ImmutableArray<string>> ColumnNames = NamesBySection(Columns);

    /// <summary>Columns of one file, in order.</summary>
    internal static ImmutableArray<string> ColumnsOf(string file) => ColumnNames[file];

    /// <summary>Columns that a file must have.</summary>
    internal static ImmutableArray<string> RequiredColumnsOf(string file) =>
        [
            .. Columns
                .Where(column => string.Equals(column.Section, file, StringComparison.Ordinal) && column.IsRequired)
                .Select(column => column.Name),
        ];

    /// <summary>Keys of one section of site.toml; the sections themselves for the empty name.</summary>
    internal static ImmutableArray<string> KeysOf(string section) => section.Length == 0 ? RootKeys : KeyNames[section];

    /// <summary>Headings of the sections that have a key.</summary>
    internal static ImmutableArray<string> SectionsWith(string key) =>
        [.. SiteKeys.Where(each => string.Equals(each.Name, key, StringComparison.Ordinal)).Select(each => Heading(each.Section))];

    /// <summary>A section as its heading is written.</summary>
    internal static string Heading(string section) =>
        section switch
        {
            "" => "site.toml",
            "house" or "space" => $"[[{section}]]",
            "space.changes" => "changes of [[space]]",
            _ => $"[{section}]",
        };

    private static ImmutableArray<string> NamesOf(string variantSection) =>
        [.. VariantKeyList.Keys.Where(key => string.Equals(key.Section, variantSection, StringComparison.Ordinal)).Select(key => key.Name)];

    private static Dictionary<string, ImmutableArray<string>> NamesBySection(ImmutableArray<FieldDescription> fields) =>
        fields
            .GroupBy(field => field.Section, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Select(field => field.Name).ToImmutableArray(), StringComparer.Ordinal);
}
