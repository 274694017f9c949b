using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Climate;

/// <summary>Weather drawn anew each season.</summary>
/// <param name="weather">The weather.</param>
/// <param name="opens">First day of the season.</param>
/// <param name="seen">Days that are known, in order, from which it is drawn on; none for a season from its first day.</param>
internal sealed class GeneratedWeatherSource(GeneratedWeather weather, DateOnly opens, IReadOnlyList<DailyWeather> seen) : WeatherSource
{
    private readonly WeatherGenerator _generator = WeatherGenerator.Of(weather.Model);
    private readonly LastSeenDay? _last = WeatherGenerator.Of(weather.Model).After(seen);

    public override int? Distinct => null;

    public override int Which(ulong seed, int season) => 0;

    public override void Fill(ulong seed, int season, SeasonWeather into)
    {
        _generator.Draw(seed, season, opens.AddDays(-SeasonWeather.LeadDays), into.Tmin, into.Tmax, into.Rain);
        if (_last is { } last)
        {
            var first = last.Date.AddDays(1);
            var from = Math.Min(SeasonWeather.LeadDays + first.DayNumber - opens.DayNumber, into.Tmin.Length);
            _generator.DrawOn(
                WeatherGenerator.KeyOf(seed),
                season,
                last,
                first,
                into.Tmin.AsSpan(from),
                into.Tmax.AsSpan(from),
                into.Rain.AsSpan(from)
            );
        }
    }

    public override void FillNormal(SeasonWeather into)
    {
        for (var index = 0; index < into.Tmin.Length; index++)
        {
            (into.Tmin[index], into.Tmax[index]) = _generator.MeanOf(opens.AddDays(index - SeasonWeather.LeadDays));
            into.Rain[index] = 0;
        }
    }
}
