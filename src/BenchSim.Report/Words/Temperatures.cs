using BenchSim.Season.Values;

namespace BenchSim.Report.Words;

/// <summary>Temperatures in the user's units.</summary>
public static class Temperatures
{
    /// <summary>"60 °F" or "15.5 °C": whole in Fahrenheit, at most one decimal in Celsius.</summary>
    /// <param name="celsius">Temperature, degrees Celsius.</param>
    /// <param name="units">Units of the site.</param>
    public static string Words(double celsius, UnitSystem units) =>
        units == UnitSystem.Imperial ? $"{Numbers.Whole((celsius * 1.8) + 32)} °F" : $"{Numbers.Fine(Math.Round(celsius, 1))} °C";
}
