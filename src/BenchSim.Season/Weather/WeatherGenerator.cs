using BenchSim.Engine.Randomness;
using BenchSim.Season.Values;

namespace BenchSim.Season.Weather;

/// <summary>
/// Draws days of weather from a <see cref="WeatherModel"/>. Safe for use by several threads. Each day uses two blocks of luck named by
/// its date and season alone, and each calendar year one, whatever else is drawn: moving the first day of a season changes no luck, and 30
/// hidden days before the first day let the start be forgotten, so that it changes the weather itself only in the first days, and there
/// hardly.
/// </summary>
public sealed partial class WeatherGenerator
{
    /// <summary>Hidden days before the first day asked for.</summary>
    public const int HiddenDays = 30;

    // Luck is drawn for so many days at once.
    private const int DaysAStep = 64;

    private const uint RainPurpose = 1;
    private const uint TemperaturePurpose = 2;
    private const uint YearPurpose = 8;

    private const int MostKept = 8;

    private static readonly Kept<WeatherModel, WeatherGenerator> s_generators = new(MostKept, model => new WeatherGenerator(model));
    private static readonly ulong s_luckName = PhiloxKey.Hash("weather");

    private readonly DayParameters[] _days = new DayParameters[MeanPreservingCurve.TableDays];
    private readonly GammaQuantileTable[] _rain = new GammaQuantileTable[12];
    private readonly double[] _rainScaleMm = new double[12];
    private readonly ResidualShape[] _tminShapes = new ResidualShape[12];
    private readonly ResidualShape[] _tmaxShapes = new ResidualShape[12];
    private readonly ResidualModel _residuals;
    private readonly bool _yearsDiffer;
    private readonly double _start11;
    private readonly double _start21;
    private readonly double _start22;

    /// <summary>Makes a generator; tables are worked out here, once.</summary>
    /// <param name="model">The model.</param>
    /// <exception cref="ArgumentException">The model has not twelve months, or a parameter is out of range.</exception>
    public WeatherGenerator(WeatherModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        CheckModel(model);
        Model = model;
        _residuals = model.Residuals;
        var (varianceMax, covariance, varianceMin) = _residuals.LongRun();
        _start11 = Math.Sqrt(varianceMax);
        _start21 = covariance / _start11;
        _start22 = Math.Sqrt(Math.Max(0, varianceMin - (_start21 * _start21)));
        for (var month = 0; month < 12; month++)
        {
            _rain[month] = new GammaQuantileTable(model.Months[month].RainShape);
            _rainScaleMm[month] = model.Months[month].RainScaleMm;
            (_tminShapes[month], _tmaxShapes[month]) = (model.Months[month].TminShape, model.Months[month].TmaxShape);
            _yearsDiffer |= model.Months[month].TminYearShare > 0 || model.Months[month].TmaxYearShare > 0;
        }

        FillDays(model);
    }

    /// <summary>The generator of a model; the last few are kept, for their tables take some milliseconds.</summary>
    /// <param name="model">The model.</param>
    /// <exception cref="ArgumentException">The model has not twelve months, or a parameter is out of range.</exception>
    public static WeatherGenerator Of(WeatherModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return s_generators.Of(model);
    }

    /// <summary>The model the days are drawn from.</summary>
    public WeatherModel Model { get; }

    /// <summary>The key of the weather's luck under a seed.</summary>
    /// <param name="seed">Seed of all luck.</param>
    public static PhiloxKey KeyOf(ulong seed) => PhiloxKey.Of(seed, s_luckName);

    /// <summary>Draws the days of a season.</summary>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="season">Number of the season, from 0.</param>
    /// <param name="first">First day.</param>
    /// <param name="tmin">Filled with lowest temperatures, degrees Celsius; as long as the days wanted.</param>
    /// <param name="tmax">Filled with highest temperatures, degrees Celsius; never below the lowest.</param>
    /// <param name="rain">Filled with rain, millimetres; 0 on dry days.</param>
    public void Draw(ulong seed, int season, DateOnly first, Span<double> tmin, Span<double> tmax, Span<double> rain) =>
        Draw(KeyOf(seed), season, first, tmin, tmax, rain);

