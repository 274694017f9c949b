using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Weather;

/// <summary>How well a weather model reproduces the record it was fitted to, in words and in the units of whoever reads them.</summary>
public static class WeatherFitWords
{
    private const double GreatMissK = 0.5;
    private const double GreatMissOfWetDays = 0.03;

    /// <summary>What the reader should know before trusting the fit, a sentence each.</summary>
    /// <param name="report">The comparison.</param>
    /// <param name="temperature">Units of temperatures.</param>
    public static ImmutableArray<string> Warnings(WeatherFitReport report, UnitSystem temperature)
    {
        ArgumentNullException.ThrowIfNull(report);
        var warnings = ImmutableArray.CreateBuilder<string>();
        if (report.Years < WeatherFitReport.ShortRecordYears)
        {
            warnings.Add(
                $"The record is short: {report.Years:0.0} years, and {WeatherFitReport.ShortRecordYears:0} or more are wanted. "
                    + "A cold spring that comes once in ten years may not be in it, so chances of frost and of holds may be off either way."
            );
        }

        if (report.MissingDays > 0)
        {
            warnings.Add($"{report.MissingDays} days are missing between the first and the last day; the fit uses the days there are.");
        }

        foreach (var month in report.Months)
        {
            if (Math.Abs(month.TminMissC) > GreatMissK || Math.Abs(month.TmaxMissC) > GreatMissK)
            {
                warnings.Add(
                    $"{NameOf(month)}: generated mean temperatures miss the record by "
                        + $"{UnitWords.Change(month.TminMissC, temperature)} (lowest) and "
                        + $"{UnitWords.Change(month.TmaxMissC, temperature)} (highest)."
                );
            }

            if (Math.Abs(month.WetShareMiss) > GreatMissOfWetDays)
            {
                warnings.Add(
                    $"{NameOf(month)}: the generated share of wet days misses the record by "
                        + $"{100 * month.WetShareMiss:+0.0;-0.0} percentage points."
                );
            }
        }

        warnings.AddRange(SpringWords.Warnings(report, temperature));
        warnings.AddRange(report.Assumptions);
        return warnings.ToImmutable();
    }

    /// <summary>What was fitted and how well it does, a sentence each, without the warnings.</summary>
    /// <param name="report">The comparison, of twelve months.</param>
    /// <param name="temperature">Units of temperatures.</param>
    /// <param name="rain">Units of rain.</param>
    public static ImmutableArray<string> Sentences(WeatherFitReport report, UnitSystem temperature, UnitSystem rain)
    {
        ArgumentNullException.ThrowIfNull(report);
        var words = ImmutableArray.CreateBuilder<string>();
        words.Add(
            $"Fitted to {report.Years:0.0} years of days, {report.First:yyyy-MM-dd} to {report.Last:yyyy-MM-dd}, "
                + $"and compared with {report.GeneratedYears} generated years."
        );
        var tmin = report.Months.MaxBy(month => Math.Abs(month.TminMissC))!;
        var tmax = report.Months.MaxBy(month => Math.Abs(month.TmaxMissC))!;
        var wet = report.Months.MaxBy(month => Math.Abs(month.WetShareMiss))!;
        words.Add(
            $"Mean lowest temperature: the worst month, {NameOf(tmin)}, misses by "
                + $"{UnitWords.Difference(Math.Abs(tmin.TminMissC), temperature)}."
        );
        words.Add(
            $"Mean highest temperature: the worst month, {NameOf(tmax)}, misses by "
                + $"{UnitWords.Difference(Math.Abs(tmax.TmaxMissC), temperature)}."
        );
        words.Add(
            $"Share of wet days: the worst month, {NameOf(wet)}, misses by {100 * Math.Abs(wet.WetShareMiss):0.0} percentage points."
        );
        words.Add(
            $"How far one day is like the next (correlation, record and generated): lowest {report.TminLag1.Record:0.00} and "
                + $"{report.TminLag1.Generated:0.00}, "
                + $"highest {report.TmaxLag1.Record:0.00} and {report.TmaxLag1.Generated:0.00}."
        );
        words.Add(
            $"Rain of a year: {UnitWords.YearsRain(report.Months.Sum(month => month.RecordRainMm), rain)} in the record, "
                + $"{UnitWords.YearsRain(report.Months.Sum(month => month.GeneratedRainMm), rain)} generated."
        );
        words.AddRange(SpringWords.Sentences(report, temperature));
        return words.ToImmutable();
    }

    private static string NameOf(MonthFit month) => MonthNames.Of(month.Month - 1);
}
