using System.Collections.Immutable;

namespace BenchSim.Season.Weather;

/// <summary>
/// The site's spring in numbers, by fortnight: how often a frost still comes after a date, and how many nights lie below thresholds.
/// Counted over generated years or over the years of a record; every figure carries the number of years it rests on.
/// </summary>
public sealed record WeatherSummary
{
    private const int FortnightDays = 14;

    /// <summary>First day of the summary.</summary>
    public required DateOnly First { get; init; }

    /// <summary>Last day of the summary.</summary>
    public required DateOnly Last { get; init; }

    /// <summary>Years counted.</summary>
    public required int Years { get; init; }

    /// <summary>A night at or below this is a frost, degrees Celsius.</summary>
    public required double FrostC { get; init; }

    /// <summary>Chance of a frost after the first day of each fortnight and not after <see cref="Last"/>.</summary>
    public required ImmutableArray<FrostChance> FrostAfter { get; init; }

    /// <summary>Nights below each threshold by fortnight; thresholds in the order given, fortnights in order within each.</summary>
    public required ImmutableArray<FortnightNights> Nights { get; init; }

    /// <summary>Counts generated years.</summary>
    /// <param name="generator">The generator.</param>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="years">Years to draw, 1 or more.</param>
    /// <param name="first">First day.</param>
    /// <param name="last">Last day, not before the first. End it before the frosts of autumn (30 June in the north), or they count as
    /// frost after the date.</param>
    /// <param name="frostC">A night at or below this is a frost, degrees Celsius.</param>
    /// <param name="thresholdsC">Thresholds of cold nights, degrees Celsius.</param>
    public static WeatherSummary Of(
        WeatherGenerator generator,
        ulong seed,
        int years,
        DateOnly first,
        DateOnly last,
        double frostC,
        ImmutableArray<double> thresholdsC
    )
    {
        ArgumentNullException.ThrowIfNull(generator);
        ArgumentOutOfRangeException.ThrowIfLessThan(years, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(last, first);
        var count = last.DayNumber - first.DayNumber + 1;
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        var key = WeatherGenerator.KeyOf(seed);
        var tally = new Tally(first, last, frostC, thresholdsC);
        for (var season = 0; season < years; season++)
        {
            generator.Draw(key, season, first, tmin, tmax, rain);
            tally.Add(tmin);
        }

        return tally.ToSummary();
    }

    /// <summary>Counts the years of a record that have every day of the summary; null when there is none.</summary>
    /// <param name="days">Record in order of date, each date once.</param>
    /// <param name="first">First day; its month and day are looked for in every year of the record.</param>
    /// <param name="last">Last day, not before the first and less than a year after it.</param>
    /// <param name="frostC">A night at or below this is a frost, degrees Celsius.</param>
    /// <param name="thresholdsC">Thresholds of cold nights, degrees Celsius.</param>
    public static WeatherSummary? Of(
        ImmutableArray<DailyWeather> days,
        DateOnly first,
        DateOnly last,
        double frostC,
        ImmutableArray<double> thresholdsC
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(last, first);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(last, first.AddDays(365));
        var tally = new Tally(first, last, frostC, thresholdsC);
        var byDate = days.ToDictionary(day => day.Date, day => day.TminC);
        var tmin = new double[last.DayNumber - first.DayNumber + 1];
        for (var year = days.IsEmpty ? int.MaxValue : days[0].Date.Year; !days.IsEmpty && year <= days[^1].Date.Year; year++)
        {
            if (TakeYear(byDate, first, year - first.Year, tmin))
            {
                tally.Add(tmin);
            }
        }

        return tally.Years == 0 ? null : tally.ToSummary();
    }

    // Day by day with the same month and day; 29 February of the summary is left at 28 February where the record's year has none.
    private static bool TakeYear(Dictionary<DateOnly, double> byDate, DateOnly first, int shift, double[] tmin)
    {
        for (var day = 0; day < tmin.Length; day++)
        {
            if (!byDate.TryGetValue(first.AddDays(day).AddYears(shift), out tmin[day]))
            {
                return false;
            }
        }

        return true;
    }

    private sealed class Tally
    {
        private readonly DateOnly _first;
        private readonly DateOnly _last;
        private readonly double _frostC;
        private readonly ImmutableArray<double> _thresholds;
        private readonly int _fortnights;
        private readonly int[] _frostYears;
        private readonly long[] _sums;
        private readonly long[] _squares;

        public Tally(DateOnly first, DateOnly last, double frostC, ImmutableArray<double> thresholds)
        {
            (_first, _last, _frostC, _thresholds) = (first, last, frostC, thresholds);
            _fortnights = (last.DayNumber - first.DayNumber + FortnightDays) / FortnightDays;
            _frostYears = new int[_fortnights];
            _sums = new long[_fortnights * thresholds.Length];
            _squares = new long[_sums.Length];
        }

        public int Years { get; private set; }

        public void Add(double[] tmin)
        {
            Years++;
            var lastFrost = Array.FindLastIndex(tmin, night => night <= _frostC);
            for (var fortnight = 0; fortnight < _fortnights; fortnight++)
            {
                var start = fortnight * FortnightDays;
                _frostYears[fortnight] += lastFrost >= start ? 1 : 0;
                var nights = tmin.AsSpan(start, Math.Min(FortnightDays, tmin.Length - start));
                for (var threshold = 0; threshold < _thresholds.Length; threshold++)
                {
                    var cold = 0;
                    foreach (var night in nights)
                    {
                        cold += night < _thresholds[threshold] ? 1 : 0;
                    }

                    _sums[(threshold * _fortnights) + fortnight] += cold;
                    _squares[(threshold * _fortnights) + fortnight] += cold * cold;
                }
            }
        }

        public WeatherSummary ToSummary() =>
            new()
            {
                First = _first,
                Last = _last,
                Years = Years,
                FrostC = _frostC,
                FrostAfter =
                [
                    .. Enumerable
                        .Range(0, _fortnights)
                        .Select(fortnight => new FrostChance(StartOf(fortnight), _frostYears[fortnight], Years)),
                ],
                Nights = [.. Enumerable.Range(0, _sums.Length).Select(ToNights)],
            };

        private DateOnly StartOf(int fortnight) => _first.AddDays(fortnight * FortnightDays);

        private FortnightNights ToNights(int place)
        {
            var fortnight = place % _fortnights;
            var start = StartOf(fortnight);
            var mean = (double)_sums[place] / Years;
            var variance = Years > 1 ? Math.Max(0, (_squares[place] - (mean * _sums[place])) / (Years - 1)) : 0;
            var length = Math.Min(FortnightDays, _last.DayNumber - start.DayNumber + 1);
            return new FortnightNights(start, length, _thresholds[place / _fortnights], mean, Math.Sqrt(variance), Years);
        }
    }
}
