using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Answers.Weather;

/// <summary>Tells a fitted weather generator and how well it does.</summary>
internal static class WeatherTelling
{
    private const double MillimetresAnInch = 25.4;

    // Beyond it the rest is counted; the tables of --out and the JSON hold all of them.
    private const int MostRepairsShown = 40;

    private static readonly string[] s_months =
    [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ];

    public static void Tell(Passages words, WeatherQuestion question, FittedWeather fitted, ImmutableArray<Fault> repairs)
    {
        words.Line($"Weather record {SafeText.Short(question.File, 100)}");
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
        words.Heading(warnings.IsEmpty ? "Nothing else to know." : $"{Figures.Count(warnings.Length, "thing", "things")} you should know:");
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
            repairs.IsEmpty ? "Nothing had to be put right in it." : $"Put right in it, {Figures.Count(repairs.Length, "place", "places")}:"
        );
        foreach (var repair in repairs.Take(MostRepairsShown))
        {
            words.Line($"{repair}", 2);
        }

        if (repairs.Length > MostRepairsShown)
        {
            words.Line($"and {Figures.Whole(repairs.Length - MostRepairsShown)} more; --json prints all of them.", 2);
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
                s_months[month],
                Temperature((wet * fitted.TminWetC) + ((1 - wet) * fitted.TminDryC), question),
                Temperature((wet * fitted.TmaxWetC) + ((1 - wet) * fitted.TmaxDryC), question),
                Figures.Percent(wet),
                Figures.Percent(fitted.WetAfterDry),
                Figures.Percent(fitted.WetAfterWet),
                Rain(fitted.RainShape * fitted.RainScaleMm, question)
            );
        }

        var carry = model.Residuals;
        words.Sentence("Wet after dry and wet after wet are the chances of rain on a day after a dry and after a wet one.", 2);
        words.Sentence(
            $"Carry-over from one day to the next: today's high keeps {Figures.Hundredths(carry.A11)} "
                + "of yesterday's departure of the high from the season and "
                + $"{Figures.Hundredths(carry.A12)} of that of the low; "
                + $"today's low keeps {Figures.Hundredths(carry.A22)} of that of the low and "
                + $"{Figures.Hundredths(carry.A21)} of that of the high. Departures are counted in spreads of their month.",
            2
        );
    }

    private static void TellCompared(Passages words, WeatherQuestion question, WeatherFitReport report)
    {
        var unit = question.TemperatureUnit;
        words.Heading($"The record beside {Figures.Count(report.GeneratedYears, "generated year", "generated years")}");
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
                s_months[month.Month - 1],
                Temperature(month.Record.TminMeanC, question),
                Temperature(month.Generated.TminMeanC, question),
                Temperature(month.Record.TmaxMeanC, question),
                Temperature(month.Generated.TmaxMeanC, question),
                Figures.Percent(month.Record.WetShare),
                Figures.Percent(month.Generated.WetShare),
                Rain(month.RecordRainMm, question),
                Rain(month.GeneratedRainMm, question)
            );
        }
    }

    private static string Temperature(double celsius, WeatherQuestion question) =>
        Figures.Tenths(question.Temperature == UnitSystem.Imperial ? (celsius * 1.8) + 32 : celsius);

    private static string Rain(double millimetres, WeatherQuestion question) =>
        question.Rain == UnitSystem.Imperial ? Figures.Hundredths(millimetres / MillimetresAnInch) : Figures.Tenths(millimetres);
}
