using System.Text.Json;
using BenchSim.Answers.Words;
using BenchSim.Study.Results;
using BenchSim.Study.Succession;

namespace BenchSim.Cli.Printing;

/// <summary>Prints a trial of successions for machines.</summary>
internal static class SuccessionJson
{
    public static void Print(Desk desk, SuccessionResult result) =>
        desk.SayJson(json =>
        {
            json.WriteString("name", result.Plan.Scenario.Name);
            json.WriteString("batch", result.Line.Id);
            json.WriteNumber("plants_each", result.Line.Orders[0].Plants);
            json.WriteNumber("seasons", result.Seasons);
            json.WriteNumber("seed", result.Seed);
            json.WriteNumber("supply_after_days", result.Supply.AfterDays);
            json.WriteNumber("supply_days", result.Supply.Days);
            json.WriteStartArray("schedules");
            foreach (var each in result.Schedules)
            {
                Write(json, each);
            }

            json.WriteEndArray();
        });

    private static void Write(Utf8JsonWriter json, ScheduleResult result)
    {
        json.WriteStartObject();
        json.WriteNumber("every_days", result.Schedule.Every);
        json.WriteNumber("times", result.Schedule.Times);
        json.WriteBoolean("played", result.Figures is not null);
        if (result.Figures is { } figures)
        {
            json.WriteString("last_set_out", Figures.Date(figures.LastSetOut));
            StudyJson.Write(json, "fits", figures.Fits);
            Write(json, "late_plant_days", figures.LatePlantDays);
            Write(json, "own_late_plant_days", figures.OwnLatePlantDays);
            Write(json, "gap_days", figures.GapDays);
            StudyJson.Write(json, "without_gap", figures.WithoutGap);
            Write(json, "never_out", figures.NeverOut);
        }
        else
        {
            json.WriteString("why_not", result.WhyNot);
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Estimate estimate)
    {
        json.WriteStartObject(name);
        json.WriteNumber("mean", estimate.Mean);
        if (double.IsNaN(estimate.HalfWidth))
        {
            json.WriteNull("half_width");
        }
        else
        {
            json.WriteNumber("half_width", estimate.HalfWidth);
        }

        json.WriteNumber("p50", estimate.P50);
        json.WriteNumber("p90", estimate.P90);
        json.WriteEndObject();
    }
}
