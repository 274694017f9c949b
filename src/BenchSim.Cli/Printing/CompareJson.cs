using System.Text.Json;
using BenchSim.Study.Compare;
using BenchSim.Study.Results;

namespace BenchSim.Cli.Printing;

/// <summary>Prints a comparison for machines.</summary>
internal static class CompareJson
{
    public static void Print(Desk desk, CompareResult result, string? caseReport) =>
        desk.SayJson(json =>
        {
            json.WriteString("name", result.Base.Scenario.Name);
            json.WriteNumber("seasons", result.Seasons);
            json.WriteNumber("seed", result.Seed);
            json.WriteNumber("confidence", result.Confidence);
            json.WriteNumber("comparisons", result.Comparisons);
            json.WriteNumber("each_confidence", result.EachConfidence);
            json.WriteStartArray("variants");
            foreach (var variant in result.Variants)
            {
                json.WriteStartObject();
                Write(json, variant);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            if (caseReport is not null)
            {
                json.WriteString("case", caseReport);
            }
        });

    /// <summary>Writes the members of one variant.</summary>
    public static void Write(Utf8JsonWriter json, VariantResult variant)
    {
        json.WriteString("name", variant.Name);
        Write(json, variant.Fits);
        json.WriteStartArray("measures");
        foreach (var change in variant.Changes)
        {
            Write(json, change);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, FitChange fits)
    {
        json.WriteStartObject("fits");
        StudyJson.Write(json, "base", fits.Base);
        StudyJson.Write(json, "variant", fits.Variant);
        json.WriteNumber("both", fits.Both);
        json.WriteNumber("only_base", fits.OnlyBase);
        json.WriteNumber("only_variant", fits.OnlyVariant);
        json.WriteNumber("difference", fits.Difference);
        json.WriteNumber("low", fits.Low);
        json.WriteNumber("high", fits.High);
        json.WriteBoolean("real", fits.IsReal);
        StudyJson.WriteNumber(json, "variance_ratio", fits.VarianceRatio);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, MeasureChange change)
    {
        json.WriteStartObject();
        json.WriteString("measure", change.Measure.Code);
        json.WriteString("unit", change.Measure.Unit);
        json.WriteNumber("base", change.Base);
        json.WriteNumber("variant", change.Variant);
        json.WriteNumber("difference", change.Difference);
        StudyJson.WriteNumber(json, "low", change.Low);
        StudyJson.WriteNumber(json, "high", change.High);
        json.WriteBoolean("real", change.IsReal);
        json.WriteNumber("seasons_differing", change.Differing);
        StudyJson.WriteNumber(json, "variance_ratio", change.VarianceRatio);
        json.WriteEndObject();
    }
}
