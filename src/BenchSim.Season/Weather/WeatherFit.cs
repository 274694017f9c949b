using System.Collections.Immutable;
using BenchSim.Season.Values;
using MathNet.Numerics;

namespace BenchSim.Season.Weather;

/// <summary>Fits a <see cref="WeatherModel"/> to a daily record (docs/weather.md says how, step by step).</summary>
public static class WeatherFit
{
    /// <summary>Days each calendar month must have in the record, all years together.</summary>
    public const int LeastDaysOfMonth = 20;

    /// <summary>Fewest days of a kind (wet or dry, in a month) that are given a mean of their own.</summary>
    private const int LeastDaysOfKind = 5;

    /// <summary>Pairs of days below which a chance of rain leans on the year's chance.</summary>
    private const int LeastPairs = 10;

    private const int MostKept = 8;

    private static readonly Kept<FitKey, FittedWeather> s_fits = new(MostKept, key => new FittedWeather(
        FitModel(key.Days, key.Source),
        key.Days
    ));

    /// <summary>Why a record cannot be fitted, in words; null when it can.</summary>
    /// <param name="days">The record in order of date, each date once.</param>
    public static string? WhyNot(ImmutableArray<DailyWeather> days)
    {
        if (days.IsDefaultOrEmpty)
        {
            return "the record is empty";
        }

        var counts = new int[12];
        for (var i = 0; i < days.Length; i++)
        {
            if (
                !double.IsFinite(days[i].TminC)
                || !double.IsFinite(days[i].TmaxC)
                || !(days[i].RainMm >= 0)
                || days[i].TmaxC < days[i].TminC
            )
            {
                return $"the values of {days[i].Date:yyyy-MM-dd} are not a day's weather";
            }

            if (i > 0 && days[i].Date <= days[i - 1].Date)
            {
                return $"{days[i].Date:yyyy-MM-dd} stands after {days[i - 1].Date:yyyy-MM-dd}";
            }

            counts[days[i].Date.Month - 1]++;
        }

        var thin = Enumerable
            .Range(0, 12)
            .Where(month => counts[month] < LeastDaysOfMonth)
            .Select(month => $"{MonthNames.Of(month)} has {counts[month]}")
            .ToList();
        return thin.Count == 0 ? null : $"each month needs {LeastDaysOfMonth} days or more, but {string.Join(", ", thin)}";
    }

    /// <summary>
    /// Fits the model, which can then report how well it reproduces the record. The last few fits are kept: the same days from the same
    /// source are fitted once.
    /// </summary>
    /// <param name="days">The record in order of date, each date once; gaps are allowed.</param>
    /// <param name="source">Where the record comes from, in words.</param>
    /// <exception cref="ArgumentException">The record cannot be fitted: see <see cref="WhyNot"/>.</exception>
    public static FittedWeather Fit(ImmutableArray<DailyWeather> days, string source = "daily record") =>
        s_fits.Of(new FitKey(days, source));

    /// <summary>Fits the model alone.</summary>
    /// <param name="days">The record in order of date, each date once; gaps are allowed.</param>
    /// <param name="source">Where the record comes from, in words.</param>
    /// <exception cref="ArgumentException">The record cannot be fitted: see <see cref="WhyNot"/>.</exception>
    public static WeatherModel FitModel(ImmutableArray<DailyWeather> days, string source = "daily record")
    {
        if (WhyNot(days) is { } reason)
        {
            throw new ArgumentException($"The record cannot be fitted: {reason}.", nameof(days));
        }

        var assumptions = ImmutableArray.CreateBuilder<string>();
        var statistics = WeatherStatistics.Of(days.AsSpan());
        var chances = RainChances(statistics, assumptions);
        var amounts = RainAmounts(days, assumptions);
        var temperatures = TemperatureFit.Of(days, LeastDaysOfKind, assumptions);
        var residuals = temperatures.Residuals;
        if (residuals.CarryOver == ResidualModel.UnitedStatesAverage)
        {
            assumptions.Add(
                "How temperatures carry over from day to day is not to be had from this record: it is taken as in the average of "
                    + "United States stations "
                    + "(Richardson and Wright 1984)."
            );
        }

        var months = ImmutableArray.CreateBuilder<MonthWeather>(12);
        for (var month = 0; month < 12; month++)
        {
            months.Add(
                new MonthWeather
                {
                    WetAfterDry = chances[month].AfterDry,
                    WetAfterWet = chances[month].AfterWet,
                    RainShape = amounts[month].Shape,
                    RainScaleMm = amounts[month].Scale,
                    TminWetC = temperatures.Tmin.Wet[month],
                    TminDryC = temperatures.Tmin.Dry[month],
                    TmaxWetC = temperatures.Tmax.Wet[month],
                    TmaxDryC = temperatures.Tmax.Dry[month],
                    TminSdC = temperatures.Tmin.Spread[month],
                    TmaxSdC = temperatures.Tmax.Spread[month],
                    TminShape = residuals.TminShapes[month],
                    TmaxShape = residuals.TmaxShapes[month],
                    TminYearShare = residuals.Years.Tmin[month],
                    TmaxYearShare = residuals.Years.Tmax[month],
                }
            );
        }

        return new WeatherModel
        {
            Months = months.MoveToImmutable(),
            Residuals = residuals.CarryOver,
            YearCorrelation = residuals.Years.Correlation,
            LeastRangeC = LeastRange(days.AsSpan()),
            Source = source,
            Assumptions = assumptions.ToImmutable(),
        };
    }

