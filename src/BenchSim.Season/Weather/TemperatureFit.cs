using System.Collections.Immutable;

namespace BenchSim.Season.Weather;

/// <summary>
/// Fits the seasonal curves, spreads and residuals of the temperatures. Month means are adjusted until the residuals of each month's wet
/// days and of its dry days average 0 against the smooth curve: wet days that happened to fall early in a warming month do not make rain
/// look cold.
/// </summary>
internal sealed class TemperatureFit
{
    private const int Rounds = 12;

    private readonly ImmutableArray<DailyWeather> _days;
    private readonly int[] _wetDays = new int[12];
    private readonly int[] _dryDays = new int[12];
    private readonly int _least;

    private TemperatureFit(ImmutableArray<DailyWeather> days, int least)
    {
        _days = days;
        _least = least;
        foreach (var day in days)
        {
            (day.RainMm > 0 ? _wetDays : _dryDays)[day.Date.Month - 1]++;
        }

        Tmin = FitSeries(day => day.TminC);
        Tmax = FitSeries(day => day.TmaxC);
        Residuals = FitResiduals();
    }

    /// <summary>Lowest temperature.</summary>
    public Series Tmin { get; }

    /// <summary>Highest temperature.</summary>
    public Series Tmax { get; }

    /// <summary>How residuals carry over.</summary>
    public ResidualModel Residuals { get; }

    /// <summary>Fits.</summary>
    /// <param name="days">Record in order of date.</param>
    /// <param name="least">Fewest days of a kind that are given a mean of their own.</param>
    /// <param name="assumptions">Gets a sentence for each thing assumed.</param>
    public static TemperatureFit Of(ImmutableArray<DailyWeather> days, int least, ImmutableArray<string>.Builder assumptions)
    {
        var fit = new TemperatureFit(days, least);
        for (var month = 0; month < 12; month++)
        {
            if (fit._wetDays[month] < least)
            {
                assumptions.Add(Thin(month, fit._wetDays[month], "wet", "dry"));
            }

            if (fit._dryDays[month] < least)
            {
                assumptions.Add(Thin(month, fit._dryDays[month], "dry", "wet"));
            }
        }

        return fit;
    }

    private static string Thin(int month, int count, string kind, string other) =>
        $"{MonthNames.Of(month)} has only {count} {kind} days: their temperatures are those of its {other} days and the year's usual difference.";

    private Series FitSeries(Func<DailyWeather, double> value)
    {
        var series = new Series();
        for (var round = 0; round < Rounds; round++)
        {
            MoveMeans(series, value);
        }

        Array.Fill(series.Spread, 1);
        series.SpreadCurve = MeanPreservingCurve.Daily(series.Spread);
        for (var round = 0; round < Rounds; round++)
        {
            MoveSpreads(series, value);
        }

        series.Residuals = [.. _days.Select(day => Standardized(series, day, value(day)))];
        return series;
    }

    private void MoveMeans(Series series, Func<DailyWeather, double> value)
    {
        var (wet, dry) = (new double[12], new double[12]);
        foreach (var day in _days)
        {
            var isWet = day.RainMm > 0;
            (isWet ? wet : dry)[day.Date.Month - 1] += value(day) - series.CurveAt(day.Date, isWet);
        }

        for (var month = 0; month < 12; month++)
        {
            series.Wet[month] += _wetDays[month] > 0 ? wet[month] / _wetDays[month] : 0;
            series.Dry[month] += _dryDays[month] > 0 ? dry[month] / _dryDays[month] : 0;
        }

        FillThinMonths(series);
        series.Join();
    }

    // A month with too few wet (dry) days takes its dry (wet) mean and the difference usual in the other months.
    private void FillThinMonths(Series series)
    {
        var thick = Enumerable.Range(0, 12).Where(month => _wetDays[month] >= _least && _dryDays[month] >= _least).ToList();
        var usual = thick.Count > 0 ? thick.Average(month => series.Wet[month] - series.Dry[month]) : 0;
        for (var month = 0; month < 12; month++)
        {
            if (_wetDays[month] < _least)
            {
                series.Wet[month] = series.Dry[month] + usual;
            }
            else if (_dryDays[month] < _least)
            {
                series.Dry[month] = series.Wet[month] - usual;
            }
        }
    }

    private void MoveSpreads(Series series, Func<DailyWeather, double> value)
    {
        var squares = new double[12];
        foreach (var day in _days)
        {
            var z = Standardized(series, day, value(day));
            squares[day.Date.Month - 1] += z * z;
        }

        for (var month = 0; month < 12; month++)
        {
            // Each mean that was fitted takes one degree of freedom.
            var means = (_wetDays[month] >= _least ? 1 : 0) + (_dryDays[month] >= _least ? 1 : 0);
            var ratio = squares[month] / (_wetDays[month] + _dryDays[month] - means);
            series.Spread[month] = Math.Max(0.01, series.Spread[month] * Math.Sqrt(ratio));
        }

        series.SpreadCurve = Array.ConvertAll(MeanPreservingCurve.Daily(Array.ConvertAll(series.Spread, Math.Log)), Math.Exp);
    }

