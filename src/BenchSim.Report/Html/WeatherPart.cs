using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Report.Html;

/// <summary>Where the weather comes from.</summary>
internal static class WeatherPart
{
    /// <summary>The source in one line.</summary>
    public static string Words(Scenario scenario) =>
        scenario.Weather switch
        {
            ConstantWeather same => $"the same every day: {Temperatures.Words(same.TminC, scenario.Units)} to "
                + $"{Temperatures.Words(same.TmaxC, scenario.Units)}, {Rain(same.RainMm, scenario.Units)} of rain",
            RecordedWeather { FixedYear: { } year } record => $"the year {year} of {PlainText.Short(record.File, 60)}, in every season",
            RecordedWeather record => $"a year drawn from {PlainText.Short(record.File, 60)} for each season",
            GeneratedWeather { Fitted.Report: { } fit } generated => $"generated anew for each season, by a generator fitted to "
                + $"{PlainText.Short(generated.Model.Source, 120)} ({Dates.Iso(fit.First)} to {Dates.Iso(fit.Last)})",
            GeneratedWeather generated => $"generated anew for each season, from {PlainText.Short(generated.Model.Source, 120)}",
            _ => "generated day by day",
        };

    /// <summary>What generated weather rests on: how well it gives back its record, warnings, assumptions.
    /// Nothing for other weather.</summary>
    public static void Write(HtmlText html, Scenario scenario)
    {
        if (scenario.Weather is not GeneratedWeather generated)
        {
            return;
        }

        html.Add($"<h3>The generated weather</h3>\n");
        if (generated.Fitted?.Report is not { } fit)
        {
            html.Add($"<p>Monthly normals do not say how days differ from one another. What had to be assumed:</p>\n");
            List(html, generated.Model.Assumptions, "Nothing: the site gives it all.");
            return;
        }

        var warnings = WeatherFitWords.Warnings(fit, scenario.Units);
        if (!warnings.IsEmpty)
        {
            html.Add($"<p>To know before you trust it:</p>\n");
        }

        List(html, warnings, "The fit to the record gives no warning.");
        html.Add($"<details><summary>How well the generated weather matches the record</summary>");
        List(html, WeatherFitWords.Sentences(fit, scenario.Units, scenario.Units), "Nothing is said.");
        html.Add($"</details>\n");
    }

    private static string Rain(double millimetres, UnitSystem units) =>
        units == UnitSystem.Imperial ? $"{Numbers.Short(Math.Round(millimetres / 25.4, 2))} in" : $"{Numbers.Short(millimetres)} mm";

    private static void List(HtmlText html, ImmutableArray<string> sentences, string none)
    {
        if (sentences.IsDefaultOrEmpty)
        {
            html.Add($"<p>{none}</p>\n");
            return;
        }

        html.Add($"<ul>");
        foreach (var sentence in sentences)
        {
            html.Add($"<li>{HtmlText.Name(sentence)}</li>");
        }

        html.Add($"</ul>\n");
    }
}
