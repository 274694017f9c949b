using System.Collections.Immutable;

namespace BenchSim.Folder;

/// <summary>Columns of plan.csv, trays.csv and a weather record.</summary>
internal static class PlanColumnList
{
    private const string None = "";
    private const string Need = FieldDescription.Required;
    private const string Ours = "choice of this program";
    private const string FromCrop = "the crop's";
    private const string Plan = FolderReference.PlanFile;
    private const string Trays = FolderReference.TrayFile;
    private const string Weather = FolderReference.WeatherRecord;

    public static readonly ImmutableArray<FieldDescription> Columns =
    [
        new(Plan, "id", "name", None, Need, None, "Name of the batch, unique in the plan."),
        new(Plan, "crop", "crop id", None, Need, None, "Crop of the built-in library or of crops.csv."),
        new(Plan, "grower", "name", None, "site", Ours, "Whose batch it is."),
        new(
            Plan,
            "plants",
            "whole number",
            "plants",
            Need,
            None,
            "Plants wanted in the field, of each succession, 1 or more; seedlings kept together in a cell are one plant."
        ),
        new(Plan, "sow", "date", None, "worked out from set_out", None, "Sow date. Write sow, set_out, or both."),
        new(Plan, "set_out", "date", None, "worked out from sow", None, "Date the field wants it."),
        new(Plan, "every_days", "whole number", "days", "none", None, "Days from one succession to the next; needs times."),
        new(
            Plan,
            "times",
            "whole number",
            None,
            "1",
            None,
            "Successions in all, 1 to 1000: row x becomes the batches x-1, x-2 and so on, each every_days later."
        ),
        new(Plan, "method", "direct or pot up", None, "direct", Ours, "Sown in its own tray, or dense in an open flat and potted up."),
        new(Plan, "tray", "tray type id", None, FromCrop, "crops.csv, tray", "Tray it goes to the field in."),
        new(Plan, "flat", "tray type id", None, "required for pot up", None, "Open flat it is sown in; only for pot up."),
        new(Plan, "trays", "whole number", "trays", "worked out", "rules, stand_assurance", "Trays to fill; 1 or more."),
        new(Plan, "flats", "whole number", "flats", "worked out", "rules, stand_assurance", "Flats to sow; 1 or more; only for pot up."),
        new(
            Plan,
            "seeds_per_cell",
            "whole number",
            "seeds",
            FromCrop,
            "crops.csv, seeds_per_cell",
            "Seeds in each cell, 1 or more; only for direct. Seedlings above keep_per_cell of crops.csv are thinned out."
        ),
        new(
            Plan,
            "seeds_per_flat",
            "whole number",
            "seeds",
            "the flat's",
            "trays.csv, seeds_per_flat",
            "Seeds in each flat, 1 or more; only for pot up."
        ),
        new(Plan, "germination", "share", "% or 0 to 1", FromCrop, "crops.csv, germination", "Germination on the packet, above 0 %."),
        new(Plan, "tested_on", "date", None, "unknown", None, "Date of the germination test; not after sowing."),
        new(Plan, "packet", "name", None, "its own", None, "Packet the seed comes from: batches of one packet share its luck."),
        new(Plan, "thousand_seeds", "number", "money", "the site's", "site.toml, [prices]", "Price of a thousand seeds of this batch."),
        new(
            Plan,
            "earlier",
            "whole number",
            "days",
            "0",
            Ours,
            "Days by which \"level\" may sow it earlier than planned, 0 to 60; used by nothing else."
        ),
        new(
            Plan,
            "later",
            "whole number",
            "days",
            "0",
            Ours,
            "Days by which \"level\" may sow it later than planned, 0 to 60; used by nothing else."
        ),
        new(Plan, "note", "text", None, "empty", None, "Anything."),
        new(Trays, "id", "name", None, Need, None, "Tray type. An id of the built-in library overrides just the cells that are filled."),
        new(Trays, "name", "text", None, "the id", None, "Name shown to people."),
        new(Trays, "cells", "whole number", "cells", "required for a new type", None, "Cells a tray; 0 for an open flat."),
        new(Trays, "seeds_per_flat", "whole number", "seeds", "required for a new open flat", None, "Seeds sown in one open flat."),
        new(Trays, "medium_litres", "number", "litres", "required for a new type", None, "Potting mix one tray takes."),
        new(Trays, "places_each", "whole number", "places", "1", Ours, "Places one tray takes, 1 or more."),
        new(
            Weather,
            "date",
            "date",
            None,
            Need,
            None,
            "The day. At least one calendar year must be whole (kind record), or each month have 20 days (kind generated). Up to 3 days in a row may be missing: they are filled, and said."
        ),
        new(Weather, "tmin", "temperature", "C or F; a bare number as temperature_unit says", Need, None, "Lowest temperature of the day."),
        new(
            Weather,
            "tmax",
            "temperature",
            "C or F; a bare number as temperature_unit says",
            Need,
            None,
            "Highest temperature of the day, at least the lowest."
        ),
        new(Weather, "rain", "depth", "mm or in; a bare number as rain_unit says", Need, None, "Rain of the day."),
    ];
}
