using System.Collections.Immutable;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Inputs;

/// <summary>The length of the season.</summary>
/// <param name="Opens">First day on which anything may be sown; day 0 of the clock.</param>
/// <param name="Closes">Last day for which a batch may be wanted in the field. The play runs on past it until every batch has had its chance.</param>
public sealed record SeasonWindow(DateOnly Opens, DateOnly Closes);

/// <summary>The units in which files without a unit are read and reports are written.</summary>
public enum UnitSystem
{
    /// <summary>Degrees Celsius, metres, millimetres, litres.</summary>
    Metric,

    /// <summary>Degrees Fahrenheit, feet, inches, gallons.</summary>
    Imperial,
}

/// <summary>A number of places from a date on.</summary>
/// <param name="From">First day on which the number holds.</param>
/// <param name="Places">Whole places, 0 or more.</param>
public readonly record struct PlacesFrom(DateOnly From, int Places);

/// <summary>One point of the germination curve: percent normal seedlings at a medium temperature.</summary>
/// <param name="TemperatureC">Medium temperature, degrees Celsius.</param>
/// <param name="Percent">Percent normal seedlings, 0 to 100.</param>
public readonly record struct GerminationPoint(double TemperatureC, double Percent);

/// <summary>One day of outdoor weather.</summary>
/// <param name="Date">The day.</param>
/// <param name="TminC">Lowest temperature, degrees Celsius (taken to fall at 03:00).</param>
/// <param name="TmaxC">Highest temperature, degrees Celsius (taken to fall at 15:00).</param>
/// <param name="RainMm">Rain of the day, millimetres.</param>
public readonly record struct DailyWeather(DateOnly Date, double TminC, double TmaxC, double RainMm);

/// <summary>Where the weather of a season comes from.</summary>
public abstract record WeatherInput;

/// <summary>The same weather every day.</summary>
/// <param name="TminC">Lowest temperature of every day, degrees Celsius.</param>
/// <param name="TmaxC">Highest temperature of every day, degrees Celsius; at least <paramref name="TminC"/>.</param>
/// <param name="RainMm">Rain of every day, millimetres.</param>
public sealed record ConstantWeather(double TminC, double TmaxC, double RainMm) : WeatherInput;

/// <summary>A daily record. Each season draws one of the record's years, or plays the fixed one.</summary>
/// <param name="Days">The record in order of date, without gaps inside a year that is used.</param>
/// <param name="FixedYear">Year to play every season; null to draw one a season.</param>
/// <param name="File">Name of the file it was read from.</param>
public sealed record RecordedWeather(ImmutableArray<DailyWeather> Days, int? FixedYear, string File) : WeatherInput;

/// <summary>Weather drawn anew each season by a generator fitted to a record or made from monthly normals.</summary>
/// <param name="Model">The generator's parameters, with their source and assumptions.</param>
/// <param name="Fitted">The fit of the generator to its record; null when made from normals.</param>
public sealed record GeneratedWeather(WeatherModel Model, FittedWeather? Fitted) : WeatherInput;
