using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Answers.Check;

/// <summary>Tells the months of a weather record in the site's units, so that a wrong unit or place is seen at a glance.</summary>
internal static class RecordTelling
{
    private const double DaysAYear = 365.25;

    public static void Tell(Passages words, Scenario scenario)
    {
        if (MonthsOf(scenario.Weather) is not { IsEmpty: false } months)
        {
            return;
        }

        var isImperial = scenario.Units == UnitSystem.Imperial;
        (var degrees, var depth) = isImperial ? ("F", "in") : ("C", "mm");
        words.Heading("The weather record by month");
        var table = words.Table(["month", $">mean low {degrees}", $">mean high {degrees}", $">rain {depth}"]);
        foreach (var month in months)
        {
            table.Add(
                month.Name,
                Temperature(month.LowC, isImperial),
                Temperature(month.HighC, isImperial),
                Rain(month.RainMm, isImperial)
            );
        }

        table.Add("year", "", "", Rain(months.Sum(month => month.RainMm), isImperial));
        words.Sentence(
            "Rain is that of a mean month. Do these look like your place? If not, look at the units and the station of the record.",
            2
        );
    }

    private static ImmutableArray<RecordMonth> MonthsOf(WeatherInput weather) =>
        weather switch
        {
            RecordedWeather record => [.. record.Days.GroupBy(day => day.Date.Month).OrderBy(month => month.Key).Select(Mean)],
            GeneratedWeather { Fitted.Report: { } fit } =>
            [
                .. fit.Months.Select(month => new RecordMonth(
                    Name(month.Month),
                    month.Record.TminMeanC,
                    month.Record.TmaxMeanC,
                    month.RecordRainMm
                )),
            ],
            _ => [],
        };

    // The mean rain of a day, times the days of the month in a mean year.
    private static RecordMonth Mean(IGrouping<int, DailyWeather> days)
    {
        var length = days.Key == 2 ? DaysAYear - 337 : DateTime.DaysInMonth(2001, days.Key);
        return new RecordMonth(
            Name(days.Key),
            days.Average(day => day.TminC),
            days.Average(day => day.TmaxC),
            days.Average(day => day.RainMm) * length
        );
    }

    private static string Name(int month) => MonthNames.Of(month - 1);

    private static string Temperature(double celsius, bool isImperial) => Numbers.Tenths(isImperial ? (celsius * 1.8) + 32 : celsius);

    private static string Rain(double millimetres, bool isImperial) =>
        isImperial ? Numbers.Tenths(millimetres / 25.4) : Numbers.Whole(millimetres);

    private sealed record RecordMonth(string Name, double LowC, double HighC, double RainMm);
}
