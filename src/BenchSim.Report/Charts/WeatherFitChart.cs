using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Report.Charts;

/// <summary>A weather record beside the generator fitted to it, month by month: mean temperatures, and the share of wet days.</summary>
internal static class WeatherFitChart
{
    /// <summary>The table with its figures.</summary>
    public const string Table = "tables/weather-months.csv";

    /// <summary>The chart of the temperatures.</summary>
    /// <param name="report">How well the generator does.</param>
    /// <param name="units">Units of the temperatures.</param>
    public static Chart Temperatures(WeatherFitReport report, UnitSystem units)
    {
        double Shown(double celsius) => units == UnitSystem.Imperial ? (celsius * 1.8) + 32 : celsius;
        var madeHigh = Line(Looks.MadeHigh, report, month => Shown(month.Generated.TmaxMeanC));
        var high = Line(Looks.RecordHigh, report, month => Shown(month.Record.TmaxMeanC));
        var madeLow = Line(Looks.MadeLow, report, month => Shown(month.Generated.TminMeanC));
        var low = Line(Looks.RecordLow, report, month => Shown(month.Record.TminMeanC));
        var bottom = low.Points.Concat(madeLow.Points).Min(point => point.Y);
        var top = high.Points.Concat(madeHigh.Points).Max(point => point.Y);
        var air = Math.Max(1, (top - bottom) * 0.08);
        var unit = units == UnitSystem.Imperial ? "F" : "C";
        return new Chart
        {
            Title =
                $"Mean temperatures by month, {unit}: {Numbers.Short(report.Years)} years of record and "
                + $"{Numbers.Whole(report.GeneratedYears)} generated",
            Label = "Mean temperatures by month, of the record and as generated",
            Table = Table,
            Across = Months(),
            Up = new ChartAxis(bottom - air, top + air),
            Key =
            [
                new KeyEntry(madeHigh.Look, "highest, generated"),
                new KeyEntry(high.Look, "highest, record"),
                new KeyEntry(madeLow.Look, "lowest, generated"),
                new KeyEntry(low.Look, "lowest, record"),
            ],
            Marks = [madeHigh, high, madeLow, low],
        };
    }

    /// <summary>The chart of the wet days.</summary>
    /// <param name="report">How well the generator does.</param>
    public static Chart WetDays(WeatherFitReport report)
    {
        var made = Line(Looks.MadeWet, report, month => 100 * month.Generated.WetShare);
        var record = Line(Looks.RecordWet, report, month => 100 * month.Record.WetShare);
        return new Chart
        {
            Title = "Share of wet days by month, percent",
            Label = "Share of wet days by month, percent, of the record and as generated",
            Table = Table,
            Across = Months(),
            Up = new ChartAxis(0, Math.Max(10, made.Points.Concat(record.Points).Max(point => point.Y) * 1.1)),
            Key = [new KeyEntry(made.Look, "wet days, generated"), new KeyEntry(record.Look, "wet days, record")],
            Marks = [made, record],
        };
    }

    private static LineMark Line(Look look, WeatherFitReport report, Func<MonthFit, double> value) =>
        new(look, [.. report.Months.Select((month, at) => (at + 1.0, value(month)))]);

    private static ChartAxis Months() =>
        new(0.5, 12.5)
        {
            Ticks = _ => [.. Enumerable.Range(1, 12).Select(month => new AxisTick(month, Dates.ShortMonth(new DateOnly(2001, month, 1))))],
        };
}
