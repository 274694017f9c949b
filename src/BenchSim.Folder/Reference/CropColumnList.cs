using System.Collections.Immutable;

namespace BenchSim.Folder;

/// <summary>Columns of crops.csv.</summary>
internal static class CropColumnList
{
    private const string None = "";
    private const string File = FolderReference.CropFile;
    private const string Temperature = "C or F; a bare number is in the units of [site]";
    private const string Share = "% or 0 to 1";
    private const string Given = "the library's or the relative's";
    private const string Each = "see docs/sources.md";

    public static readonly ImmutableArray<FieldDescription> Columns =
    [
        new(
            File,
            "id",
            "name",
            None,
            FieldDescription.Required,
            None,
            "Crop. An id of the built-in library overrides just the cells that are filled."
        ),
        new(File, "name", "text", None, "the id", None, "Name shown to people."),
        new(
            File,
            "like",
            "crop id",
            None,
            "none",
            None,
            "For a new crop: the relative that lends the cells left blank; that relative may borrow too, at most five in a row."
        ),
        Value("hardiness", "hardy, half-hardy, tender or very tender", None, "How it stands cold."),
        Value("emerge_base", "temperature", Temperature, "Medium temperature at and below which nothing comes up."),
        Value("emerge_optimum", "temperature", Temperature, "Medium temperature at which it comes up fastest; above the base."),
        Value("emerge_ceiling", "temperature", Temperature, "Medium temperature at and above which nothing comes up; above the optimum."),
        Value(
            "emerge_heat",
            "number",
            "degree-days C above the base",
            "Heat to emergence of half the seedlings, above 0. A base and its heat are a pair: never mix sources."
        ),
        Value("emerge_sigma", "number", None, "Spread within a batch: standard deviation of the natural logarithm of the heat, 0 to 2."),
        Value("emerge_cv", "number", None, "Spread from batch to batch: coefficient of variation, 0 to 2."),
        Value(
            "germination_curve",
            "points `10 C 61 % | 15 C 80 %`, or none",
            Temperature,
            "Normal seedlings by medium temperature; none for no effect."
        ),
        Value("germinate_at", "temperature", Temperature, "Medium temperature behind days_to_ready, between base and ceiling."),
        Value("bottom_heat", "yes or no", None, "Whether it is started on a heat mat."),
        Value("max_mat", "temperature, or none", Temperature, "Hottest mat it may stand on; none for any."),
        Value(
            "leave_mat_at",
            "share",
            Share + ", between 0 and 1",
            "Share of the coming seedlings that must be up before a tray leaves the mat."
        ),
        Value(
            "emerge_give_up_days",
            "whole number",
            "days",
            "Days from sowing after which a tray that never came up is thrown out; 1 to 365."
        ),
        Value("germination", "share", Share, "Germination when the plan gives none, above 0 %."),
        Value("seeds_per_cell", "whole number", "seeds", "Seeds a cell when the plan does not say; 1 to 100."),
        Value("keep_per_cell", "whole number", "plants", "Seedlings kept a cell after thinning; 1 to 100."),
        Value("stand_loss", "share", Share + ", below 1", "Share of plants lost between emergence and the field."),
        Value("growth_base", "temperature", Temperature, "Air temperature at and below which it does not grow."),
        Value("growth_cap", "temperature", Temperature, "Air temperature above which it grows no faster; at least the reference."),
        Value("reference", "temperature", Temperature, "Air temperature at which days_to_ready holds; above the base."),
        Value("days_to_ready", "number", "days", "Days to field size at the reference temperature, above 0 to 365."),
        Value("counted_from", "sowing or emergence", None, "Where days_to_ready begins."),
        Value("includes_hardening", "yes or no", None, "Whether days_to_ready counts the nights of hardening."),
        Value("growth_cv", "number", None, "Spread of growth from batch to batch: coefficient of variation, 0 to 2."),
        Value("pot_up_days", "number", "days", "Days from emergence to potting up at the reference temperature; 0 to 365."),
        Value("pot_up_check_days", "number", "days", "Days of growth lost to a pot-up at the reference temperature; 0 to 100."),
        Value("pot_up_loss", "share", Share + ", below 1", "Share of seedlings lost in potting up."),
        Value(
            "min_night",
            "temperature, or none",
            Temperature,
            "Coldest night set-point it may stand in; none for any bench, heated or not. House and crop are compared to 0.05 C, so that 55 F and 12.8 C are one."
        ),
        Value("benches", "space ids separated by |, or none", None, "Benches it may use, first choice first; none to go by min_night."),
        Value("mats", "space ids separated by |, or none", None, "Mats it may use, first choice first; none to go by max_mat."),
        Value("hardening_nights", "whole number", "nights", "Nights on the table that must count; 0 to 100."),
        Value("harden_above", "temperature", Temperature, "A night at or above it counts for hardening."),
        Value("damage_below", "temperature", Temperature, "Below it trays on the table are carried in; not above harden_above."),
        Value("field_above", "temperature", Temperature, "Trays go to the field when every forecast night is at or above it."),
        Value("hold_days", "whole number", "days", "Days past due at which a tray is over-held; 0 to 365."),
        Value("discard_after_days", "whole number", "days", "Days past due at which a tray is thrown out; above hold_days, to 365."),
        Value("flat_hold_days", "whole number", "days", "Days past the pot-up stage at which a flat is over-held; 0 to 365."),
        Value(
            "flat_discard_days",
            "whole number",
            "days",
            "Days past the pot-up stage at which a flat is thrown out; above flat_hold_days, to 365."
        ),
        new(
            File,
            "harvest_after_days",
            "whole number, or none",
            "days",
            "not known",
            None,
            "Days from setting out to the first day of harvest, 0 to 365; with harvest_days. Used by \"succession\" alone."
        ),
        new(
            File,
            "harvest_days",
            "whole number, or none",
            "days",
            "not known",
            None,
            "Days on which it is harvested, 1 to 365; with harvest_after_days. Used by \"succession\" alone."
        ),
        Value("tray", "tray type id", None, "Tray type when the plan does not say."),
    ];

    private static FieldDescription Value(string name, string type, string unit, string meaning) =>
        new(File, name, type, unit, Given, Each, meaning);
}
