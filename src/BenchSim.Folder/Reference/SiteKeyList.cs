using System.Collections.Immutable;

namespace BenchSim.Folder;

/// <summary>Keys of site.toml that describe the site.</summary>
internal static class SiteKeyList
{
    private const string None = "";
    private const string Need = FieldDescription.Required;
    private const string Ours = "choice of this program";
    private const string Assumed = "assumption";
    private const string Temperature = "C or F; a bare number is in the units of [site]";
    private const string Length = "m, cm, mm, ft or in; a bare number is in metres or feet";

    public static readonly ImmutableArray<FieldDescription> Site =
    [
        new("site", "name", "text", None, Need, None, "Name of the site or of the case."),
        new(
            "site",
            "question",
            "text",
            None,
            "empty",
            None,
            "The question the folder is to answer, in your words; printed above the answer."
        ),
        new(
            "site",
            "units",
            "metric or imperial",
            None,
            "metric",
            Ours,
            "Units of numbers that say none, and of reports: C, m, mm or F, ft, in."
        ),
        new("season", "opens", "date", None, Need, None, "First day on which anything may be sown."),
        new("season", "closes", "date", None, Need, None, "Last day for which a batch may be wanted in the field."),
        new("house", "id", "name", None, Need, None, "Short name, unique among houses and spaces."),
        new("house", "name", "text", None, "the id", None, "Name shown to people."),
        new(
            "house",
            "night",
            "temperature",
            Temperature,
            "unheated",
            None,
            "Heating set-point from 18:00 to 06:00; leave it out for an unheated house."
        ),
        new("house", "day", "temperature", Temperature, "as night", Ours, "Heating set-point from 06:00 to 18:00."),
        new(
            "house",
            "vent",
            "temperature",
            Temperature,
            "24 C",
            Assumed,
            "Vent set-point: the air is not let rise above it unless it is hotter outdoors."
        ),
        new("house", "day_lift", "difference", "C or F", "8 C", Assumed, "Greatest warming by the sun, at noon, 0 to 30 C (54 F)."),
        new(
            "house",
            "open",
            "all season, when needed or a date",
            None,
            "all season",
            Ours,
            "When the house is open: all season; from a date on; or \"when needed\": last in every crop's preference, heated only while it holds trays."
        ),
        new("space", "id", "name", None, Need, None, "Short name, unique among houses and spaces."),
        new("space", "name", "text", None, "the id", None, "Name shown to people."),
        new("space", "kind", "mat, bench or table", None, Need, None, "Heat mat, bench, or hardening table."),
        new("space", "house", "id of a house", None, "outdoors", None, "The house it stands in."),
        new("space", "places", "whole number", "places of one 1020 tray", "from length and width", None, "Whole tray places, 0 or more."),
        new(
            "space",
            "length",
            "length",
            Length,
            None,
            None,
            "Length, instead of places. The outline of a tray is 279 x 539 mm; trays lie all one way, whichever way holds more."
        ),
        new("space", "width", "length", Length, None, None, "Width, together with length."),
        new(
            "space",
            "usable",
            "share",
            "% or 0 to 1",
            "95 %",
            Assumed,
            "Share of the places by length and width that is really used; the rest is room to work."
        ),
        new(
            "space",
            "temperature",
            "temperature",
            Temperature,
            "required for a mat",
            None,
            "Set temperature of the medium on a mat; only for a mat."
        ),
        new(
            "space",
            "aisle_places",
            "whole number",
            "places",
            "0",
            Ours,
            "Further places in the aisle, used only by the relief \"aisle\"."
        ),
        new(
            "space",
            "unit_places",
            "whole number",
            "places",
            "a tenth of the space's places, rounded up",
            Ours,
            "Places of one mat, bench or table: the step by which the space could grow, used by bottlenecks. 1 or more."
        ),
        new(
            "space",
            "changes",
            "list of { from, places }",
            None,
            "none",
            None,
            "Later numbers of places, such as benches given up to crops in the ground."
        ),
        new("space.changes", "from", "date", None, Need, None, "First day on which the number holds."),
        new("space.changes", "places", "whole number", "places", Need, None, "Places from that day on, 0 or more."),
        new("play", "seasons", "whole number", "seasons", "1000", Ours, "Seasons to play, 1 to 1,000,000."),
        new("play", "seed", "whole number", None, "1", Ours, "Seed of all luck: the same seed gives the same answer."),
    ];
}
