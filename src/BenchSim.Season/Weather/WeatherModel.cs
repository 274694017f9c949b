using System.Collections.Immutable;

namespace BenchSim.Season.Weather;

/// <summary>All parameters of the daily weather generator (docs/weather.md), after Richardson 1981.</summary>
public sealed record WeatherModel
{
    /// <summary>January to December, twelve months.</summary>
    public required ImmutableArray<MonthWeather> Months { get; init; }

    /// <summary>How the normal scores of the temperatures carry over from day to day, without what a year has in common.</summary>
    public required ResidualModel Residuals { get; init; }

    /// <summary>Correlation of what the days of a year have in common: highest with lowest temperature, -1 to 1.</summary>
    public double YearCorrelation { get; init; }

    /// <summary>
    /// Smallest gap between highest and lowest temperature of a day, kelvin, 0 or more. A drawn day with a smaller gap keeps its midpoint
    /// and gets this gap, so that its mean temperature does not change.
    /// </summary>
    public required double LeastRangeC { get; init; }

    /// <summary>Where the numbers come from, in words.</summary>
    public required string Source { get; init; }

    /// <summary>What had to be assumed, a sentence each; empty when fitted to a record that said it all.</summary>
    public ImmutableArray<string> Assumptions { get; init; } = [];

    /// <summary>Whether two models draw the same days: their words are not looked at.</summary>
    /// <param name="other">The other model.</param>
    public bool Equals(WeatherModel? other) =>
        other is not null
        && LeastRangeC.Equals(other.LeastRangeC)
        && YearCorrelation.Equals(other.YearCorrelation)
        && Residuals.Equals(other.Residuals)
        && Months.AsSpan().SequenceEqual(other.Months.AsSpan());

    /// <summary>Equal for models that draw the same days.</summary>
    public override int GetHashCode() => HashCode.Combine(LeastRangeC, Residuals, Months.Length > 0 ? Months[0] : null);
}
