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

    /// <summary>Section name of the keys of [invest].</summary>
    public const string Invest = "invest";

    private const string Ours = "choice of this program";
    private const string Quarter = "a quarter less and more";
    private const string Assumed = "assumption";
    private const string Range = "list of two";

    public static readonly ImmutableArray<FieldDescription> Keys =
    [
        new(Root, "remove", "list of ids", None, "none", None, "Houses and spaces to take away; stands above the first section."),
        new(
            Root,
            "crops",
            "tables [crops.ID]",
            None,
            "none",
            None,
            "Columns of crops.csv with new values for the crop ID; a list of spaces may be written as a list."
        ),
        new(Root, "plan", "tables [[plan]]", None, "none", None, "Changes of lines of plan.csv, made in the order of the file."),
        new(
            Root,
            "invest",
            "table [invest]",
            None,
            "no money case",
            None,
            "What the variant costs and what a plant on time is worth, for benchsim invest; changes nothing that is played."
        ),
        new(
            Plan,
            "batch",
            "name, or its beginning and *",
            None,
            "any",
            None,
            "Lines of plan.csv to change, by id; all successions of a line change together."
        ),
        new(
            Plan,
            "crop",
            "crop id",
            None,
            "any",
            None,
            "Lines to change, by crop; with batch as well, both must be right. One of the two must be written."
        ),
        new(
            Plan,
            "shift_days",
            "whole number",
            "days",
            "0",
            None,
            "Moves sow and set_out by so many days, -365 to 365; a minus means earlier."
        ),
        new(Plan, "drop", "yes or no", None, "no", None, "Leaves the lines out of the plan."),
        new(
            Invest,
            "capital",
            "number",
            "money",
            FieldDescription.Required,
            None,
            "What it costs to build or buy, paid at the start; 0 or more."
        ),
        new(
            Invest,
            "life_years",
            "whole number",
            "years",
            FieldDescription.Required,
            None,
            "Years it serves, 1 to 60; each is one season."
        ),
        new(
            Invest,
            "discount_rate",
            "share a year",
            "% or 0 to 1",
            FieldDescription.Required,
            None,
            "What a year of waiting for money costs: the rate of a loan, or what the money would earn elsewhere."
        ),
        new(
            Invest,
            "plant_on_time",
            "number",
            "money a plant",
            "0",
            Ours,
            "What is lost with a wanted plant that is not in the field in time and is not replaced."
        ),
        new(
            Invest,
            "bought_in_share",
            "share",
            "% or 0 to 1",
            "0 %",
            Ours,
            "Share of the plants not in time that are bought in instead; together with bought_in_price."
        ),
        new(Invest, "bought_in_price", "number", "money a plant", "0", Ours, "Price of a plant bought in; together with bought_in_share."),
        new(
            Invest,
            "upkeep",
            "number",
            "money a year",
            "0",
            Ours,
            "Repairs, insurance and the like, every year; beyond the fuel, labour and materials of the play."
        ),
        new(Invest, "residual", "number", "money", "0", Ours, "What it is still worth at the end of its life."),
        new(
            Invest,
            "basis",
            "text",
            None,
            "empty",
            None,
            "Where these figures come from: a quotation, last year's books, a guess; printed beside the answer."
        ),
        new(Invest, "capital_range", Range, "money", Quarter, Assumed, "Lowest and highest capital to try."),
        new(
            Invest,
            "life_years_range",
            Range,
            "years",
            Quarter + ", to whole years outwards",
            Assumed,
            "Shortest and longest life to try, whole years."
        ),
        new(Invest, "discount_rate_range", Range, "% or 0 to 1", Quarter, Assumed, "Lowest and highest discount rate to try."),
        new(Invest, "plant_on_time_range", Range, "money a plant", Quarter, Assumed, "Lowest and highest value of a plant on time to try."),
        new(
            Invest,
            "bought_in_share_range",
            Range,
            "% or 0 to 1",
            Quarter,
            Assumed,
            "Lowest and highest share bought in to try; a quarter more is at most 100 %."
        ),
        new(
            Invest,
            "bought_in_price_range",
            Range,
            "money a plant",
            Quarter,
            Assumed,
            "Lowest and highest price of a plant bought in to try."
        ),
        new(Invest, "upkeep_range", Range, "money a year", Quarter, Assumed, "Lowest and highest upkeep to try."),
        new(Invest, "residual_range", Range, "money", Quarter, Assumed, "Lowest and highest worth at the end to try."),
    ];
}