    /// <summary>Draws the days of a season with a key made before: allocates nothing.</summary>
    /// <param name="key">Key from <see cref="KeyOf"/>.</param>
    /// <param name="season">Number of the season, from 0.</param>
    /// <param name="first">First day.</param>
    /// <param name="tmin">Filled with lowest temperatures, degrees Celsius; as long as the days wanted.</param>
    /// <param name="tmax">Filled with highest temperatures, degrees Celsius; never below the lowest.</param>
    /// <param name="rain">Filled with rain, millimetres; 0 on dry days.</param>
    public void Draw(PhiloxKey key, int season, DateOnly first, Span<double> tmin, Span<double> tmax, Span<double> rain)
    {
        var start = first.AddDays(-HiddenDays);
        var state = new State
        {
            Walk = new CalendarWalk(start),
            Key = key,
            Season = season,
        };
        (state.ZMax, state.ZMin) = StartResiduals(key, season, start.DayNumber);
        state.IsWet = StartWet(key, season, start.DayNumber, state.Walk.Place);
        Draw(state, first, HiddenDays, tmin, tmax, rain);
    }

    // From the state so many days before the first: the days between are walked through, and not told.
    private void Draw(State state, DateOnly first, int daysBefore, Span<double> tmin, Span<double> tmax, Span<double> rain)
    {
        if (tmax.Length != tmin.Length || rain.Length != tmin.Length)
        {
            throw new ArgumentException("The three spans must be of one length.", nameof(tmax));
        }

        var (key, season) = (state.Key, state.Season);
        Span<double> luck = stackalloc double[4 * DaysAStep];
        for (var day = 1 - daysBefore; day < tmin.Length; day += DaysAStep)
        {
            var days = Math.Min(DaysAStep, tmin.Length - day);
            var number = (uint)(first.DayNumber + day);
            var e1 = luck[..days];
            var e2 = luck.Slice(DaysAStep, days);
            var u0 = luck.Slice(2 * DaysAStep, days);
            var u1 = luck.Slice(3 * DaysAStep, days);
            Philox.Uniforms(new PhiloxBlock(number, (uint)season, TemperaturePurpose, 0), key, u0, u1);
            Normal.Quantiles(u0, e1);
            Normal.Quantiles(u1, e2);
            Philox.Uniforms(new PhiloxBlock(number, (uint)season, RainPurpose, 0), key, u0, u1);

            // The first days are hidden: they are walked through like the others, and not told.
            var hidden = Math.Clamp(-day, 0, days);
            var (from, to) = (day + hidden, day + days);
            Walk(ref state, e1[..hidden], e2, u0, default);
            var rainsOf = state.Walk;
            var wet = rain[from..to];
            Walk(ref state, e1[hidden..], e2[hidden..], u0[hidden..], new Told(tmin[from..to], tmax[from..to], wet, u1[hidden..]));
            Rain(rainsOf, wet, e1, e2);
        }
    }

    /// <summary>Mean temperatures of a date in the model, without luck: wet and dry days in their long-run shares.</summary>
    /// <param name="date">A date of any year.</param>
    public (double TminC, double TmaxC) MeanOf(DateOnly date)
    {
        ref readonly var day = ref _days[MeanPreservingCurve.PlaceOf(date)];
        var wet = Model.Months[day.Month].WetShare;
        return ((wet * day.TminWetC) + ((1 - wet) * day.TminDryC), (wet * day.TmaxWetC) + ((1 - wet) * day.TmaxDryC));
    }

    private static (double Low, double High) KeepRange(double low, double high, double least)
    {
        if (high - low >= least)
        {
            return (low, high);
        }

        var middle = (low + high) / 2;
        return (middle - (least / 2), middle + (least / 2));
    }

