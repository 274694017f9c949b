using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>
/// What the weather of a plan's seasons, and the room for the heat that follows from it, depend on. Two plans of equal keys share their
/// seasons, whatever their places; set-points, mats and laws of crops are told apart inside (<see cref="HeatSlots"/>).
/// </summary>
/// <param name="Weather">Where the weather comes from: what makes it, not what is said of it.</param>
/// <param name="Known">The days whose weather is known; null where there are none.</param>
/// <param name="Opens">First day of the season.</param>
/// <param name="Seed">Seed of all luck.</param>
/// <param name="Days">Days of the season.</param>
/// <param name="ForecastNights">Nights of forecast past its end.</param>
/// <param name="MediumOffsetK">Temperature of the medium less that of the air, kelvin.</param>
/// <param name="Light">Factor of the light on growth, by month.</param>
/// <param name="Latitude">Latitude of the site, degrees; null where it is not given.</param>
/// <param name="SunCoefficient">Coefficient of the sun's radiation from the range of temperature.</param>
internal sealed record ClimateKey(
    object Weather,
    KnownDays? Known,
    DateOnly Opens,
    ulong Seed,
    int Days,
    int ForecastNights,
    double MediumOffsetK,
    ImmutableArray<double> Light,
    double? Latitude,
    double SunCoefficient
)
{
    /// <summary>The key of a scenario.</summary>
    public static ClimateKey Of(Scenario scenario, int days, ulong seed) =>
        new(
            scenario.Weather is GeneratedWeather generated ? generated.Model : scenario.Weather,
            scenario.Known,
            scenario.Window.Opens,
            seed,
            days,
            scenario.Rules.ForecastNights,
            scenario.Rules.MediumOffsetK,
            scenario.Rules.Light,
            scenario.Latitude,
            scenario.SunCoefficient
        );

    /// <summary>Whether two keys hold the same.</summary>
    public bool Equals(ClimateKey? other) =>
        other is not null
        && (Opens, Seed, Days, ForecastNights, MediumOffsetK)
            == (other.Opens, other.Seed, other.Days, other.ForecastNights, other.MediumOffsetK)
        && (Latitude, SunCoefficient) == (other.Latitude, other.SunCoefficient)
        && Light.AsSpan().SequenceEqual(other.Light.AsSpan())
        && Equals(Known, other.Known)
        && Weather.Equals(other.Weather);

    /// <summary>Equal for equal keys.</summary>
    public override int GetHashCode() => HashCode.Combine(Opens, Seed, Days, ForecastNights, MediumOffsetK);
}