    private static double Standardized(Series series, in DailyWeather day, double value) =>
        (value - series.CurveAt(day.Date, day.RainMm > 0)) / series.SpreadCurve[MeanPreservingCurve.PlaceOf(day.Date)];

    // A wet day after a dry one keeps some of the dry day's temperature, so a record carries over more than its residuals and its wet and
    // dry means tell apart: the products of one day's residual with the next day's wet-or-dry departure. The generator draws residuals
    // without regard to rain, so these products are added to the carry-over of the residuals, and the temperatures as a whole carry over
    // as in the record.
    private ResidualModel FitResiduals()
    {
        var (max, min) = (Tmax.Residuals, Tmin.Residuals);
        var (dMax, dMin) = (Departures(Tmax), Departures(Tmin));
        var plain = new double[4];
        var joint = new double[4];
        var pairs = 0;
        for (var i = 1; i < _days.Length; i++)
        {
            if (_days[i - 1].Date.DayNumber + 1 != _days[i].Date.DayNumber)
            {
                continue;
            }

            pairs++;
            Add(0, max, dMax, max, dMax, i);
            Add(1, max, dMax, min, dMin, i);
            Add(2, min, dMin, max, dMax, i);
            Add(3, min, dMin, min, dMin, i);
        }

        var varianceMax = max.Average(z => z * z);
        var varianceMin = min.Average(z => z * z);
        if (pairs == 0 || varianceMax < 1e-9 || varianceMin < 1e-9)
        {
            return ResidualModel.UnitedStatesAverage;
        }

        var both = Math.Sqrt(varianceMax * varianceMin);
        var cross = Math.Clamp(max.Zip(min, (a, b) => a * b).Average() / both, -0.99, 0.99);
        var full = Model(joint);
        if (Reproduces(full))
        {
            return full;
        }

        var simple = Model(plain);
        return Reproduces(simple) ? simple : ResidualModel.UnitedStatesAverage;

        void Add(int k, double[] today, double[] todayWet, double[] yesterday, double[] yesterdayWet, int i)
        {
            plain[k] += today[i] * yesterday[i - 1];
            joint[k] += (today[i] * yesterday[i - 1]) + (today[i] * yesterdayWet[i - 1]) + (todayWet[i] * yesterday[i - 1]);
        }

        ResidualModel Model(double[] lag) =>
            ResidualModel.FromCorrelations(
                cross,
                lag[0] / pairs / varianceMax,
                lag[1] / pairs / both,
                lag[2] / pairs / both,
                lag[3] / pairs / varianceMin
            );
    }

    // Correlations no autoregression can have give a model whose long-run variances are not 1.
    private static bool Reproduces(ResidualModel model)
    {
        if (!model.IsStable)
        {
            return false;
        }

        var (varianceMax, _, varianceMin) = model.LongRun();
        return Math.Abs(varianceMax - 1) < 1e-3 && Math.Abs(varianceMin - 1) < 1e-3;
    }

    // How far the mean of a day's kind (wet or dry) lies from the mean of all days, in standard deviations.
    private double[] Departures(Series series) =>
        [
            .. _days.Select(day =>
            {
                var month = day.Date.Month - 1;
                var wet = (double)_wetDays[month] / (_wetDays[month] + _dryDays[month]);
                var middle = (wet * series.CurveAt(day.Date, true)) + ((1 - wet) * series.CurveAt(day.Date, false));
                return (series.CurveAt(day.Date, day.RainMm > 0) - middle) / series.SpreadCurve[MeanPreservingCurve.PlaceOf(day.Date)];
            }),
        ];

    /// <summary>One temperature: month means, spreads, their curves and residuals.</summary>
    internal sealed class Series
    {
        private double[] _wetCurve = new double[MeanPreservingCurve.TableDays];
        private double[] _dryCurve = new double[MeanPreservingCurve.TableDays];

        /// <summary>Month means of wet days, degrees Celsius.</summary>
        public double[] Wet { get; } = new double[12];

        /// <summary>Month means of dry days, degrees Celsius.</summary>
        public double[] Dry { get; } = new double[12];

        /// <summary>Month spreads, kelvin.</summary>
        public double[] Spread { get; } = new double[12];

        /// <summary>Spread through the year, kelvin.</summary>
        public double[] SpreadCurve { get; set; } = [];

        /// <summary>Standardized residuals, in order of the record.</summary>
        public double[] Residuals { get; set; } = [];

        /// <summary>The curve at a date, degrees Celsius.</summary>
        public double CurveAt(DateOnly date, bool wet) => (wet ? _wetCurve : _dryCurve)[MeanPreservingCurve.PlaceOf(date)];

        /// <summary>Joins the month means.</summary>
        public void Join()
        {
            _wetCurve = MeanPreservingCurve.Daily(Wet);
            _dryCurve = MeanPreservingCurve.Daily(Dry);
        }
    }
}
