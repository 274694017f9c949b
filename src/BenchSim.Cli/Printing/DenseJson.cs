using System.Text.Json;
using BenchSim.Study.Dense;
using BenchSim.Study.Results;

namespace BenchSim.Cli.Printing;

/// <summary>Prints direct against dense sowing for machines. A figure that does not exist is null.</summary>
internal static class DenseJson
{
    public static void Print(Desk desk, DenseResult result, string? folder) =>
        desk.SayJson(json =>
        {
            json.WriteString("name", result.Base.Scenario.Name);
            json.WriteNumber("seasons", result.Seasons);
            json.WriteNumber("seed", result.Seed);
            json.WriteNumber("comparisons", result.Comparisons);
            json.WriteNumber("each_confidence", result.EachConfidence);
            json.WriteString("flat", result.Flat.Id);
            json.WriteStartArray("crops");
            foreach (var crop in result.Crops)
            {
                Write(json, crop);
            }

            json.WriteEndArray();
            json.WriteStartArray("skipped");
            foreach (var skip in result.Skipped)
            {
                json.WriteStartObject();
                json.WriteString("crop", skip.CropId);
                json.WriteString("way", skip.Way);
                json.WriteString("why", skip.Why);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteString("folder", folder);
        });

    private static void Write(Utf8JsonWriter json, DenseCrop crop)
    {
        json.WriteStartObject();
        json.WriteString("crop", crop.Crop.Id);
        json.WriteNumber("sowings", crop.Direct.Length);
        if (crop.IsPlannedDirect is { } isDirect)
        {
            json.WriteString("planned", isDirect ? "direct" : "pot up");
        }
        else
        {
            json.WriteString("planned", "both");
        }

        json.WriteNumber("seeds_per_flat_least", crop.SeedsPerFlat.Least);
        json.WriteNumber("seeds_per_flat_most", crop.SeedsPerFlat.Most);
        json.WriteStartObject("fits");
        StudyJson.Write(json, "direct", crop.Fits.Base);
        StudyJson.Write(json, "dense", crop.Fits.Variant);
        json.WriteNumber("difference", crop.Fits.Difference);
        json.WriteNumber("low", crop.Fits.Low);
        json.WriteNumber("high", crop.Fits.High);
        json.WriteBoolean("real", crop.Fits.IsReal);
        json.WriteEndObject();
        json.WriteStartArray("measures");
        foreach (var change in crop.Changes)
        {
            Write(json, change);
        }

        json.WriteEndArray();
        Write(json, crop.BreakEven);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, MeasureChange change)
    {
        json.WriteStartObject();
        json.WriteString("measure", change.Measure.Code);
        json.WriteString("unit", change.Measure.Unit);
        json.WriteNumber("direct", change.Base);
        json.WriteNumber("dense", change.Variant);
        json.WriteNumber("difference", change.Difference);
        StudyJson.WriteNumber(json, "low", change.Low);
        StudyJson.WriteNumber(json, "high", change.High);
        json.WriteBoolean("real", change.IsReal);
        json.WriteNumber("seasons_differing", change.Differing);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, DenseBreakEven even)
    {
        json.WriteStartObject("break_even");
        StudyJson.WriteNumber(json, "mat_seeds_per_flat", even.MatSeeds);
        StudyJson.WriteNumber(json, "mat_seeds_per_flat_whole_flats", even.MatSeedsWhole ?? double.NaN);
        StudyJson.WriteNumber(json, "labour_seeds_per_flat", even.LabourSeeds ?? double.NaN);
        StudyJson.WriteNumber(json, "labour_seeds_per_flat_whole_flats", even.LabourSeedsWhole ?? double.NaN);
        json.WriteNumber("direct_minutes", even.DirectMinutes);
        json.WriteNumber("potted_minutes", even.PottedMinutes);
        json.WriteEndObject();
    }
}
