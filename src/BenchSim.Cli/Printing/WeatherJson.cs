using System.Collections.Immutable;
using System.Text.Json;
using BenchSim.Answers.Words;
using BenchSim.Cli.Commands;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Cli.Printing;

/// <summary>Prints a fitted weather generator for machines: degrees Celsius, millimetres, shares from 0 to 1.</summary>
internal static class WeatherJson
{
    public static void Print(Desk desk, WeatherSettings settings, FittedWeather fitted, ImmutableArray<Fault> repairs) =>
        desk.SayJson(json =>
        {
            var report = fitted.Report;
            json.WriteString("file", settings.File);
            json.WriteString("first", Figures.Date(report.First));
            json.WriteString("last", Figures.Date(report.Last));
            json.WriteNumber("years", report.Years);
            json.WriteBoolean("short", report.Years < WeatherFitReport.ShortRecordYears);
            json.WriteNumber("generated_years", report.GeneratedYears);
            json.WriteStartArray("fitted");
            for (var month = 1; month <= 12; month++)
            {
                Write(json, month, fitted.Model.Months[month - 1]);
            }

            json.WriteEndArray();
            WriteCarryOver(json, fitted.Model.Residuals);
            json.WriteStartArray("months");
            foreach (var month in report.Months)
            {
                Write(json, month);
            }

            json.WriteEndArray();
            WriteSentences(json, "words", WeatherFitWords.Sentences(report, UnitSystem.Metric, UnitSystem.Metric));
            WriteSentences(json, "warnings", WeatherFitWords.Warnings(report, UnitSystem.Metric));
            FaultList.Write(json, "repairs", repairs);
            FaultList.Write(json, "faults", []);
            json.WriteString("folder", settings.Out);
        });

    private static void Write(Utf8JsonWriter json, int number, MonthWeather month)
    {
        json.WriteStartObject();
        json.WriteNumber("month", number);
        json.WriteNumber("low_wet_c", month.TminWetC);
        json.WriteNumber("low_dry_c", month.TminDryC);
        json.WriteNumber("high_wet_c", month.TmaxWetC);
        json.WriteNumber("high_dry_c", month.TmaxDryC);
        json.WriteNumber("low_sd_c", month.TminSdC);
        json.WriteNumber("high_sd_c", month.TmaxSdC);
        json.WriteNumber("wet_share", month.WetShare);
        json.WriteNumber("wet_after_dry", month.WetAfterDry);
        json.WriteNumber("wet_after_wet", month.WetAfterWet);
        json.WriteNumber("rain_shape", month.RainShape);
        json.WriteNumber("rain_scale_mm", month.RainScaleMm);
        json.WriteEndObject();
    }

    private static void WriteCarryOver(Utf8JsonWriter json, ResidualModel carry)
    {
        json.WriteStartObject("carry_over");
        json.WriteNumber("high_of_high", carry.A11);
        json.WriteNumber("high_of_low", carry.A12);
        json.WriteNumber("low_of_high", carry.A21);
        json.WriteNumber("low_of_low", carry.A22);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, MonthFit month)
    {
        json.WriteStartObject();
        json.WriteNumber("month", month.Month);
        Write(json, "record", month.Record, month.RecordRainMm, month.RecordColdNights);
        Write(json, "generated", month.Generated, month.GeneratedRainMm, month.GeneratedColdNights);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, MonthStatistics month, double rainMm, double coldNights)
    {
        json.WriteStartObject(name);
        json.WriteNumber("low_c", month.TminMeanC);
        json.WriteNumber("high_c", month.TmaxMeanC);
        json.WriteNumber("wet_share", month.WetShare);
        WriteIfThere(json, "wet_after_dry", month.ChanceAfterDry);
        WriteIfThere(json, "wet_after_wet", month.ChanceAfterWet);
        json.WriteNumber("rain_mm", rainMm);
        json.WriteNumber("nights_below_4_4_c", coldNights);
        json.WriteEndObject();
    }

    // A month without a wet day has no chance of rain after one.
    private static void WriteIfThere(Utf8JsonWriter json, string name, double value)
    {
        if (double.IsFinite(value))
        {
            json.WriteNumber(name, value);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void WriteSentences(Utf8JsonWriter json, string name, IEnumerable<string> sentences)
    {
        json.WriteStartArray(name);
        foreach (var sentence in sentences)
        {
            json.WriteStringValue(sentence);
        }

        json.WriteEndArray();
    }
}
