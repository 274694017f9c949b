using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Results;

namespace BenchSim.Report.Json;

/// <summary>Writes <c>result.json</c>. The schema is described in docs/report.md; a change that could break a reader raises <see cref="Version"/>.</summary>
internal static class ResultJson
{
    /// <summary>Version of the schema.</summary>
    public const int Version = 1;

    private static readonly JsonWriterOptions s_options = new()
    {
        Indented = true,
        IndentSize = 1,
        NewLine = "\n",
    };

    /// <summary>The result as UTF-8, line feeds only, a line feed at the end.</summary>
    public static byte[] Write(StudyResult result, IReadOnlyList<ReportInput> inputs)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, s_options))
        {
            writer.WriteStartObject();
            writer.WriteNumber("version", Version);
            Scenario(writer, result);
            writer.WriteNumber("seasons", result.Seasons);
            // As text: a seed may be larger than the whole numbers that every JSON reader holds exactly.
            writer.WriteString("seed", result.Seed.ToString(CultureInfo.InvariantCulture));
            Answer(writer, result);
            JsonParts.Array(writer, "spaces", result.Spaces, Space);
            JsonParts.Array(writer, "groups", result.Groups, Group);
            JsonParts.Array(writer, "waits", result.Waits, JsonBottlenecks.Wait);
            JsonBottlenecks.Write(writer, result.Bottlenecks);
            JsonParts.Array(writer, "batches", result.Batches, JsonBatch.Write);
            JsonParts.Array(writer, "growers", result.Growers.Zip(GrowerCost.Of(result)), Grower);
            JsonParts.Array(writer, "houses", result.Houses, (at, house) => JsonFuel.House(at, house, result.Plan.Scenario));
            JsonParts.Array(writer, "mats", result.MatPower, JsonFuel.Mats);
            Work(writer, result.Work);
            JsonParts.Array(writer, "warnings", result.Plan.Warnings, Warning);
            JsonParts.Array(writer, "inputs", inputs, Input);
            writer.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void Scenario(Utf8JsonWriter writer, StudyResult result)
    {
        var scenario = result.Plan.Scenario;
        writer.WriteStartObject("scenario");
        JsonParts.Text(writer, "name", scenario.Name);
        JsonParts.Text(writer, "question", scenario.Question);
        JsonParts.Date(writer, "first_day", result.Plan.FirstDay);
        JsonParts.Date(writer, "closes", scenario.Window.Closes);
        JsonParts.Date(writer, "last_day", result.Plan.LastDay);
        writer.WriteNumber("days", result.Plan.Days);
        writer.WriteNumber("service_goal", scenario.Rules.ServiceGoal);
        writer.WriteNumber("late_days", scenario.Rules.LateDays);
        writer.WriteNumber("sow_wait_days", scenario.Rules.SowWaitDays);
        writer.WriteEndObject();
    }

    private static void Answer(Utf8JsonWriter writer, StudyResult result)
    {
        var verdict = Verdict.Of(result);
        writer.WriteStartObject("verdict");
        if (verdict.Fits is { } fits)
        {
            writer.WriteBoolean("fits", fits);
        }
        else
        {
            writer.WriteNull("fits");
        }

        writer.WriteString("headline", verdict.Headline);
        JsonParts.Strings(writer, "sentences", verdict.Sentences);
        JsonParts.Strings(writer, "leaves_out", verdict.LeavesOut);
        writer.WriteEndObject();

        JsonParts.Chance(writer, "fits", result.Fits);
        JsonParts.Chance(writer, "fits_weather_counted", result.FitsWeatherCounted);
        JsonParts.Chance(writer, "sown_too_late", result.SownTooLate);
        JsonParts.Chance(writer, "over_held_for_place", result.OverHeldForPlace);
        JsonParts.Chance(writer, "too_few_in_time", result.TooFewInTime);
        JsonParts.Array(writer, "causes", result.Causes, static (at, pair) =>
        {
            at.WriteString("cause", Trade.Code(pair.Key));
            at.WriteNumber("seasons", pair.Value);
        });
        writer.WriteNumber("plants_wanted", result.PlantsWanted);
        JsonParts.Estimate(writer, "plants_in_time", result.PlantsInTime);
        JsonParts.Estimate(writer, "plants_late", result.PlantsLate);
        JsonParts.Estimate(writer, "plants_short", result.PlantsShort);
        JsonParts.Estimate(writer, "late_plant_days", result.LatePlantDays);
        JsonParts.Estimate(writer, "over_held", result.OverHeld);
        JsonParts.Estimate(writer, "discarded", result.Discarded);
        JsonParts.Estimate(writer, "still_standing", result.StillStanding);
        var reliefs = result.Plan.Scenario.Rules.Reliefs;
        JsonParts.Array(writer, "reliefs", reliefs.Zip(result.ReliefUses), static (at, pair) =>
        {
            at.WriteString("relief", Trade.Code(pair.First));
            JsonParts.Estimate(at, "uses", pair.Second);
        });
    }

    private static void Space(Utf8JsonWriter writer, SpaceResult space)
    {
        JsonParts.Text(writer, "id", space.Space.Id);
        JsonParts.Text(writer, "name", space.Space.Name);
        writer.WriteString("kind", Trade.Code(space.Space.Kind));
        JsonParts.TextOrNull(writer, "house", space.Space.HouseId);
        JsonParts.Numbers(writer, "places", space.Places);
        JsonParts.Days(writer, "held", space.Held);
        JsonParts.Days(writer, "wanted", space.Wanted);
        JsonParts.Days(writer, "waiting", space.Waiting);
        JsonParts.Estimate(writer, "peak", space.Peak);
        JsonParts.Spread(writer, "peak_on", space.PeakOn);
        JsonParts.Estimate(writer, "days_full", space.DaysFull);
        JsonParts.Estimate(writer, "tray_days", space.TrayDays);
        JsonParts.Estimate(writer, "waited_tray_days", space.WaitedDays);
    }

    private static void Group(Utf8JsonWriter writer, GroupResult group)
    {
        writer.WriteString("kind", Trade.Code(group.Kind));
        JsonParts.Numbers(writer, "places", group.Places);
        JsonParts.Days(writer, "wanted", group.Wanted);
        JsonParts.Days(writer, "waiting", group.Waiting);
        JsonParts.Chance(writer, "runs_out", group.RunsOut);
        JsonParts.Spread(writer, "runs_out_on", group.RunsOutOn);
        JsonParts.Estimate(writer, "shortage", group.Shortage);
        JsonParts.Spread(writer, "shortage_on", group.ShortageOn);
        JsonParts.Estimate(writer, "worst_waiting", group.WorstWaiting);
    }

    private static void Grower(Utf8JsonWriter writer, (GrowerResult Result, GrowerCost Cost) each)
    {
        var grower = each.Result;
        JsonParts.Text(writer, "grower", grower.Grower);
        writer.WriteNumber("batches", grower.Batches);
        JsonParts.Number(writer, "share", grower.Share);
        JsonParts.Number(writer, "fuel_share", grower.FuelShare);
        JsonParts.Number(writer, "cost_mean", each.Cost.Amount);
        JsonParts.Number(writer, "cost_share", each.Cost.Share);
        JsonParts.Estimate(writer, "tray_days", grower.TrayDays);
        JsonParts.Numbers(writer, "tray_days_mean_by_space", grower.TrayDaysBySpace);
        JsonParts.Estimate(writer, "peak", grower.Peak);
    }

    private static void Work(Utf8JsonWriter writer, WorkResult work)
    {
        writer.WriteStartObject("work");
        JsonParts.Estimate(writer, "sown", work.Sown);
        JsonParts.Estimate(writer, "potted", work.Potted);
        JsonParts.Estimate(writer, "moved", work.Moved);
        JsonParts.Estimate(writer, "set_out", work.SetOut);
        JsonParts.Estimate(writer, "carried_in", work.CarriedIn);
        JsonParts.Estimate(writer, "hours", work.Hours);
        JsonParts.Numbers(writer, "hours_by_week", work.HoursByWeek);
        JsonParts.Numbers(writer, "hours_by_week_p90", work.HoursByWeekP90);
        writer.WriteEndObject();
    }

    private static void Warning(Utf8JsonWriter writer, Fault warning)
    {
        JsonParts.Text(writer, "file", warning.Place.File);
        writer.WriteNumber("line", warning.Place.Line);
        writer.WriteNumber("column", warning.Place.Column);
        JsonParts.Text(writer, "what", warning.What);
        JsonParts.Text(writer, "instead", warning.Instead);
    }

    private static void Input(Utf8JsonWriter writer, ReportInput input)
    {
        JsonParts.Text(writer, "name", input.Name);
        writer.WriteNumber("bytes", input.Bytes.Length);
        writer.WriteString("sha256", Convert.ToHexStringLower(SHA256.HashData(input.Bytes.Span)));
    }
}
