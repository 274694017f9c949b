using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Climate;

/// <summary>Weather drawn anew each season.</summary>
internal sealed class GeneratedWeatherSource(GeneratedWeather weather, DateOnly opens) : WeatherSource
{
    private readonly WeatherGenerator generator = WeatherGenerator.Of(weather.Model);

    public override int? Distinct => null;

    public override int Which(ulong seed, int season) => 0;

    public override void Fill(ulong seed, int season, SeasonWeather into) =>
        generator.Draw(seed, season, opens.AddDays(-SeasonWeather.LeadDays), into.Tmin, into.Tmax, into.Rain);

    public override void FillNormal(SeasonWeather into)
    {
        for (var index = 0; index < into.Tmin.Length; index++)
        {
            (into.Tmin[index], into.Tmax[index]) = generator.MeanOf(opens.AddDays(index - SeasonWeather.LeadDays));
            into.Rain[index] = 0;
        }
    }
}
