using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Weather;

/// <summary>How well a weather model reproduces the record it was fitted to: numbers by month, and the same in words.</summary>
public sealed record WeatherFitReport
{
    /// <summary>Years of record below which a warning is given.</summary>
    public const double ShortRecordYears = 10;

    private const int YearsToGenerate = 400;
    private const ulong ReportSeed = 1;

    private static readonly int[] MonthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    /// <summary>January to December.</summary>
    public required ImmutableArray<MonthFit> Months { get; init; }

    /// <summary>First day of the record.</summary>
    public required DateOnly First { get; init; }

    /// <summary>Last day of the record.</summary>
    public required DateOnly Last { get; init; }

    /// <summary>Years the record's days make up (days / 365.25).</summary>
    public required double Years { get; init; }

    /// <summary>Days missing between the first and the last.</summary>
    public required int MissingDays { get; init; }

    /// <summary>Years generated for the comparison.</summary>
    public required int GeneratedYears { get; init; }

    /// <summary>Day-to-day correlation of the lowest temperature in the record and in the generated years.</summary>
    public required (double Record, double Generated) TminLag1 { get; init; }

    /// <summary>Day-to-day correlation of the highest temperature in the record and in the generated years.</summary>
    public required (double Record, double Generated) TmaxLag1 { get; init; }

    /// <summary>Mean day of the year of the last spring night at or below 0 C in the record and in the generated years; null where the
    /// record has no whole spring, or a spring without one.</summary>
    public required (double Record, double Generated)? LastFrostDay { get; init; }

    /// <summary>What the user should know before trusting the fit, a sentence each.</summary>
    public required ImmutableArray<string> Warnings { get; init; }

    /// <summary>The report in words, a sentence a line: what was fitted, how well it does, and the warnings.</summary>
    public required ImmutableArray<string> Words { get; init; }

    /// <summary>Compares a model with a record over 400 generated years. Same model and record, same report.</summary>
    /// <param name="model">The model.</param>
    /// <param name="days">The record in order of date, each date once.</param>
    /// <exception cref="ArgumentException">The record is not one that could be fitted: see <see cref="WeatherFit.WhyNot"/>.</exception>
    public static WeatherFitReport Of(WeatherModel model, ImmutableArray<DailyWeather> days)
    {
        ArgumentNullException.ThrowIfNull(model);
        if (WeatherFit.WhyNot(days) is { } reason)
            throw new ArgumentException($"The record cannot be compared with: {reason}.", nameof(days));

        var generated = Generate(model);
        var record = WeatherStatistics.Of(days.AsSpan());
        var drawn = WeatherStatistics.Of(generated);
        var months = ImmutableArray.CreateRange(Enumerable.Range(0, 12).Select(month => new MonthFit(
            month + 1, record.Months[month], drawn.Months[month], record.Months[month].Days / (double)MonthDays[month], YearsToGenerate)));
        var report = new WeatherFitReport
        {
            Months = months,
            First = days[0].Date,
            Last = days[^1].Date,
            Years = YearsOf(days),
            MissingDays = days[^1].Date.DayNumber - days[0].Date.DayNumber + 1 - days.Length,
            GeneratedYears = YearsToGenerate,
            TminLag1 = (record.TminLag1, drawn.TminLag1),
            TmaxLag1 = (record.TmaxLag1, drawn.TmaxLag1),
            LastFrostDay = LastFrost(days, generated),
            Warnings = [],
            Words = [],
        };
        report = report with { Warnings = Warn(report, model) };
        return report with { Words = Say(report) };
    }

    /// <summary>Years that a record's days make up (days / 365.25).</summary>
    /// <param name="days">The record.</param>
    public static double YearsOf(ImmutableArray<DailyWeather> days) => days.Length / 365.25;

    private static DailyWeather[] Generate(WeatherModel model)
    {
        var first = new DateOnly(2001, 1, 1);
        var count = first.AddYears(YearsToGenerate).DayNumber - first.DayNumber;
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        new WeatherGenerator(model).Draw(ReportSeed, 0, first, tmin, tmax, rain);
        var days = new DailyWeather[count];
        for (var day = 0; day < count; day++)
            days[day] = new DailyWeather(first.AddDays(day), tmin[day], tmax[day], rain[day]);
        return days;
    }

