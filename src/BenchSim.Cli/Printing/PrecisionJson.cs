using System.Text.Json;
using BenchSim.Answers.Words;
using BenchSim.Study.Precision;

namespace BenchSim.Cli.Printing;

/// <summary>Tells machines how the number of seasons was found.</summary>
internal static class PrecisionJson
{
    public static void Write(Utf8JsonWriter json, PrecisionResult result)
    {
        json.WriteStartObject("precision");
        WriteOrNull(json, "fits", result.Goal.Chance);
        WriteOrNull(json, "late_plant_days", result.Goal.LatePlantDays);
        json.WriteNumber("least", result.Goal.Least);
        json.WriteNumber("most", result.Goal.Most);
        json.WriteBoolean("reached", result.IsReached);
        json.WriteStartArray("looks");
        foreach (var look in result.Looks)
        {
            json.WriteStartObject();
            json.WriteNumber("seasons", look.Seasons);
            json.WriteNumber("fits_half_width", (look.Fits.High - look.Fits.Low) / 2);
            json.WriteNumber("late_plant_days_half_width", look.LatePlantDays.HalfWidth);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("words", PrecisionWords.WhyItStopped(result));
        json.WriteEndObject();
    }

    private static void WriteOrNull(Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } known)
        {
            json.WriteNumber(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
