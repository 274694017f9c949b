using System.Collections.Immutable;

namespace BenchSim.Folder;

/// <summary>Keys that only a variant has, beside those of site.toml and the columns of crops.csv and plan.csv.</summary>
internal static class VariantKeyList
{
    private const string None = "";

    /// <summary>Section name of the keys at the top of a variant file.</summary>
    public const string Root = "variant";

    /// <summary>Section name of the keys of [[plan]].</summary>
    public const string Plan = "variant plan";

    public static readonly ImmutableArray<FieldDescription> Keys =
    [
        new(Root, "remove", "list of ids", None, "none", None, "Houses and spaces to take away; stands above the first section."),
        new(Root, "crops", "tables [crops.ID]", None, "none", None, "Columns of crops.csv with new values for the crop ID; a list of spaces may be written as a list."),
        new(Root, "plan", "tables [[plan]]", None, "none", None, "Changes of lines of plan.csv, made in the order of the file."),

        new(Plan, "batch", "name, or its beginning and *", None, "any", None, "Lines of plan.csv to change, by id; all successions of a line change together."),
        new(Plan, "crop", "crop id", None, "any", None, "Lines to change, by crop; with batch as well, both must be right. One of the two must be written."),
        new(Plan, "shift_days", "whole number", "days", "0", None, "Moves sow and set_out by so many days, -365 to 365; a minus means earlier."),
        new(Plan, "drop", "yes or no", None, "no", None, "Leaves the lines out of the plan."),
    ];
}
