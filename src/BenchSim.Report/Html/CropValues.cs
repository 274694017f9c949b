using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Report.Html;

/// <summary>Values of the library as text, under the column names of crops.csv and trays.csv.</summary>
public static class CropValues
{
    /// <summary>The value of a crop's column in the user's units; nothing for a column that holds no single value.</summary>
    public static string Of(Crop crop, string column, UnitSystem units)
    {
        string Temperature(double celsius) =>
            units == UnitSystem.Imperial ? $"{Plain(UnitWords.Degrees(celsius, units))} °F" : $"{Plain(celsius)} °C";
        string TemperatureOrAny(double? celsius) => celsius is { } known ? Temperature(known) : "any";
        return column switch
        {
            "hardiness" => crop.Hardiness switch
            {
                Hardiness.Hardy => "hardy",
                Hardiness.HalfHardy => "half-hardy",
                Hardiness.Tender => "tender",
                _ => "very tender",
            },
            "emerge_base" => Temperature(crop.EmergeBaseC),
            "emerge_optimum" => Temperature(crop.EmergeOptimumC),
            "emerge_ceiling" => Temperature(crop.EmergeCeilingC),
            "emerge_heat" => $"{Plain(crop.EmergeHeat)} degree-days C",
            "emerge_sigma" => Plain(crop.EmergeSigma),
            "emerge_cv" => Plain(crop.EmergeCv),
            "germination_curve" => string.Join(
                ", ",
                crop.GerminationCurve.Select(point => $"{Temperature(point.TemperatureC)}: {Plain(point.Percent)} %")
            ),
            "germinate_at" => Temperature(crop.GerminateAtC),
            "bottom_heat" => crop.BottomHeat ? "yes" : "no",
            "max_mat" => TemperatureOrAny(crop.MaxMatC),
            "leave_mat_at" => Share(crop.LeaveMatAt),
            "emerge_give_up_days" => Plain(crop.EmergeGiveUpDays),
            "germination" => Share(crop.Germination),
            "seeds_per_cell" => Plain(crop.SeedsPerCell),
            "keep_per_cell" => Plain(crop.KeepPerCell),
            "stand_loss" => Share(crop.StandLoss),
            "growth_base" => Temperature(crop.GrowthBaseC),
            "growth_cap" => Temperature(crop.GrowthCapC),
            "reference" => Temperature(crop.ReferenceC),
            "days_to_ready" when crop.DaysToReady is { FromSowing: true } or { WithHardening: true } =>
                $"{Written(crop.DaysToReady)} ({Plain(Math.Round(crop.GrowthDays, 1))} days of growth)",
            "growth_days" or "days_to_ready" => Grown(crop),
            "counted_from" => crop.DaysToReady is { } written
                ? written.FromSowing
                    ? "sowing"
                    : "emergence"
                : "",
            "includes_hardening" => crop.DaysToReady is { } days
                ? days.WithHardening
                    ? "yes"
                    : "no"
                : "",
            "growth_cv" => Plain(crop.GrowthCv),
            "pot_up_days" => $"{Plain(crop.PotUpDays)} days",
            "pot_up_check_days" => $"{Plain(crop.PotUpCheckDays)} days",
            "pot_up_loss" => Share(crop.PotUpLoss),
            "min_night" => TemperatureOrAny(crop.MinNightC),
            "benches" => List(crop.Benches),
            "mats" => List(crop.Mats),
            "hardening_nights" => Plain(crop.HardeningNights),
            "harden_above" => Temperature(crop.HardenAboveC),
            "damage_below" => Temperature(crop.DamageBelowC),
            "field_above" => Temperature(crop.FieldAboveC),
            "hold_days" => Plain(crop.HoldDays),
            "discard_after_days" => Plain(crop.DiscardAfterDays),
            "flat_hold_days" => Plain(crop.FlatHoldDays),
            "flat_discard_days" => Plain(crop.FlatDiscardDays),
            "harvest_after_days" => crop.HarvestAfterDays is { } after ? Plain(after) : "",
            "harvest_days" => crop.HarvestDays is { } harvest ? Plain(harvest) : "",
            "tray" => crop.TrayId,
            _ => "",
        };
    }

    /// <summary>The value of a tray type's column.</summary>
    public static string Of(TrayType tray, string column) =>
        column switch
        {
            "cells" => Plain(tray.Cells),
            "seeds_per_flat" => Plain(tray.SeedsPerFlat),
            "medium_litres" => $"{Plain(tray.MediumLitres)} litres",
            "places_each" => Plain(tray.PlacesEach),
            _ => "",
        };

    // As it stands in the file, so that it can be copied there.
    private static string Written(WrittenDays days) =>
        $"{Plain(days.Days)} days from {(days.FromSowing ? "sowing" : "emergence")}{(days.WithHardening ? " with hardening" : "")}";

    private static string Grown(Crop crop) => $"{Plain(crop.GrowthDays)} days from emergence, hardening not included";

    private static string List(ImmutableArray<string> ids) =>
        ids.IsEmpty ? "worked out" : string.Join(", ", ids.Select(id => PlainText.Short(id, 30)));

    private static string Share(double fraction) => $"{Plain(fraction * 100)} %";

    private static string Plain(double value) => Math.Round(value, 3).ToString("#,##0.###", null);
}
