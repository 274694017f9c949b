using System.Collections.Immutable;

namespace BenchSim.Season.Weather;

/// <summary>
/// Fits the seasonal curves and spreads of the temperatures. Month means are adjusted until the residuals of each month's wet days and of
/// its dry days average 0 against the smooth curve: wet days that happened to fall early in a warming month do not make rain look cold.
/// What is left is fitted by <see cref="ResidualFit"/>.
/// </summary>
internal sealed class TemperatureFit
{
    private const int Rounds = 12;

    private readonly RecordDays _days;
    private readonly int _least;

    private TemperatureFit(RecordDays days, int least)
    {
        _days = days;
        _least = least;
        Tmin = FitSeries(days.Tmin);
        Tmax = FitSeries(days.Tmax);
        Residuals = ResidualFit.Of(days, Tmin, Tmax);
    }

    /// <summary>Lowest temperature.</summary>
    public TemperatureSeries Tmin { get; }

    /// <summary>Highest temperature.</summary>
    public TemperatureSeries Tmax { get; }

    /// <summary>What the curves and spreads leave.</summary>
    public ResidualFit Residuals { get; }

    /// <summary>Fits.</summary>
    /// <param name="days">Record in order of date.</param>
    /// <param name="least">Fewest days of a kind that are given a mean of their own.</param>
    /// <param name="assumptions">Gets a sentence for each thing assumed.</param>
    public static TemperatureFit Of(ImmutableArray<DailyWeather> days, int least, ImmutableArray<string>.Builder assumptions)
    {
        var record = new RecordDays(days);
        for (var month = 0; month < 12; month++)
        {
            if (record.WetDays[month] < least)
            {
                assumptions.Add(Thin(month, record.WetDays[month], "wet", "dry"));
            }

            if (record.DryDays[month] < least)
            {
                assumptions.Add(Thin(month, record.DryDays[month], "dry", "wet"));
            }
        }

        return new TemperatureFit(record, least);
    }

    private static string Thin(int month, int count, string kind, string other) =>
        $"{MonthNames.Of(month)} has only {count} {kind} days: their temperatures are those of its {other} days and the year's "
        + "usual difference.";

    private TemperatureSeries FitSeries(double[] values)
    {
        var series = new TemperatureSeries();
        for (var round = 0; round < Rounds; round++)
        {
            MoveMeans(series, values);
        }

        var departures = new double[values.Length];
        for (var day = 0; day < values.Length; day++)
        {
            departures[day] = values[day] - series.CurveAt(_days.Place[day], _days.IsWet[day]);
        }

        // Each mean that was fitted takes one degree of freedom.
        var freedom = new int[12];
        for (var month = 0; month < 12; month++)
        {
            var (wet, dry) = (_days.WetDays[month], _days.DryDays[month]);
            freedom[month] = wet + dry - (wet >= _least ? 1 : 0) - (dry >= _least ? 1 : 0);
        }

        Array.Fill(series.Spread, 1);
        series.JoinSpreads();
        for (var round = 0; round < Rounds; round++)
        {
            MoveSpreads(series, departures, freedom);
        }

        for (var day = 0; day < departures.Length; day++)
        {
            departures[day] /= series.SpreadCurve[_days.Place[day]];
        }

        series.Residuals = departures;
        return series;
    }

    private void MoveMeans(TemperatureSeries series, double[] values)
    {
        var (wet, dry) = (new double[12], new double[12]);
        for (var day = 0; day < values.Length; day++)
        {
            var isWet = _days.IsWet[day];
            (isWet ? wet : dry)[_days.Month[day]] += values[day] - series.CurveAt(_days.Place[day], isWet);
        }

        for (var month = 0; month < 12; month++)
        {
            series.Wet[month] += _days.WetDays[month] > 0 ? wet[month] / _days.WetDays[month] : 0;
            series.Dry[month] += _days.DryDays[month] > 0 ? dry[month] / _days.DryDays[month] : 0;
        }

        FillThinMonths(series);
        series.JoinMeans();
    }

    // A month with too few wet (dry) days takes its dry (wet) mean and the difference usual in the other months.
    private void FillThinMonths(TemperatureSeries series)
    {
        var thick = Enumerable.Range(0, 12).Where(month => _days.WetDays[month] >= _least && _days.DryDays[month] >= _least).ToList();
        var usual = thick.Count > 0 ? thick.Average(month => series.Wet[month] - series.Dry[month]) : 0;
        for (var month = 0; month < 12; month++)
        {
            if (_days.WetDays[month] < _least)
            {
                series.Wet[month] = series.Dry[month] + usual;
            }
            else if (_days.DryDays[month] < _least)
            {
                series.Dry[month] = series.Wet[month] - usual;
            }
        }
    }

    private void MoveSpreads(TemperatureSeries series, double[] departures, int[] freedom)
    {
        var squares = new double[12];
        for (var day = 0; day < departures.Length; day++)
        {
            var z = departures[day] / series.SpreadCurve[_days.Place[day]];
            squares[_days.Month[day]] += z * z;
        }

        for (var month = 0; month < 12; month++)
        {
            series.Spread[month] = Math.Max(0.01, series.Spread[month] * Math.Sqrt(squares[month] / freedom[month]));
        }

        series.JoinSpreads();
    }
}
