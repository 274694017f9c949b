using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Cli.Commands;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Cli.Printing;

/// <summary>Prints a fitted weather generator and how well it does.</summary>
internal static class WeatherPrinter
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

    public static void Print(Desk desk, WeatherSettings settings, FittedWeather fitted, ImmutableArray<Fault> repairs)
    {
        desk.Say($"Weather record {SafeText.Short(settings.File, 100)}");
        PrintRepairs(desk, repairs);
        PrintFitted(desk, settings, fitted.Model);
        PrintCompared(desk, settings, fitted.Report);
        PlanPrinter.Heading(desk, "How well it does");
        var report = fitted.Report;
        foreach (var sentence in WeatherFitWords.Sentences(report, settings.Temperature, settings.Rain))
        {
            desk.SayWrapped(sentence, 2);
        }

        var warnings = WeatherFitWords.Warnings(report, settings.Temperature);
        PlanPrinter.Heading(
            desk,
            warnings.IsEmpty ? "Nothing else to know." : $"{Figures.Count(warnings.Length, "thing", "things")} you should know:"
        );
        foreach (var warning in warnings)
        {
            desk.SayWrapped(warning, 2);
        }

        if (settings.Out is not null)
        {
            desk.Say();
            desk.Say($"Chart: {Path.Combine(settings.Out, "charts", "weather.png")}");
            desk.Say($"Tables: {Path.Combine(settings.Out, "tables")}");
        }
    }

    private static void PrintRepairs(Desk desk, ImmutableArray<Fault> repairs)
    {
        PlanPrinter.Heading(
            desk,
            repairs.IsEmpty ? "Nothing had to be put right in it." : $"Put right in it, {Figures.Count(repairs.Length, "place", "places")}:"
        );
        foreach (var repair in repairs.Take(MostRepairsShown))
        {
            desk.Say($"  {repair}");
        }

        if (repairs.Length > MostRepairsShown)
        {
            desk.Say($"  and {Figures.Whole(repairs.Length - MostRepairsShown)} more; --json prints all of them.");
        }
    }

    private static void PrintFitted(Desk desk, WeatherSettings settings, WeatherModel model)
    {
        PlanPrinter.Heading(desk, "What was fitted");
        var unit = settings.TemperatureUnit;
        var table = new TextTable([
            "month",
            $">mean low {unit}",
            $">mean high {unit}",
            ">wet days",
            ">wet after dry",
            ">wet after wet",
            $">rain on a wet day {settings.RainUnit}",
        ]);
        for (var month = 0; month < 12; month++)
        {
            var fitted = model.Months[month];
            var wet = fitted.WetShare;
            table.Add(
                s_months[month],
                Temperature((wet * fitted.TminWetC) + ((1 - wet) * fitted.TminDryC), settings),
                Temperature((wet * fitted.TmaxWetC) + ((1 - wet) * fitted.TmaxDryC), settings),
                Figures.Percent(wet),
                Figures.Percent(fitted.WetAfterDry),
                Figures.Percent(fitted.WetAfterWet),
                Rain(fitted.RainShape * fitted.RainScaleMm, settings)
            );
        }

        table.Print(desk);
        var carry = model.Residuals;
        desk.SayWrapped("Wet after dry and wet after wet are the chances of rain on a day after a dry and after a wet one.", 2);
        desk.SayWrapped(
            $"Carry-over from one day to the next: today's high keeps {Figures.Hundredths(carry.A11)} of yesterday's departure of the high from the season and "
                + $"{Figures.Hundredths(carry.A12)} of that of the low; today's low keeps {Figures.Hundredths(carry.A22)} of that of the low and "
                + $"{Figures.Hundredths(carry.A21)} of that of the high. Departures are counted in spreads of their month.",
            2
        );
    }

    private static void PrintCompared(Desk desk, WeatherSettings settings, WeatherFitReport report)
    {
        var unit = settings.TemperatureUnit;
        PlanPrinter.Heading(desk, $"The record beside {Figures.Count(report.GeneratedYears, "generated year", "generated years")}");
        var table = new TextTable([
            "month",
            $">low {unit}, record",
            ">generated",
            $">high {unit}, record",
            ">generated",
            ">wet days, record",
            ">generated",
            $">rain {settings.RainUnit}, record",
            ">generated",
        ]);
        foreach (var month in report.Months)
        {
            table.Add(
                s_months[month.Month - 1],
                Temperature(month.Record.TminMeanC, settings),
                Temperature(month.Generated.TminMeanC, settings),
                Temperature(month.Record.TmaxMeanC, settings),
                Temperature(month.Generated.TmaxMeanC, settings),
                Figures.Percent(month.Record.WetShare),
                Figures.Percent(month.Generated.WetShare),
                Rain(month.RecordRainMm, settings),
                Rain(month.GeneratedRainMm, settings)
            );
        }

        table.Print(desk);
    }

    private static string Temperature(double celsius, WeatherSettings settings) =>
        Figures.Tenths(settings.Temperature == UnitSystem.Imperial ? (celsius * 1.8) + 32 : celsius);

    private static string Rain(double millimetres, WeatherSettings settings) =>
        settings.Rain == UnitSystem.Imperial ? Figures.Hundredths(millimetres / MillimetresAnInch) : Figures.Tenths(millimetres);
}
