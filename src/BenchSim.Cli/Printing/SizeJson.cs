using System.Text.Json;
using BenchSim.Cli.Commands;
using BenchSim.Report.Words;
using BenchSim.Study.Sizing;

namespace BenchSim.Cli.Printing;

/// <summary>Prints how large a space has to be for machines.</summary>
internal static class SizeJson
{
    public static void Print(Desk desk, SizeSettings settings, SizeResult result) =>
        desk.SayJson(json =>
        {
            json.WriteString("name", result.Plan.Scenario.Name);
            json.WriteString("variant", settings.With);
            json.WriteString("space", result.Space.Id);
            json.WriteNumber("places_now", result.Space.Places);
            json.WriteNumber("goal", result.Goal.Share);
            json.WriteNumber("confidence", result.Goal.Confidence);
            json.WriteNumber("seasons", result.Seasons);
            json.WriteNumber("seasons_in_all", result.SeasonsInAll);
            json.WriteNumber("seed", result.Seed);
            if (result.Answer?.Places is { } places)
            {
                json.WriteNumber("places", places);
            }
            else
            {
                json.WriteNull("places");
            }

            json.WriteBoolean("every_number_played", result.IsWhole);
            json.WriteNumber("largest", result.Largest);
            json.WriteStartArray("curve");
            foreach (var point in result.Curve)
            {
                json.WriteStartObject();
                json.WriteNumber("places", point.Places ?? 0);
                Write(json, point);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Write(json, "unlimited", result.Unlimited);
            Write(json, "every_space_unlimited", result.Everywhere);
            json.WriteStartArray("sentences");
            foreach (var sentence in SizeSentences.Of(result).Add(SizeSentences.Effort(result)))
            {
                json.WriteStringValue(sentence);
            }

            json.WriteEndArray();
            json.WriteString("folder", settings.Out);
        });

    private static void Write(Utf8JsonWriter json, string name, SizePoint point)
    {
        json.WriteStartObject(name);
        Write(json, point);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SizePoint point)
    {
        StudyJson.Write(json, "fits", point.Fits);
        json.WriteNumber("late_plant_days", point.LatePlantDays);
        StudyJson.WriteNumber(json, "late_plant_days_half_width", point.HalfWidth);
        json.WriteBoolean("meets_goal", point.IsMet);
    }
}
