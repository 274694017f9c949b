using System.Collections.Concurrent;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>The climates of a plan's seasons. Where the source has few distinct weathers their tables are made once and shared by all threads.</summary>
internal sealed class ClimateStore
{
    // Above this many distinct weathers a climate is made anew each season rather than kept.
    private const int MostKept = 64;

    private readonly ConcurrentDictionary<int, SeasonClimate> kept = new();
    private readonly int days;
    private readonly int forecastNights;

    public ClimateStore(Scenario scenario, int days)
    {
        this.days = days;
        forecastNights = scenario.Rules.ForecastNights;
        Layout = new ClimateLayout(scenario);
        Source = WeatherSource.Of(scenario, days + forecastNights + 1);
    }

    public ClimateLayout Layout { get; }

    public WeatherSource Source { get; }

    /// <summary>The climate of a season.</summary>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="season">Number of the season.</param>
    /// <param name="own">A climate of the caller's own, used and replaced where climates are not kept.</param>
    public SeasonClimate For(ulong seed, int season, ref SeasonClimate? own)
    {
        if (Source.Distinct is { } distinct && distinct <= MostKept)
        {
            return kept.GetOrAdd(
                Source.Which(seed, season),
                static (_, asked) => asked.Store.Shared(asked.Seed, asked.Season),
                (Store: this, Seed: seed, Season: season)
            );
        }

        own ??= new SeasonClimate(Layout, days, forecastNights);
        return own.Holds == (seed, season) ? own : Fill(own, seed, season);
    }

    /// <summary>The climate of normal weather.</summary>
    public SeasonClimate Normal()
    {
        var climate = new SeasonClimate(Layout, days, forecastNights);
        Source.FillNormal(climate.Weather);
        climate.Renew();
        return climate;
    }

    private SeasonClimate Shared(ulong seed, int season) =>
        Fill(new SeasonClimate(Layout, days, forecastNights, isShared: true), seed, season);

    private SeasonClimate Fill(SeasonClimate climate, ulong seed, int season)
    {
        Source.Fill(seed, season, climate.Weather);
        climate.Renew();
        climate.Holds = (seed, season);
        return climate;
    }
}
