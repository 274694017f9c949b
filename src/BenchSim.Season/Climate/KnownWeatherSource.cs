using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>Weather of which the first days are known, and the rest comes from another source.</summary>
/// <param name="rest">Gives the rest.</param>
/// <param name="known">The days that are known.</param>
internal sealed class KnownWeatherSource(WeatherSource rest, KnownDays known) : WeatherSource
{
    public override int? Distinct => rest.Distinct;

    public override int Which(ulong seed, int season) => rest.Which(seed, season);

    public override void Fill(ulong seed, int season, SeasonWeather into)
    {
        rest.Fill(seed, season, into);
        foreach (var (index, day) in known.Days.Index().Take(into.Days))
        {
            var at = SeasonWeather.LeadDays + index;
            (into.Tmin[at], into.Tmax[at], into.Rain[at]) = (day.TminC, day.TmaxC, day.RainMm);
        }
    }

    public override void FillNormal(SeasonWeather into) => rest.FillNormal(into);
}
