using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Climate;

/// <summary>Gives each season its weather. One source serves all threads.</summary>
public abstract class WeatherSource
{
    /// <summary>Key of the luck of the weather.</summary>
    protected const string LuckName = "weather";

    /// <summary>Distinct weathers, numbered from 0, when there are few enough to keep; null when every season has its own.</summary>
    public abstract int? Distinct { get; }

    /// <summary>Makes the source a scenario asks for.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="days">Days from day 0, the forecast days past the end included.</param>
    public static WeatherSource Of(Scenario scenario, int days)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return scenario.Known is { } known ? new KnownWeatherSource(Drawn(scenario, days, known.Seen), known) : Drawn(scenario, days, []);
    }

    private static WeatherSource Drawn(Scenario scenario, int days, ImmutableArray<DailyWeather> seen) =>
        scenario.Weather switch
        {
            ConstantWeather constant => new ConstantWeatherSource(constant, days),
            RecordedWeather record => new RecordedWeatherSource(record, scenario.Window.Opens, days),
            GeneratedWeather generated => new GeneratedWeatherSource(generated, scenario.Window.Opens, seen),
            _ => throw new ArgumentException($"There is no source for {scenario.Weather.GetType().Name}.", nameof(scenario)),
        };

    /// <summary>Which of the distinct weathers a season has; 0 when every season has its own.</summary>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="season">Number of the season.</param>
    public abstract int Which(ulong seed, int season);

    /// <summary>The weather of a season.</summary>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="season">Number of the season.</param>
    /// <param name="into">Filled.</param>
    public abstract void Fill(ulong seed, int season, SeasonWeather into);

    /// <summary>Normal weather: the mean of what the source gives, without its swings.</summary>
    /// <param name="into">Filled.</param>
    public abstract void FillNormal(SeasonWeather into);
}