    // Walks the days of some luck. Rain is told as its luck, 0 on dry days.
    private void Walk(ref State state, ReadOnlySpan<double> e1, ReadOnlySpan<double> e2, ReadOnlySpan<double> wetLuck, Told told)
    {
        for (var day = 0; day < e1.Length; day++)
        {
            state.Walk.Next();
            if (state.Walk.Year != state.YearDrawn && _yearsDiffer)
            {
                DrawYear(ref state);
            }

            ref readonly var today = ref _days[state.Walk.Place];
            state.IsWet = wetLuck[day] < (state.IsWet ? today.WetAfterWet : today.WetAfterDry);
            (state.ZMax, state.ZMin) = (
                (_residuals.A11 * state.ZMax) + (_residuals.A12 * state.ZMin) + (_residuals.B11 * e1[day]),
                (_residuals.A21 * state.ZMax) + (_residuals.A22 * state.ZMin) + (_residuals.B21 * e1[day]) + (_residuals.B22 * e2[day])
            );
            if (told.Rain.IsEmpty)
            {
                continue;
            }

            var max = _tmaxShapes[today.Month].At((today.TmaxYear * state.YearMax) + (today.TmaxRest * state.ZMax));
            var min = _tminShapes[today.Month].At((today.TminYear * state.YearMin) + (today.TminRest * state.ZMin));
            var high = (state.IsWet ? today.TmaxWetC : today.TmaxDryC) + (today.TmaxSdC * max);
            var low = (state.IsWet ? today.TminWetC : today.TminDryC) + (today.TminSdC * min);
            (told.Tmin[day], told.Tmax[day]) = KeepRange(low, high, Model.LeastRangeC);
            told.Rain[day] = state.IsWet ? told.RainLuck[day] : 0;
        }
    }

    // What the days of a calendar year have in common: named by the year in the place of a day.
    private void DrawYear(ref State state)
    {
        var luck = Philox.Block(new PhiloxBlock((uint)state.Walk.Year, (uint)state.Season, YearPurpose, 0), state.Key);
        var both = Model.YearCorrelation;
        state.YearDrawn = state.Walk.Year;
        state.YearMax = Normal.Quantile(luck.Uniform0);
        state.YearMin = (both * state.YearMax) + (Math.Sqrt(1 - (both * both)) * Normal.Quantile(luck.Uniform1));
    }

    // Makes the rain of wet days out of its luck.
    private void Rain(CalendarWalk walk, Span<double> rain, Span<double> chances, Span<double> probits)
    {
        var wet = 0;
        foreach (var luck in rain)
        {
            if (luck > 0)
            {
                chances[wet++] = luck;
            }
        }

        Normal.Quantiles(chances[..wet], probits);
        wet = 0;
        foreach (ref var day in rain)
        {
            walk.Next();
            if (day > 0)
            {
                var month = _days[walk.Place].Month;
                day = _rainScaleMm[month] * _rain[month].AtProbit(probits[wet++]);
            }
        }
    }

    private static (double First, double Second) Normals(PhiloxKey key, int season, int number)
    {
        var luck = Philox.Block(new PhiloxBlock((uint)number, (uint)season, TemperaturePurpose, 0), key);
        return (Normal.Quantile(luck.Uniform0), Normal.Quantile(luck.Uniform1));
    }

    private (double Max, double Min) StartResiduals(PhiloxKey key, int season, int number)
    {
        var (e1, e2) = Normals(key, season, number);
        return (_start11 * e1, (_start21 * e1) + (_start22 * e2));
    }

    private bool StartWet(PhiloxKey key, int season, int number, int place)
    {
        var luck = Philox.Block(new PhiloxBlock((uint)number, (uint)season, RainPurpose, 0), key);
        return luck.Uniform0 < Model.Months[_days[place].Month].WetShare;
    }

    private void FillDays(WeatherModel model)
    {
        var months = model.Months;
        var tminWet = Curve(months, month => month.TminWetC);
        var tminDry = Curve(months, month => month.TminDryC);
        var tmaxWet = Curve(months, month => month.TmaxWetC);
        var tmaxDry = Curve(months, month => month.TmaxDryC);
        var tminSd = SpreadCurve(months, month => month.TminSdC);
        var tmaxSd = SpreadCurve(months, month => month.TmaxSdC);
        for (var place = 0; place < _days.Length; place++)
        {
            // A leap year has every place of the table.
            var month = new DateOnly(2000, 1, 1).AddDays(place).Month - 1;
            _days[place] = new DayParameters(
                month,
                months[month].WetAfterDry,
                months[month].WetAfterWet,
                tminWet[place],
                tminDry[place],
                tmaxWet[place],
                tmaxDry[place],
                tminSd[place],
                tmaxSd[place],
                Math.Sqrt(months[month].TminYearShare),
                Math.Sqrt(1 - months[month].TminYearShare),
                Math.Sqrt(months[month].TmaxYearShare),
                Math.Sqrt(1 - months[month].TmaxYearShare)
            );
        }
    }

