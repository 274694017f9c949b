using BenchSim.Season.Heat;

namespace BenchSim.Study.Review;

/// <summary>Reads the unit of fuel, and what was counted, from the note of a row.</summary>
internal static class FuelWords
{
    private static readonly Dictionary<string, string> s_units = new(StringComparer.OrdinalIgnoreCase)
    {
        ["gal"] = "gal",
        ["gallon"] = "gal",
        ["gallons"] = "gal",
        ["l"] = "L",
        ["litre"] = "L",
        ["litres"] = "L",
        ["liter"] = "L",
        ["liters"] = "L",
        ["kwh"] = "kWh",
        ["therm"] = "therm",
        ["therms"] = "therm",
        ["cord"] = "cord",
        ["cords"] = "cord",
        ["m3"] = "stacked m3",
        ["m³"] = "stacked m3",
    };

    private static readonly string[] s_readings = ["meter", "reading"];
    private static readonly char[] s_between = [' ', ',', ';', '.', ':', '(', ')', '/'];

    /// <summary>An amount in the unit the fuel is bought by; null where the note names no unit of it.</summary>
    /// <param name="fuel">Fuel.</param>
    /// <param name="count">Amount in the unit of the note.</param>
    /// <param name="note">Note.</param>
    public static double? Bought(Fuel fuel, double count, string note)
    {
        var unit = Words(note).Select(word => s_units.GetValueOrDefault(word)).FirstOrDefault(word => word is not null);
        return string.Equals(unit, fuel.Unit, StringComparison.Ordinal) ? count
            : string.Equals(unit, fuel.MetricUnit, StringComparison.Ordinal) ? count / fuel.MetricPerUnit
            : null;
    }

    /// <summary>Whether a meter was read, rather than fuel delivered.</summary>
    /// <param name="note">Note.</param>
    public static bool IsReading(string note) => Words(note).Any(word => s_readings.Contains(word, StringComparer.OrdinalIgnoreCase));

    private static string[] Words(string note) => note.Split(s_between, StringSplitOptions.RemoveEmptyEntries);
}
