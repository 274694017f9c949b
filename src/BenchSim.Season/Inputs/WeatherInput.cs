using System.Collections.Immutable;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Inputs;

/// <summary>Where the weather of a season comes from.</summary>
public abstract record WeatherInput
{
    /// <summary>The keys of [weather] as they are written; none where it was not read from a folder.</summary>
    public WeatherKeys Written { get; init; } = new();
}

/// <summary>The same weather every day.</summary>
/// <param name="TminC">Lowest temperature of every day, degrees Celsius.</param>
/// <param name="TmaxC">Highest temperature of every day, degrees Celsius; at least <paramref name="TminC"/>.</param>
/// <param name="RainMm">Rain of every day, millimetres.</param>
public sealed record ConstantWeather(double TminC, double TmaxC, double RainMm) : WeatherInput;

/// <summary>A daily record. Each season draws one of the record's years, or plays the fixed one.</summary>
/// <param name="Days">The record in order of date, without gaps inside a year that is used.</param>
/// <param name="FixedYear">Year to play every season; null to draw one a season.</param>
/// <param name="File">Name of the file it was read from.</param>
public sealed record RecordedWeather(ImmutableArray<DailyWeather> Days, int? FixedYear, string File) : WeatherInput
{
    /// <summary>Whether two records hold the same days, of which the same years are played.</summary>
    /// <param name="other">The other record.</param>
    public bool Equals(RecordedWeather? other) =>
        other is not null
        && FixedYear == other.FixedYear
        && string.Equals(File, other.File, StringComparison.Ordinal)
        && (Days == other.Days || Days.AsSpan().SequenceEqual(other.Days.AsSpan()));

    /// <summary>Equal for equal records.</summary>
    public override int GetHashCode() => HashCode.Combine(Days.Length, FixedYear, File.Length);
}

/// <summary>Weather drawn anew each season by a generator fitted to a record or made from monthly normals.</summary>
/// <param name="Model">The generator's parameters, with their source and assumptions.</param>
/// <param name="Fitted">The fit of the generator to its record; null when made from normals.</param>
public sealed record GeneratedWeather(WeatherModel Model, FittedWeather? Fitted) : WeatherInput;