    private static (double Record, double Generated)? LastFrost(ImmutableArray<DailyWeather> days, DailyWeather[] generated)
    {
        var record = WeatherStatistics.LastSpringNight(days.AsSpan(), WeatherStatistics.FrostC);
        if (record.IsEmpty || record.Contains(0))
            return null;
        var drawn = WeatherStatistics.LastSpringNight(generated, WeatherStatistics.FrostC).Where(day => day > 0).ToList();
        return drawn.Count == 0 ? null : (record.Average(), drawn.Average());
    }

    private static ImmutableArray<string> Warn(WeatherFitReport report, WeatherModel model)
    {
        var warnings = ImmutableArray.CreateBuilder<string>();
        if (report.Years < ShortRecordYears)
        {
            warnings.Add($"The record is short: {report.Years:0.0} years, and {ShortRecordYears:0} or more are wanted. "
                + "A cold spring that comes once in ten years may not be in it, so chances of frost and of holds may be off either way.");
        }

        if (report.MissingDays > 0)
            warnings.Add($"{report.MissingDays} days are missing between the first and the last day; the fit uses the days there are.");
        foreach (var month in report.Months)
        {
            if (Math.Abs(month.TminMissC) > 0.5 || Math.Abs(month.TmaxMissC) > 0.5)
            {
                warnings.Add($"{MonthNames.Of(month.Month - 1)}: generated mean temperatures miss the record by "
                    + $"{month.TminMissC:+0.0;-0.0} C (lowest) and {month.TmaxMissC:+0.0;-0.0} C (highest).");
            }

            if (Math.Abs(month.WetShareMiss) > 0.03)
            {
                warnings.Add($"{MonthNames.Of(month.Month - 1)}: the generated share of wet days misses the record by "
                    + $"{100 * month.WetShareMiss:+0.0;-0.0} percentage points.");
            }
        }

        warnings.AddRange(model.Assumptions);
        return warnings.ToImmutable();
    }

    private static ImmutableArray<string> Say(WeatherFitReport report)
    {
        var words = ImmutableArray.CreateBuilder<string>();
        words.Add($"Fitted to {report.Years:0.0} years of days, {report.First:yyyy-MM-dd} to {report.Last:yyyy-MM-dd}, "
            + $"and compared with {report.GeneratedYears} generated years.");
        var tmin = report.Months.MaxBy(month => Math.Abs(month.TminMissC))!;
        var tmax = report.Months.MaxBy(month => Math.Abs(month.TmaxMissC))!;
        var wet = report.Months.MaxBy(month => Math.Abs(month.WetShareMiss))!;
        words.Add($"Mean lowest temperature: the worst month, {MonthNames.Of(tmin.Month - 1)}, misses by {Math.Abs(tmin.TminMissC):0.0} C.");
        words.Add($"Mean highest temperature: the worst month, {MonthNames.Of(tmax.Month - 1)}, misses by {Math.Abs(tmax.TmaxMissC):0.0} C.");
        words.Add($"Share of wet days: the worst month, {MonthNames.Of(wet.Month - 1)}, misses by {100 * Math.Abs(wet.WetShareMiss):0.0} percentage points.");
        words.Add($"Day-to-day persistence (correlation, record and generated): lowest {report.TminLag1.Record:0.00} and {report.TminLag1.Generated:0.00}, "
            + $"highest {report.TmaxLag1.Record:0.00} and {report.TmaxLag1.Generated:0.00}.");
        words.Add($"Rain of a year: {report.Months.Sum(month => month.RecordRainMm):0} mm in the record, "
            + $"{report.Months.Sum(month => month.GeneratedRainMm):0} mm generated.");
        foreach (var month in report.Months.Where(month => month.Month is 4 or 5))
        {
            words.Add($"Nights below 4.4 C in {MonthNames.Of(month.Month - 1)}, a year: {month.RecordColdNights:0.0} in the record, "
                + $"{month.GeneratedColdNights:0.0} generated.");
        }

        if (report.LastFrostDay is { } frost)
            words.Add($"Last night at or below 0 C, on average: {DayName(frost.Record)} in the record, {DayName(frost.Generated)} generated.");
        words.AddRange(report.Warnings);
        return words.ToImmutable();
    }

    private static string DayName(double dayOfYear)
    {
        var date = new DateOnly(2001, 1, 1).AddDays((int)Math.Round(dayOfYear) - 1);
        return $"{date.Day} {MonthNames.Of(date.Month - 1)}";
    }
}
