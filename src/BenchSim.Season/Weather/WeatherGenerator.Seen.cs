using BenchSim.Engine.Randomness;

namespace BenchSim.Season.Weather;

/// <content>Draws on from days that are known.</content>
public sealed partial class WeatherGenerator
{
    /// <summary>Where the generator stands after the days that are known; null where there are none.</summary>
    /// <param name="days">The days, in order of date; some may be missing between them.</param>
    public LastSeenDay? After(IReadOnlyList<DailyWeather> days)
    {
        ArgumentNullException.ThrowIfNull(days);
        if (days.Count == 0)
        {
            return null;
        }

        var last = days[^1].Date;
        var year = new YearBelief(Model.YearCorrelation);
        Scored? before = null;
        foreach (var day in days)
        {
            var scored = Score(day);
            if (day.Date.Year == last.Year)
            {
                See(ref year, scored, before is { } known && known.Date.AddDays(1) == day.Date ? known : null);
            }

            before = scored;
        }

        var (_, max, min, _, _, _, _) = before!.Value;
        return new LastSeenDay
        {
            Date = last,
            IsWet = days[^1].RainMm > 0,
            ScoreMax = max,
            ScoreMin = min,
            Year = year,
        };
    }

    /// <summary>Draws the days of a season that follow on those that are known.</summary>
    /// <param name="key">Key from <see cref="KeyOf"/>.</param>
    /// <param name="season">Number of the season, from 0.</param>
    /// <param name="seen">Where the generator stands.</param>
    /// <param name="first">First day wanted, after the last that is known.</param>
    /// <param name="tmin">Filled with lowest temperatures, degrees Celsius; as long as the days wanted.</param>
    /// <param name="tmax">Filled with highest temperatures, degrees Celsius.</param>
    /// <param name="rain">Filled with rain, millimetres.</param>
    public void DrawOn(PhiloxKey key, int season, LastSeenDay seen, DateOnly first, Span<double> tmin, Span<double> tmax, Span<double> rain)
    {
        ArgumentNullException.ThrowIfNull(seen);
        var state = new State
        {
            Walk = new CalendarWalk(seen.Date),
            Key = key,
            Season = season,
            IsWet = seen.IsWet,
            YearDrawn = seen.Date.Year,
        };
        if (_yearsDiffer)
        {
            var luck = Philox.Block(new PhiloxBlock((uint)seen.Date.Year, (uint)season, YearPurpose, 0), key);
            (state.YearMax, state.YearMin) = seen.Year.Draw(Normal.Quantile(luck.Uniform0), Normal.Quantile(luck.Uniform1));
        }

        ref readonly var day = ref _days[MeanPreservingCurve.PlaceOf(seen.Date)];
        state.ZMax = (seen.ScoreMax - (day.TmaxYear * state.YearMax)) / day.TmaxRest;
        state.ZMin = (seen.ScoreMin - (day.TminYear * state.YearMin)) / day.TminRest;
        Draw(state, first, first.DayNumber - seen.Date.DayNumber, tmin, tmax, rain);
    }

    // The normal scores of a day, and how much of them is the year's.
    private Scored Score(DailyWeather day)
    {
        ref readonly var of = ref _days[MeanPreservingCurve.PlaceOf(day.Date)];
        var wet = day.RainMm > 0;
        var max = _tmaxShapes[of.Month].ScoreOf((day.TmaxC - (wet ? of.TmaxWetC : of.TmaxDryC)) / of.TmaxSdC);
        var min = _tminShapes[of.Month].ScoreOf((day.TminC - (wet ? of.TminWetC : of.TminDryC)) / of.TminSdC);
        return new(day.Date, max, min, max / of.TmaxRest, min / of.TminRest, of.TmaxYear / of.TmaxRest, of.TminYear / of.TminRest);
    }

    private void See(ref YearBelief year, Scored day, Scored? before)
    {
        if (before is not { } last)
        {
            year.See((day.Max, day.Min), (day.YearMax, 0, 0, day.YearMin), _residuals.LongRun());
            return;
        }

        var r = _residuals;
        year.See(
            (day.Max - (r.A11 * last.Max) - (r.A12 * last.Min), day.Min - (r.A21 * last.Max) - (r.A22 * last.Min)),
            (day.YearMax - (r.A11 * last.YearMax), -r.A12 * last.YearMin, -r.A21 * last.YearMax, day.YearMin - (r.A22 * last.YearMin)),
            (r.B11 * r.B11, r.B11 * r.B21, (r.B21 * r.B21) + (r.B22 * r.B22))
        );
    }

    // Scores, then those less the year's share of the spread (a), and how much a year's luck weighs in them (b).
    private readonly record struct Scored(
        DateOnly Date,
        double ScoreMax,
        double ScoreMin,
        double Max,
        double Min,
        double YearMax,
        double YearMin
    );
}
