using System.Text.Json;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Cli.Printing;

/// <summary>Prints bottlenecks for machines.</summary>
internal static class BottleneckJson
{
    public static void Print(Desk desk, BottleneckResult result) =>
        desk.SayJson(json =>
        {
            json.WriteString("name", result.Plan.Scenario.Name);
            json.WriteNumber("seasons", result.Seasons);
            json.WriteNumber("seed", result.Seed);
            json.WriteNumber("confidence", result.Confidence);
            json.WriteNumber("comparisons", result.Comparisons);
            json.WriteNumber("each_confidence", result.EachConfidence);
            json.WriteNumber("late_plant_days", result.LatePlantDays);
            StudyJson.Write(json, "fits", result.Fits);
            Trials(json, "unlimited", result.Unlimited);
            Trials(json, "larger", result.Larger);
            json.WriteStartArray("pairs");
            foreach (var pair in result.Pairs)
            {
                json.WriteStartObject();
                json.WriteString("first", pair.First.Id);
                json.WriteString("second", pair.Second.Id);
                json.WriteBoolean("helps_together", pair.HelpsTogether);
                Saved(json, "saved", pair.LatePlantDays);
                Saved(json, "saved_beyond_first", pair.AgainstFirst);
                Saved(json, "saved_beyond_second", pair.AgainstSecond);
                Saved(json, "saved_beyond_sum", pair.BeyondSum);
                Fits(json, pair.Fits);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Waits(json, result);
            json.WriteStartArray("sentences");
            foreach (var sentence in BottleneckSentences.Of(result).Add(WaitSentences.Reading(result.Waits, result.Plan)))
            {
                json.WriteStringValue(sentence);
            }

            json.WriteEndArray();
        });

    private static void Trials(Utf8JsonWriter json, string name, IEnumerable<BottleneckTrial> trials)
    {
        json.WriteStartArray(name);
        foreach (var trial in trials)
        {
            json.WriteStartObject();
            json.WriteString("space", trial.Space.Id);
            if (trial.PlacesAdded is { } places)
            {
                json.WriteNumber("places_added", places);
            }
            else
            {
                json.WriteNull("places_added");
            }

            Saved(json, "saved", trial.LatePlantDays);
            Fits(json, trial.Fits);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    // What is saved, so that more is better: the difference with its sign turned.
    private static void Saved(Utf8JsonWriter json, string name, MeasureChange late)
    {
        json.WriteStartObject(name);
        StudyJson.WriteNumber(json, "late_plant_days", -late.Difference);
        StudyJson.WriteNumber(json, "low", -late.High);
        StudyJson.WriteNumber(json, "high", -late.Low);
        json.WriteBoolean("real", late.IsReal);
        json.WriteNumber("seasons_differing", late.Differing);
        json.WriteEndObject();
    }

    private static void Fits(Utf8JsonWriter json, FitChange fits)
    {
        StudyJson.Write(json, "fits", fits.Variant);
        json.WriteStartObject("fits_change");
        json.WriteNumber("difference", fits.Difference);
        json.WriteNumber("low", fits.Low);
        json.WriteNumber("high", fits.High);
        json.WriteBoolean("real", fits.IsReal);
        json.WriteEndObject();
    }

    private static void Waits(Utf8JsonWriter json, BottleneckResult result)
    {
        json.WriteStartArray("waits");
        foreach (var wait in result.Waits)
        {
            json.WriteStartObject();
            json.WriteString("from", wait.From?.Id);
            json.WriteString("by", wait.By.Id);
            json.WriteNumber("tray_days", wait.TrayDays.Mean);
            StudyJson.WriteNumber(json, "tray_days_half_width", wait.TrayDays.HalfWidth);
            StudyJson.Write(json, "happens", wait.Happens);
            json.WriteStartArray("weeks");
            for (var week = 0; week < wait.ByWeek.Length; week++)
            {
                if (wait.ByWeek[week].Most == 0)
                {
                    continue;
                }

                json.WriteStartObject();
                json.WriteString("from", Figures.Date(result.Plan.FirstDay.AddDays(7 * week)));
                json.WriteNumber("mean", wait.ByWeek[week].Mean);
                json.WriteNumber("p90", wait.ByWeek[week].P90);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
