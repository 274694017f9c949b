using System.Text.Json;
using BenchSim.Answers.Words;
using BenchSim.Cli.Words;
using BenchSim.Level;

namespace BenchSim.Cli.Printing;

/// <summary>Prints what came of levelling for machines.</summary>
internal static class LevelJson
{
    public static void Print(Desk desk, LevelResult result, string? written) =>
        desk.SayJson(json =>
        {
            json.WriteString("name", result.Plan.Scenario.Name);
            json.WriteNumber("seasons", result.Options.Seasons);
            json.WriteNumber("seed", result.Options.Seed);
            json.WriteNumber("expected_seasons", result.Options.ExpectedSeasons);
            json.WriteNumber("fill", result.Options.Fill);
            json.WriteNumber("may_move", result.Movable);
            json.WriteString("verdict", Code(result.Verdict));
            json.WriteString("sentence", LevelWords.Verdict(result));
            json.WriteNumber("over_before", result.OverBefore);
            json.WriteNumber("over_after", result.OverAfter);
            json.WriteNumber("over_bound", result.OverBound);
            json.WriteBoolean("over_proved", result.IsOverProved);
            json.WriteNumber("shift_days", result.ShiftDays);
            json.WriteNumber("shift_bound", result.ShiftBound);
            json.WriteBoolean("shift_proved", result.IsShiftProved);
            json.WriteStartArray("moves");
            foreach (var move in result.Moves)
            {
                Write(json, move);
            }

            json.WriteEndArray();
            json.WriteStartArray("groups");
            foreach (var group in result.Groups)
            {
                Write(json, group, result);
            }

            json.WriteEndArray();
            WriteTrial(json, result);
            if (written is null)
            {
                json.WriteNull("file");
            }
            else
            {
                json.WriteString("file", written);
            }
        });

    private static string Code(LevelVerdict verdict) =>
        verdict switch
        {
            LevelVerdict.NothingMayMove => "nothing_may_move",
            LevelVerdict.NothingIsOver => "nothing_is_over",
            LevelVerdict.NothingHelps => "nothing_helps",
            LevelVerdict.Adopt => "adopt",
            LevelVerdict.Keep => "keep",
            _ => throw new InvalidOperationException("An unknown verdict."),
        };

    private static void Write(Utf8JsonWriter json, MovedSowing move)
    {
        json.WriteStartObject();
        json.WriteString("batch", move.Batch);
        json.WriteString("from", Figures.Date(move.From));
        json.WriteString("to", Figures.Date(move.To));
        json.WriteNumber("days", move.Days);
        json.WriteString("set_out_from", Figures.Date(move.SetOutFrom));
        json.WriteString("set_out_to", Figures.Date(move.SetOutTo));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, LevelledGroup group, LevelResult result)
    {
        json.WriteStartObject();
        json.WriteString("kind", group.Group.Kind.ToString().ToLowerInvariant());
        json.WriteStartArray("spaces");
        foreach (var space in group.Group.Spaces)
        {
            json.WriteStringValue(result.Plan.Scenario.Spaces[space].Id);
        }

        json.WriteEndArray();
        json.WriteNumber("places_least", group.Group.Places.Min());
        json.WriteNumber("places_most", group.Group.Places.Max());
        Write(json, "expected_before", group.Before);
        Write(json, "expected_after", group.After);
        if (group.Played is { } played)
        {
            json.WriteStartObject("played_peak");
            json.WriteNumber("before", played.Before);
            json.WriteNumber("after", played.After);
            json.WriteNumber("difference", played.Difference);
            StudyJson.WriteNumber(json, "low", played.Low);
            StudyJson.WriteNumber(json, "high", played.High);
            json.WriteBoolean("real", played.IsReal);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("played_peak");
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, ExpectedPeak peak)
    {
        json.WriteStartObject(name);
        json.WriteNumber("peak", peak.Places);
        json.WriteString("on", Figures.Date(peak.On));
        json.WriteNumber("over_place_days", peak.OverPlaceDays);
        json.WriteNumber("over_days", peak.OverDays);
        json.WriteEndObject();
    }

    private static void WriteTrial(Utf8JsonWriter json, LevelResult result)
    {
        if (result.Trial is not { } trial)
        {
            json.WriteNull("trial");
            return;
        }

        json.WriteStartObject("trial");
        json.WriteNumber("confidence", trial.Confidence);
        json.WriteNumber("each_confidence", trial.EachConfidence);
        CompareJson.Write(json, trial.Variants[0]);
        json.WriteEndObject();
    }
}
