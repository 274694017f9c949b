namespace BenchSim.Season.Inputs;

/// <summary>Measured values in words, in the units of a site.</summary>
public static class UnitWords
{
    /// <summary>A temperature to a tenth of a degree, such as "59.5 F": what is round in one unit seldom is in the other.</summary>
    /// <param name="celsius">Temperature, degrees Celsius.</param>
    /// <param name="units">Units of the site.</param>
    public static string Temperature(double celsius, UnitSystem units) => units == UnitSystem.Imperial
        ? FormattableString.Invariant($"{Tenths((celsius * 1.8) + 32)} F")
        : FormattableString.Invariant($"{Tenths(celsius)} C");

    // Nothing is ever -0.
    private static double Tenths(double value) => Math.Round(value, 1) + 0.0;
}