    private static double[] Curve(IReadOnlyList<MonthWeather> months, Func<MonthWeather, double> value) =>
        MeanPreservingCurve.Daily([.. months.Select(value)]);

    // Spreads are joined in the logarithm so that they stay above 0.
    internal static double[] SpreadCurve(IReadOnlyList<MonthWeather> months, Func<MonthWeather, double> value) =>
        Array.ConvertAll(MeanPreservingCurve.Daily([.. months.Select(month => Math.Log(value(month)))]), Math.Exp);

    private static void CheckModel(WeatherModel model)
    {
        if (model.Months.Length != 12)
        {
            throw new ArgumentException("A weather model has twelve months.", nameof(model));
        }

        if (!(model.LeastRangeC >= 0))
        {
            throw new ArgumentException("The least range of a weather model must be 0 or more.", nameof(model));
        }

        foreach (var month in model.Months)
        {
            if (!(month is { WetAfterDry: >= 0 and <= 1, WetAfterWet: >= 0 and <= 1, RainScaleMm: > 0, TminSdC: > 0, TmaxSdC: > 0 }))
            {
                throw new ArgumentException(
                    "Chances of rain must lie between 0 and 1; rain scale and spreads must be above 0.",
                    nameof(model)
                );
            }

            if (!(month is { TminYearShare: >= 0 and < 1, TmaxYearShare: >= 0 and < 1 }))
            {
                throw new ArgumentException("What the days of a year have in common must lie between 0 and below 1.", nameof(model));
            }
        }

        if (!(model.YearCorrelation is >= -1 and <= 1))
        {
            throw new ArgumentException("The correlation of a year's temperatures must lie between -1 and 1.", nameof(model));
        }
    }

    private readonly record struct DayParameters(
        int Month,
        double WetAfterDry,
        double WetAfterWet,
        double TminWetC,
        double TminDryC,
        double TmaxWetC,
        double TmaxDryC,
        double TminSdC,
        double TmaxSdC,
        double TminYear,
        double TminRest,
        double TmaxYear,
        double TmaxRest
    );

    /// <summary>Where the walk through the days stands.</summary>
    private struct State
    {
        public CalendarWalk Walk;

        public PhiloxKey Key { get; init; }

        public int Season { get; init; }

        public int YearDrawn { get; set; }

        public double YearMax { get; set; }

        public double YearMin { get; set; }

        public double ZMax { get; set; }

        public double ZMin { get; set; }

        public bool IsWet { get; set; }
    }

    /// <summary>Where days are told, and the luck of their rain.</summary>
    private readonly ref struct Told(Span<double> tmin, Span<double> tmax, Span<double> rain, ReadOnlySpan<double> rainLuck)
    {
        public readonly Span<double> Tmin = tmin;
        public readonly Span<double> Tmax = tmax;
        public readonly Span<double> Rain = rain;
        public readonly ReadOnlySpan<double> RainLuck = rainLuck;
    }

    // Walks the table day by day and steps over 29 February in common years.
    private struct CalendarWalk
    {
        private bool _isLeap;

        public CalendarWalk(DateOnly date)
        {
            Year = date.Year;
            _isLeap = DateTime.IsLeapYear(Year);
            Place = MeanPreservingCurve.PlaceOf(date);
        }

        public int Year { get; private set; }

        public int Place { get; private set; }

        public void Next()
        {
            Place++;
            if (Place == MeanPreservingCurve.LeapDay && !_isLeap)
            {
                Place++;
            }

            if (Place != MeanPreservingCurve.TableDays)
            {
                return;
            }

            Place = 0;
            Year++;
            _isLeap = DateTime.IsLeapYear(Year);
        }
    }
}
