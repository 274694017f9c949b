using System.Collections.Immutable;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Inputs;

/// <summary>Weather that was written down, or is forecast: the files that [weather] names beside its own.</summary>
/// <param name="Observed">Days observed, in order.</param>
/// <param name="Forecast">Days forecast, in order.</param>
public sealed record SeenWeather(ImmutableArray<DailyWeather> Observed, ImmutableArray<DailyWeather> Forecast)
{
    /// <summary>None of either.</summary>
    public static SeenWeather None { get; } = new([], []);

    /// <summary>Name of the file of the forecast; null where none is named.</summary>
    public string? ForecastFile { get; init; }
}

/// <summary>Days of a season whose weather is the same whatever season is played.</summary>
/// <param name="Days">The days from the season's first on, without a gap.</param>
/// <param name="Observed">Leading days that were observed or are taken as normal; the others are forecast.</param>
public sealed record KnownDays(ImmutableArray<DailyWeather> Days, int Observed)
{
    /// <summary>No day is known.</summary>
    public static KnownDays None { get; } = new([], 0);

    /// <summary>Days among those of the past of which nothing is known, and that are taken as normal.</summary>
    public ImmutableArray<DateOnly> Lacking { get; init; } = [];

    /// <summary>Those of the days of which something is known.</summary>
    public ImmutableArray<DailyWeather> Seen => [.. Days.Where(day => !Lacking.Contains(day.Date))];

    /// <summary>Whether two hold the same days.</summary>
    /// <param name="other">The other.</param>
    public bool Equals(KnownDays? other) =>
        other is not null
        && Observed == other.Observed
        && Days.AsSpan().SequenceEqual(other.Days.AsSpan())
        && Lacking.AsSpan().SequenceEqual(other.Lacking.AsSpan());

    /// <summary>Equal for equal days.</summary>
    public override int GetHashCode() => HashCode.Combine(Days.Length, Observed);
}
