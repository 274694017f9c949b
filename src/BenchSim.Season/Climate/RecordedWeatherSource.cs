using System.Collections.Immutable;
using BenchSim.Engine.Randomness;
using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Climate;

/// <summary>The years of a daily record: one drawn a season, or a fixed one.</summary>
internal sealed class RecordedWeatherSource : WeatherSource
{
    // Half the width of the window over which normal weather is averaged: a fortnight and a day smooths four years enough to plan by.
    private const int NormalReachDays = 7;

    private readonly RecordedWeather _record;
    private readonly DateOnly _opens;
    private readonly Dictionary<DateOnly, DailyWeather> _byDate;

    public RecordedWeatherSource(RecordedWeather record, DateOnly opens, int days)
    {
        _record = record;
        _opens = opens;
        _byDate = new Dictionary<DateOnly, DailyWeather>(record.Days.Length);
        foreach (var day in record.Days)
        {
            _byDate[day.Date] = day;
        }

        Years = record.FixedYear is { } year ? [.. WholeYears(days).Where(whole => whole == year)] : WholeYears(days);
    }

    /// <summary>Years of the record, or the fixed one alone, that cover the season from its first day to its last, oldest first.</summary>
    public ImmutableArray<int> Years { get; }

    public override int? Distinct => Years.Length;

    public override int Which(ulong seed, int season)
    {
        if (Years.Length == 1)
        {
            return 0;
        }

        var draw = Philox.Block(new PhiloxBlock(0, (uint)season, (uint)LuckPurpose.WeatherYear, 0), PhiloxKey.Of(seed, LuckName));
        return (int)(draw.Uniform0 * Years.Length);
    }

    public override void Fill(ulong seed, int season, SeasonWeather into)
    {
        if (Years.IsEmpty)
        {
            throw new InvalidOperationException($"{_record.File} has no year that covers the season.");
        }

        var year = Years[Which(seed, season)];
        for (var index = 0; index < into.Tmin.Length; index++)
        {
            var day = Nearest(_opens.AddDays(index - SeasonWeather.LeadDays), year);
            (into.Tmin[index], into.Tmax[index], into.Rain[index]) = (day.TminC, day.TmaxC, day.RainMm);
        }
    }

    public override void FillNormal(SeasonWeather into)
    {
        // Sums by day of a leap year, so that 29 February has a place of its own.
        var tmin = new double[366];
        var tmax = new double[366];
        var rain = new double[366];
        var count = new int[366];
        foreach (var day in _record.Days)
        {
            var slot = LeapSlot(day.Date);
            tmin[slot] += day.TminC;
            tmax[slot] += day.TmaxC;
            rain[slot] += day.RainMm;
            count[slot]++;
        }

        for (var index = 0; index < into.Tmin.Length; index++)
        {
            var centre = LeapSlot(_opens.AddDays(index - SeasonWeather.LeadDays));
            var (low, high, wet, days) = (0.0, 0.0, 0.0, 0);
            for (var reach = -NormalReachDays; reach <= NormalReachDays; reach++)
            {
                var slot = (centre + reach + 366) % 366;
                (low, high, wet, days) = (low + tmin[slot], high + tmax[slot], wet + rain[slot], days + count[slot]);
            }

            days = Math.Max(days, 1);
            (into.Tmin[index], into.Tmax[index], into.Rain[index]) = (low / days, high / days, wet / days);
        }
    }

    private static int LeapSlot(DateOnly date) => new DateOnly(2000, date.Month, date.Day).DayOfYear - 1;

    private ImmutableArray<int> WholeYears(int days)
    {
        if (_record.Days.IsEmpty)
        {
            return [];
        }

        var years = ImmutableArray.CreateBuilder<int>();
        for (var year = _record.Days[0].Date.Year; year <= _record.Days[^1].Date.Year; year++)
        {
            var whole = true;
            for (var day = 0; whole && day < days; day++)
            {
                whole = _byDate.ContainsKey(InYear(_opens.AddDays(day), year));
            }

            if (whole)
            {
                years.Add(year);
            }
        }

        return years.ToImmutable();
    }

    // A date of the season in a year of the record: the season's first year becomes that year. 29 February becomes the 28th where there is
    // none.
    private DateOnly InYear(DateOnly date, int year)
    {
        var target = year + date.Year - _opens.Year;
        return new DateOnly(target, date.Month, Math.Min(date.Day, DateTime.DaysInMonth(target, date.Month)));
    }

    // Days before the record begins or after it ends take the nearest day the record has.
    private DailyWeather Nearest(DateOnly date, int year)
    {
        var wanted = InYear(date, year);
        if (_byDate.TryGetValue(wanted, out var day))
        {
            return day;
        }

        return wanted < _record.Days[0].Date ? _record.Days[0] : _record.Days[^1];
    }
}