    /// <summary>Maximum-likelihood gamma distribution: the shape k solves ln k - digamma(k) = ln(mean) - mean of ln.</summary>
    /// <param name="amounts">Amounts above 0.</param>
    /// <returns>Shape, kept between 0.05 and 100, and scale in the unit of the amounts.</returns>
    public static (double Shape, double Scale) Gamma(ReadOnlySpan<double> amounts)
    {
        var (sum, logs) = (0.0, 0.0);
        foreach (var amount in amounts)
        {
            sum += amount;
            logs += Math.Log(amount);
        }

        var mean = sum / amounts.Length;
        var target = Math.Log(mean) - (logs / amounts.Length);

        // The left side falls as k grows, so halving the interval of ln k is sure.
        var (low, high) = (Math.Log(0.05), Math.Log(100));
        for (var step = 0; step < 100; step++)
        {
            var middle = (low + high) / 2;
            if (middle - SpecialFunctions.DiGamma(Math.Exp(middle)) > target)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        var shape = Math.Exp((low + high) / 2);
        return (shape, mean / shape);
    }

    private static (double AfterDry, double AfterWet)[] RainChances(
        WeatherStatistics statistics,
        ImmutableArray<string>.Builder assumptions
    )
    {
        var months = statistics.Months;

        // A record without a dry day has no chance of rain after one; then it is that of any day.
        var yearDry = Share(
            months.Sum(month => month.WetAfterDry),
            months.Sum(month => month.AfterDry),
            Share(months.Sum(month => month.WetDays), statistics.Days, 0)
        );
        var yearWet = Share(months.Sum(month => month.WetAfterWet), months.Sum(month => month.AfterWet), yearDry);
        var chances = new (double, double)[12];
        for (var month = 0; month < 12; month++)
        {
            var here = months[month];
            chances[month] = (Lean(here.WetAfterDry, here.AfterDry, yearDry), Lean(here.WetAfterWet, here.AfterWet, yearWet));
            if (here.AfterDry < LeastPairs)
            {
                assumptions.Add(Thin(month, here.AfterDry, "dry"));
            }

            if (here.AfterWet < LeastPairs)
            {
                assumptions.Add(Thin(month, here.AfterWet, "wet"));
            }
        }

        return chances;
    }

    private static string Thin(int month, int count, string yesterday) =>
        $"{MonthNames.Of(month)} has only {count} days after a {yesterday} day: its chance of rain then leans on the whole year's.";

    private static double Share(int wet, int of, double otherwise) => of > 0 ? (double)wet / of : otherwise;

    // Days short of ten are made up at the year's chance.
    private static double Lean(int wet, int of, double year) =>
        of >= LeastPairs ? (double)wet / of : (wet + ((LeastPairs - of) * year)) / LeastPairs;

    private static (double Shape, double Scale)[] RainAmounts(ImmutableArray<DailyWeather> days, ImmutableArray<string>.Builder assumptions)
    {
        var all = WetAmounts(days.AsSpan(), null);
        var year = all.Length > 0 ? Gamma(all) : (Shape: WeatherNormals.DefaultRainShape, Scale: 1.0);
        var amounts = new (double, double)[12];
        for (var month = 0; month < 12; month++)
        {
            var here = WetAmounts(days.AsSpan(), month + 1);
            amounts[month] = here.Length >= LeastDaysOfKind ? Gamma(here) : year;
            if (here.Length < LeastDaysOfKind)
            {
                assumptions.Add($"{MonthNames.Of(month)} has only {here.Length} wet days: its rain amounts are those of the whole year.");
            }
        }

        return amounts;
    }

    private static ReadOnlySpan<double> WetAmounts(ReadOnlySpan<DailyWeather> days, int? month)
    {
        var amounts = new double[days.Length];
        var count = 0;
        foreach (ref readonly var day in days)
        {
            if (day.RainMm > 0 && (month is null || day.Date.Month == month))
            {
                amounts[count++] = day.RainMm;
            }
        }

        return amounts.AsSpan(0, count);
    }

    private static double LeastRange(ReadOnlySpan<DailyWeather> days)
    {
        var least = double.PositiveInfinity;
        foreach (ref readonly var day in days)
        {
            least = Math.Min(least, day.TmaxC - day.TminC);
        }

        return least;
    }

    /// <summary>What a fit is made from; equal by what the days are.</summary>
    private sealed record FitKey(ImmutableArray<DailyWeather> Days, string Source)
    {
        public bool Equals(FitKey? other) =>
            other is not null
            && string.Equals(Source, other.Source, StringComparison.Ordinal)
            && (Days == other.Days || (!Days.IsDefault && !other.Days.IsDefault && Days.AsSpan().SequenceEqual(other.Days.AsSpan())));

        public override int GetHashCode() => Source.Length;
    }
}
