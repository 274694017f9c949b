using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Engine.Randomness;
using BenchSim.Report.Words;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Answers.Weather;

/// <summary>Tells a fitted weather generator and how well it does.</summary>
internal static class WeatherTelling
{
    private const double MillimetresAnInch = 25.4;

    // Beyond it the rest is counted; the tables of --out and the JSON hold all of them.
    private const int MostRepairsShown = 40;

    public static void Tell(Passages words, WeatherQuestion question, FittedWeather fitted, ImmutableArray<Fault> repairs)
    {
        words.Line($"Weather record {PlainText.Short(question.File, 100)}");
        TellRepairs(words, repairs);
        TellFitted(words, question, fitted.Model);
        TellCompared(words, question, fitted.Report);
        words.Heading("How well it does");
        var report = fitted.Report;
        foreach (var sentence in WeatherFitWords.Sentences(report, question.Temperature, question.Rain))
        {
            words.Sentence(sentence, 2);
        }

        var warnings = WeatherFitWords.Warnings(report, question.Temperature);
        words.Heading(warnings.IsEmpty ? "Nothing else to know." : $"{Numbers.Count(warnings.Length, "thing", "things")} you should know:");
        foreach (var warning in warnings)
        {
            words.Sentence(warning, 2);
        }

        if (question.Out is not null)
        {
            words.Gap();
            words.Line($"Chart: {Path.Combine(question.Out, "charts", "weather.png")}");
            words.Line($"Tables: {Path.Combine(question.Out, "tables")}");
        }
    }

    private static void TellRepairs(Passages words, ImmutableArray<Fault> repairs)
    {
        words.Heading(
            repairs.IsEmpty ? "Nothing had to be put right in it." : $"Put right in it, {Numbers.Count(repairs.Length, "place", "places")}:"
        );
        foreach (var repair in repairs.Take(MostRepairsShown))
        {
            words.Line($"{repair}", 2);
        }

        if (repairs.Length > MostRepairsShown)
        {
            words.Line($"and {Numbers.Whole(repairs.Length - MostRepairsShown)} more; --json prints all of them.", 2);
        }
    }

    private static void TellFitted(Passages words, WeatherQuestion question, WeatherModel model)
    {
        words.Heading("What was fitted");
        var unit = question.TemperatureUnit;
        var table = words.Table([
            "month",
            $">mean low {unit}",
            $">mean high {unit}",
            ">wet days",
            ">wet after dry",
            ">wet after wet",
            $">rain on a wet day {question.RainUnit}",
        ]);
        for (var month = 0; month < 12; month++)
        {
            var fitted = model.Months[month];
            var wet = fitted.WetShare;
            table.Add(
                MonthNames.Of(month),
                Temperature((wet * fitted.TminWetC) + ((1 - wet) * fitted.TminDryC), question),
                Temperature((wet * fitted.TmaxWetC) + ((1 - wet) * fitted.TmaxDryC), question),
                ChanceWords.Fine(wet),
                ChanceWords.Fine(fitted.WetAfterDry),
                ChanceWords.Fine(fitted.WetAfterWet),
                Rain(fitted.RainShape * fitted.RainScaleMm, question)
            );
        }

        var carry = model.Residuals;
        words.Sentence("Wet after dry and wet after wet are the chances of rain on a day after a dry and after a wet one.", 2);
        words.Sentence(
            $"Carry-over from one day to the next: today's high keeps {Numbers.Hundredths(carry.A11)} "
                + "of yesterday's departure of the high from the season and "
                + $"{Numbers.Hundredths(carry.A12)} of that of the low; "
                + $"today's low keeps {Numbers.Hundredths(carry.A22)} of that of the low and "
                + $"{Numbers.Hundredths(carry.A21)} of that of the high. "
                + "Departures are counted by how rare they are, in spreads of the normal law.",
            2
        );
        words.Sentence(YearsTogether(model), 2);
        words.Sentence(
            $"The coldest night in a hundred of April lies {Below(model.Months[3], question)} below the usual low of its date, of May "
                + $"{Below(model.Months[4], question)}.",
            2
        );
    }

    private static void TellCompared(Passages words, WeatherQuestion question, WeatherFitReport report)
    {
        var unit = question.TemperatureUnit;
        words.Heading($"The record beside {Numbers.Count(report.GeneratedYears, "generated year", "generated years")}");
        var table = words.Table([
            "month",
            $">low {unit}, record",
            ">generated",
            $">high {unit}, record",
            ">generated",
            ">wet days, record",
            ">generated",
            $">rain {question.RainUnit}, record",
            ">generated",
        ]);
        foreach (var month in report.Months)
        {
            table.Add(
                MonthNames.Of(month.Month - 1),
                Temperature(month.Record.TminMeanC, question),
                Temperature(month.Generated.TminMeanC, question),
                Temperature(month.Record.TmaxMeanC, question),
                Temperature(month.Generated.TmaxMeanC, question),
                ChanceWords.Fine(month.Record.WetShare),
                ChanceWords.Fine(month.Generated.WetShare),
                Rain(month.RecordRainMm, question),
                Rain(month.GeneratedRainMm, question)
            );
        }
    }

    private static string YearsTogether(WeatherModel model)
    {
        var (low, high) = (model.Months.Average(month => month.TminYearShare), model.Months.Average(month => month.TmaxYearShare));
        return Math.Max(low, high) < 0.005
            ? "The years of the record differ no more than chance between days explains: no cold or mild years were fitted."
            : $"Cold and mild years: {ChanceWords.Fine(low)} of how lows differ from their season, and {ChanceWords.Fine(high)} "
                + "of how highs do, is common to a whole year.";
    }

    // The score of a chance of 1 in 100.
    private static string Below(MonthWeather month, WeatherQuestion question) =>
        UnitWords.Difference(-month.TminSdC * month.TminShape.At(Normal.Quantile(0.01)), question.Temperature);

    private static string Temperature(double celsius, WeatherQuestion question) =>
        Numbers.Tenths(question.Temperature == UnitSystem.Imperial ? (celsius * 1.8) + 32 : celsius);

    private static string Rain(double millimetres, WeatherQuestion question) =>
        question.Rain == UnitSystem.Imperial ? Numbers.Hundredths(millimetres / MillimetresAnInch) : Numbers.Tenths(millimetres);
}
