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

    /// <summary>The folder of the variants.</summary>
    public const string VariantFolder = "variants";

    private const string VariantEnding = ".toml";

    /// <summary>The file of a variant, relative to the folder.</summary>
    public static string OfVariant(string name) => $"{VariantFolder}/{name}{VariantEnding}";

    /// <summary>The name of a variant by its file in the folder of the variants; null where the file is none.</summary>
    public static string? VariantOf(string file) =>
        file.EndsWith(VariantEnding, StringComparison.Ordinal) ? file[..^VariantEnding.Length] : null;
}
