using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>The same weather every day.</summary>
internal sealed class ConstantWeatherSource(ConstantWeather weather, int days) : WeatherSource
{
    public override int? Distinct => 1;

    public int Days { get; } = days;

    public override int Which(ulong seed, int season) => 0;

    public override void Fill(ulong seed, int season, SeasonWeather into) => FillNormal(into);

    public override void FillNormal(SeasonWeather into)
    {
        Array.Fill(into.Tmin, weather.TminC);
        Array.Fill(into.Tmax, weather.TmaxC);
        Array.Fill(into.Rain, weather.RainMm);
    }
}
