using System.Collections.Immutable;

namespace BenchSim.Season.Weather;

/// <summary>
/// How well a weather model reproduces the record it was fitted to, in numbers; <see cref="WeatherFitWords"/> says it in words.
/// </summary>
public sealed record WeatherFitReport
{
    /// <summary>Years of record below which a warning is given.</summary>
    public const double ShortRecordYears = 10;

    private const int YearsToGenerate = 400;
    private const ulong ReportSeed = 1;

    private static readonly int[] s_monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

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

    /// <summary>The springs of the record beside the generated ones, a figure for each <see cref="SpringKind"/>; empty where the record has
    /// no spring that is whole from January to June.</summary>
    public required ImmutableArray<SpringFigure> Springs { get; init; }

    /// <summary>What the model had to assume, a sentence each: see <see cref="WeatherModel.Assumptions"/>.</summary>
    public required ImmutableArray<string> Assumptions { get; init; }

    /// <summary>Compares a model with a record over 400 generated years. Same model and record, same report.</summary>
    /// <param name="model">The model.</param>
    /// <param name="days">The record in order of date, each date once.</param>
    /// <exception cref="ArgumentException">The record is not one that could be fitted: see <see cref="WeatherFit.WhyNot"/>.</exception>
    public static WeatherFitReport Of(WeatherModel model, ImmutableArray<DailyWeather> days)
    {
        ArgumentNullException.ThrowIfNull(model);
        if (WeatherFit.WhyNot(days) is { } reason)
        {
            throw new ArgumentException($"The record cannot be compared with: {reason}.", nameof(days));
        }

        var generated = Generate(model);
        var record = WeatherStatistics.Of(days.AsSpan());
        var drawn = WeatherStatistics.Of(generated);
        var months = ImmutableArray.CreateRange(
            Enumerable
                .Range(0, 12)
                .Select(month => new MonthFit(
                    month + 1,
                    record.Months[month],
                    drawn.Months[month],
                    record.Months[month].Days / (double)s_monthDays[month],
                    YearsToGenerate
                ))
        );
        return new WeatherFitReport
        {
            Months = months,
            First = days[0].Date,
            Last = days[^1].Date,
            Years = YearsOf(days),
            MissingDays = days[^1].Date.DayNumber - days[0].Date.DayNumber + 1 - days.Length,
            GeneratedYears = YearsToGenerate,
            TminLag1 = (record.TminLag1, drawn.TminLag1),
            TmaxLag1 = (record.TmaxLag1, drawn.TmaxLag1),
            Springs = SpringComparison.Of(days.AsSpan(), generated),
            Assumptions = model.Assumptions,
        };
    }

    /// <summary>Years that a record's days make up (days / 365.25).</summary>
    /// <param name="days">The record.</param>
    public static double YearsOf(ImmutableArray<DailyWeather> days) => days.Length / 365.25;

    private static DailyWeather[] Generate(WeatherModel model)
    {
        var first = new DateOnly(2001, 1, 1);
        var count = first.AddYears(YearsToGenerate).DayNumber - first.DayNumber;
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        WeatherGenerator.Of(model).Draw(ReportSeed, 0, first, tmin, tmax, rain);
        var days = new DailyWeather[count];
        for (var day = 0; day < count; day++)
        {
            days[day] = new DailyWeather(first.AddDays(day), tmin[day], tmax[day], rain[day]);
        }

        return days;
    }
}
