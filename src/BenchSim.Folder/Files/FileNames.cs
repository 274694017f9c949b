using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Files;

/// <summary>Names of the files of a scenario folder. A weather record has any name; the tables have those of their fields.</summary>
public static class FileNames
{
    /// <summary>The site file.</summary>
    public const string Site = "site.toml";

    /// <summary>The plan.</summary>
    public const string Plan = Season.Inputs.PlanFields.File;

    /// <summary>The file of the user's own crops.</summary>
    public const string Crops = Season.Inputs.CropFields.File;

    /// <summary>The file of the user's own tray types.</summary>
    public const string Trays = Season.Inputs.TrayFields.File;

    /// <summary>The file of how things are bought.</summary>
    public const string Supplies = Season.Inputs.SupplyFields.File;

    /// <summary>The file of what values may truly be.</summary>
    public const string Ranges = Season.Inputs.RangeFields.File;

    /// <summary>The file of what was done and seen.</summary>
    public const string Log = Season.Inputs.LogFields.File;

    /// <summary>The tables of a folder, as CSV; a workbook may stand in the place of each.</summary>
    public static ImmutableArray<string> Tables { get; } = [Plan, Crops, Trays, Supplies, Ranges, Log];

    /// <summary>The name of the workbook that may stand in the place of a CSV file; a workbook's name stays.</summary>
    public static string WorkbookOf(string table) =>
        table.EndsWith(TableEnding, StringComparison.OrdinalIgnoreCase) ? table[..^TableEnding.Length] + WorkbookEnding : table;

    /// <summary>Whether a file is the plan, as CSV or as a workbook.</summary>
    public static bool IsPlan(string name) =>
        string.Equals(name, Plan, StringComparison.Ordinal) || string.Equals(name, WorkbookOf(Plan), StringComparison.Ordinal);

    /// <summary>Whether a file is the log, as CSV or as a workbook.</summary>
    public static bool IsLog(string name) =>
        string.Equals(name, Log, StringComparison.Ordinal) || string.Equals(name, WorkbookOf(Log), StringComparison.Ordinal);

    /// <summary>The folder of the variants.</summary>
    public const string VariantFolder = "variants";

    private const string TableEnding = ".csv";
    private const string WorkbookEnding = ".xlsx";
    private const string VariantEnding = ".toml";

    /// <summary>The file of a variant, relative to the folder.</summary>
    public static string OfVariant(string name) => $"{VariantFolder}/{name}{VariantEnding}";

    /// <summary>The name of a variant by its file in the folder of the variants; null where the file is none.</summary>
    public static string? VariantOf(string file) =>
        file.EndsWith(VariantEnding, StringComparison.Ordinal) ? file[..^VariantEnding.Length] : null;
}
