using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Reference;

/// <summary>
/// What only a variant has, beside the sections of site.toml and the columns of crops.csv and plan.csv. None of it is a value of a record.
/// </summary>
public static class VariantFields
{
    /// <summary>What stands at the top of a variant file.</summary>
    public static FieldTable<object?> Root { get; } =
        FieldTable
            .Of<object?>("variant", "a variant", null)
            .Key("remove", new TextKind("list of ids"))
            .Means("Houses and spaces to take away; stands above the first section.", leftOut: "none")
            .Key("replan", Kinds.YesNo)
            .Means(
                "Whether its sow dates are worked out anew under what it changes, as compare --replan does; set-out dates stay those of "
                    + "the base.",
                leftOut: "no: sow dates stay those of the base"
            )
            .Key("crops", new TextKind("tables [crops.ID]"))
            .Means("Columns of crops.csv with new values for the crop ID; a list of spaces may be written as a list.", leftOut: "none")
            .Key("plan", new TextKind("tables [[plan]]"))
            .Means("Changes of lines of plan.csv, made in the order of the file.", leftOut: "none")
            .Key("invest", new TextKind("table [invest]"))
            .Means(
                "What the variant costs and what a plant on time is worth, for benchsim invest; changes nothing that is played.",
                leftOut: "no money case"
            )
            .Table();

    /// <summary>The keys of [[plan]] that are no columns of plan.csv.</summary>
    public static FieldTable<object?> Plan { get; } =
        FieldTable
            .Of<object?>("variant plan", "[[plan]] of a variant", null)
            .Key("batch", new TextKind("name, or its beginning and *"))
            .Means("Lines of plan.csv to change, by id; all successions of a line change together.", leftOut: "any")
            .Key("crop", new TextKind("crop id"))
            .Means("Lines to change, by crop; with batch as well, both must be right. One of the two must be written.", leftOut: "any")
            .Key("shift_days", new WholeKind(-365, 365, "day"))
            .Means("Moves sow and set_out by so many days; a minus means earlier.", leftOut: "0")
            .Key("drop", Kinds.YesNo)
            .Means("Leaves the lines out of the plan.", leftOut: "no")
            .Table();

    /// <summary>Columns of plan.csv that a variant may change.</summary>
    internal static ImmutableArray<string> PlanColumns { get; } = Changeable(PlanFields.Table);

    /// <summary>Columns of crops.csv that a variant may change.</summary>
    internal static ImmutableArray<string> CropColumns { get; } = Changeable(CropFields.Table);

    private static ImmutableArray<string> Changeable(FieldTable table) =>
        [.. table.Fields.Where(field => field.FixedBecause.Length == 0).Select(field => field.Name)];
}
