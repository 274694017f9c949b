using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Weather;

/// <summary>What a check of a daily record found.</summary>
/// <param name="Days">The days that can be used, in order of date, each date once, with the repairs made.</param>
/// <param name="Faults">What must be put right by the user, in order of line.</param>
/// <param name="Repairs">What was put right, in order of line; to be shown to the user.</param>
public sealed record WeatherRecordFindings(ImmutableArray<DailyWeather> Days, ImmutableArray<Fault> Faults, ImmutableArray<Fault> Repairs)
{
    /// <summary>True when there is no fault.</summary>
    public bool IsUsable => Faults.IsEmpty;
}
