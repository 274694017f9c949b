using System.Collections.Immutable;
using System.Text.Json;
using BenchSim.Answers.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Weather;

namespace BenchSim.Cli.Printing;

/// <summary>Prints what the site's weather means for a plan, for machines.</summary>
internal static class ClimateJson
{
    public static void Write(Utf8JsonWriter json, ClimateSummary climate)
    {
        json.WriteStartObject("climate");
        json.WriteNumber("years", climate.Years);
        WriteFrost(json, climate.Frost);
        WriteNights(json, climate.Nights);
        WriteHolds(json, climate.Holds);
        json.WriteStartArray("fuel");
        foreach (var need in climate.Houses)
        {
            Write(json, need);
        }

        json.WriteEndArray();
        json.WriteStartArray("mats");
        foreach (var need in climate.Mats)
        {
            Write(json, need);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    // The chance of frost after the date: the member says so, that no one takes it for the chance of being safe.
    private static void WriteFrost(Utf8JsonWriter json, WeatherSummary? frost)
    {
        json.WriteStartArray("frost_after");
        foreach (var chance in frost?.FrostAfter ?? [])
        {
            json.WriteStartObject();
            json.WriteString("from", Figures.Date(chance.From));
            json.WriteString("to", Figures.Date(frost!.Last));
            json.WriteNumber("share", chance.Share);
            json.WriteNumber("years", chance.Years);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteNights(Utf8JsonWriter json, WeatherSummary? nights)
    {
        json.WriteStartArray("nights_below");
        foreach (var fortnight in nights?.Nights ?? [])
        {
            json.WriteStartObject();
            json.WriteString("from", Figures.Date(fortnight.First));
            json.WriteNumber("days", fortnight.Days);
            json.WriteNumber("threshold_c", fortnight.ThresholdC);
            json.WriteNumber("mean", fortnight.Mean);
            json.WriteNumber("standard_deviation", fortnight.StandardDeviation);
            json.WriteNumber("years", fortnight.Years);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteHolds(Utf8JsonWriter json, ImmutableArray<HoldDays> kinds)
    {
        json.WriteStartArray("hold_days");
        foreach (var holds in kinds)
        {
            json.WriteStartObject();
            json.WriteString(
                "kind",
                holds.Kind switch
                {
                    HoldKind.Table => "table",
                    HoldKind.Field => "field",
                    _ => "wet",
                }
            );
            if (holds.AboveC is { } above)
            {
                json.WriteNumber("above_c", above);
            }
            else
            {
                json.WriteNull("above_c");
            }

            WriteTexts(json, "under", holds.Under);
            WriteTexts(json, "crops", holds.Crops);
            json.WriteStartArray("fortnights");
            foreach (var fortnight in holds.Fortnights)
            {
                json.WriteStartObject();
                json.WriteString("from", Figures.Date(fortnight.First));
                json.WriteNumber("days", fortnight.Days);
                json.WriteNumber("mean", fortnight.Mean);
                json.WriteNumber("standard_deviation", fortnight.StandardDeviation);
                json.WriteNumber("years", fortnight.Years);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteTexts(Utf8JsonWriter json, string name, ImmutableArray<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, HouseNeed need)
    {
        var heat = need.House.Heat!;
        json.WriteStartObject();
        json.WriteString("house", need.House.Id);
        json.WriteString("fuel", heat.Fuel.Id);
        json.WriteString("unit", heat.Fuel.Unit);
        json.WriteNumber("mean", need.Mean);
        json.WriteNumber("least", need.Least);
        json.WriteNumber("most", need.Most);
        json.WriteStartArray("months");
        foreach (var month in need.Months)
        {
            json.WriteStartObject();
            json.WriteString("from", Figures.Date(month.First));
            json.WriteNumber("mean", month.Units);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (need.Load is { } load)
        {
            json.WriteNumber("design_load_watts", load.Watts);
        }
        else
        {
            json.WriteNull("design_load_watts");
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, MatNeed need)
    {
        json.WriteStartObject();
        json.WriteString("space", need.Space.Id);
        json.WriteNumber("watts", need.Space.Power!.Watts);
        json.WriteNumber("days", need.Days);
        json.WriteNumber("kwh", need.KilowattHours);
        if (need.Circuit is { } circuit)
        {
            json.WriteNumber("circuit_limit_watts", circuit.LimitWatts);
            json.WriteBoolean("circuit_within", circuit.IsWithin);
        }

        json.WriteEndObject();
    }
}
