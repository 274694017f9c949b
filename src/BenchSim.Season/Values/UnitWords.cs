namespace BenchSim.Season.Values;

/// <summary>Measured values in words, in the units of a site.</summary>
public static class UnitWords
{
    /// <summary>A temperature to a tenth of a degree, such as "59.5 F": what is round in one unit seldom is in the other.</summary>
    /// <param name="celsius">Temperature, degrees Celsius.</param>
    /// <param name="units">Units of the site.</param>
    public static string Temperature(double celsius, UnitSystem units) =>
        units == UnitSystem.Imperial
            ? FormattableString.Invariant($"{Degrees(celsius, units)} F")
            : FormattableString.Invariant($"{Degrees(celsius, units)} C");

    /// <summary>
    /// A temperature to a tenth of a degree, as a number. What is a whole degree Fahrenheit, written in tenths of a degree Celsius, is that
    /// whole degree again: 40 F is 4.4 C, and 4.4 C is 40 F, not 39.9.
    /// </summary>
    /// <param name="celsius">Temperature, degrees Celsius.</param>
    /// <param name="units">Units of the site.</param>
    public static double Degrees(double celsius, UnitSystem units)
    {
        if (units != UnitSystem.Imperial)
        {
            return Tenths(celsius);
        }

        // Half a tenth of a degree Celsius is 0.09 F.
        var fahrenheit = (celsius * 1.8) + 32;
        var whole = Math.Round(fahrenheit);
        return Math.Abs(fahrenheit - whole) < 0.095 ? whole + 0.0 : Tenths(fahrenheit);
    }

    /// <summary>A difference of temperatures without its sign, such as "0.4 F".</summary>
    /// <param name="kelvin">Difference, kelvin, 0 or more.</param>
    /// <param name="units">Units of the site.</param>
    public static string Difference(double kelvin, UnitSystem units) =>
        units == UnitSystem.Imperial
            ? FormattableString.Invariant($"{kelvin * 1.8:0.0} F")
            : FormattableString.Invariant($"{kelvin:0.0} C");

    /// <summary>A difference of temperatures with its sign, such as "+0.4 F".</summary>
    /// <param name="kelvin">Difference, kelvin.</param>
    /// <param name="units">Units of the site.</param>
    public static string Change(double kelvin, UnitSystem units) =>
        units == UnitSystem.Imperial
            ? FormattableString.Invariant($"{kelvin * 1.8:+0.0;-0.0} F")
            : FormattableString.Invariant($"{kelvin:+0.0;-0.0} C");

    /// <summary>Rain of a year: "820 mm", or "32.3 inches".</summary>
    /// <param name="millimetres">Rain, millimetres.</param>
    /// <param name="units">Units of the site.</param>
    public static string YearsRain(double millimetres, UnitSystem units) =>
        units == UnitSystem.Imperial
            ? FormattableString.Invariant($"{millimetres / 25.4:0.0} inches")
            : FormattableString.Invariant($"{millimetres:0} mm");

    // Nothing is ever -0.
    private static double Tenths(double value) => Math.Round(value, 1, MidpointRounding.AwayFromZero) + 0.0;
}
