using System.Collections.Immutable;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Fields;

/// <summary>
/// A quantity that is written with its unit, such as <c>60 F</c> or <c>20 ft</c>, with its units. Exact factors: 1 in = 25.4 mm,
/// 1 ft = 304.8 mm (international yard and pound agreement of 1959); C = (F - 32) x 5/9.
/// </summary>
public sealed class Quantity
{
    private Quantity(string name, string example, params ImmutableArray<QuantityUnit> units) =>
        (Name, Example, Units) = (name, example, units);

    /// <summary>A temperature; degrees Celsius inside.</summary>
    public static Quantity Temperature { get; } =
        new(
            "temperature",
            "a temperature such as 60 F or 15.5 C",
            new("C", "°C", UnitSystem.Metric, value => value, "°C", "degC"),
            new("F", "°F", UnitSystem.Imperial, value => (value - 32) * 5 / 9, "°F", "degF")
        );

    /// <summary>A difference of two temperatures; kelvin inside.</summary>
    public static Quantity Difference { get; } =
        new(
            "temperature",
            "a difference of temperatures such as 10 F or 5 C",
            new("C", "°C", UnitSystem.Metric, value => value, "°C", "degC", "K"),
            new("F", "°F", UnitSystem.Imperial, value => value * 5 / 9, "°F", "degF")
        );

    /// <summary>A length; metres inside.</summary>
    public static Quantity Length { get; } =
        new(
            "length",
            "a length such as 20 ft or 6.1 m",
            new("m", "m", UnitSystem.Metric, value => value),
            new("ft", "ft", UnitSystem.Imperial, value => value * 0.3048, "foot", "feet", "'"),
            new("cm", "cm", null, value => value / 100),
            new("mm", "mm", null, value => value / 1000),
            new("in", "in", null, value => value * 0.0254, "inch", "inches", "\"")
        );

    /// <summary>A depth of rain; millimetres inside.</summary>
    public static Quantity Rain { get; } =
        new(
            "rain",
            "a depth of rain such as 25 mm or 1 in",
            new("mm", "mm", UnitSystem.Metric, value => value),
            new("in", "in", UnitSystem.Imperial, value => value * 25.4, "inch", "inches", "\""),
            new("cm", "cm", null, value => value * 10)
        );

    /// <summary>A fraction; 0 to 1 inside.</summary>
    public static Quantity Fraction { get; } =
        new("a share", "a share such as 85 % or 0.85", new QuantityUnit("%", "%", null, value => value / 100, "percent"));

    /// <summary>Heat let through by a covering; watts a square metre and kelvin inside.</summary>
    public static Quantity HeatLoss { get; } =
        new(
            "heat loss",
            "a heat loss such as 4.5 W/m2K or 0.8 Btu/h ft2 F",
            new("W/m2K", "W/m² K", UnitSystem.Metric, value => value, "W/m2 K", "W/(m2 K)", "W/m²K"),
            new(
                "Btu/h ft2 F",
                "Btu/h ft² °F",
                UnitSystem.Imperial,
                value => value * HeatUnits.UValueOfBtu,
                "Btu/hr ft2 F",
                "Btu/(h ft2 F)",
                "Btu/h ft² F"
            )
        );

    /// <summary>Heat that a heater gives; watts inside.</summary>
    public static Quantity Power { get; } =
        new(
            "heater output",
            "a heater output such as 80000 Btu/h or 25 kW",
            new("kW", "kW", UnitSystem.Metric, value => value * 1000),
            new("Btu/h", "Btu/h", UnitSystem.Imperial, value => value / HeatUnits.BtuPerWattHour, "Btu/hr", "Btu an hour"),
            new("W", "W", null, value => value)
        );

    /// <summary>A volume; litres inside. A cubic foot is 0.3048 metres cubed, a cubic yard 27 of it.</summary>
    public static Quantity Volume { get; } =
        new(
            "volume",
            "a volume such as 6.5 ft3 or 180 litres",
            new("litres", "litres", UnitSystem.Metric, value => value, "l", "litre", "liter", "liters"),
            new(
                "ft3",
                "cubic feet",
                UnitSystem.Imperial,
                value => value * Volumes.LitresACubicFoot,
                "cu ft",
                "ft³",
                "cubic foot",
                "cubic feet"
            ),
            new("yd3", "cubic yards", null, value => value * 27 * Volumes.LitresACubicFoot, "cu yd", "yd³", "cubic yard", "cubic yards")
        );

    /// <summary>What it is, to follow "a unit of".</summary>
    public string Name { get; }

    /// <summary>An example, to follow "write".</summary>
    public string Example { get; }

    /// <summary>Its units.</summary>
    public ImmutableArray<QuantityUnit> Units { get; }

    /// <summary>The unit that a bare number has in a system of units; null where a bare number has none.</summary>
    public QuantityUnit? UnitOf(UnitSystem units) => Units.FirstOrDefault(unit => unit.System == units);

    /// <summary>A value as it is written in a file, with its unit, to at most three decimals: "60 F".</summary>
    /// <param name="value">The value in the units used inside.</param>
    /// <param name="units">Units of the site.</param>
    public string Write(double value, UnitSystem units)
    {
        var unit = UnitOf(units) ?? Units[0];
        return FormattableString.Invariant($"{In(unit, value, units):0.###} {unit.Name}");
    }

    /// <summary>A value as people read it, with its unit, to at most three decimals: "60 °F".</summary>
    /// <param name="value">The value in the units used inside.</param>
    /// <param name="units">Units of the site.</param>
    public string Show(double value, UnitSystem units)
    {
        var unit = UnitOf(units) ?? Units[0];
        return FormattableString.Invariant($"{In(unit, value, units):#,##0.###} {unit.Shown}");
    }

    private double In(QuantityUnit unit, double value, UnitSystem units)
    {
        if (ReferenceEquals(this, Temperature) && units == UnitSystem.Imperial)
        {
            return UnitWords.Degrees(value, units);
        }

        // Every unit is a straight line, so two points of it give the way back. Nothing is ever -0.
        var (zero, one) = (unit.ToInside(0), unit.ToInside(1));
        return Math.Round((value - zero) / (one - zero), 3) + 0.0;
    }
}

/// <summary>A unit of a quantity.</summary>
/// <param name="Name">As it is written in a file.</param>
/// <param name="Shown">As people read it.</param>
/// <param name="System">The system of units in which a bare number has this unit; null for a unit that must be written.</param>
/// <param name="ToInside">A number of this unit in the units used inside: a straight line.</param>
/// <param name="OtherNames">Other ways to write it.</param>
public sealed record QuantityUnit(
    string Name,
    string Shown,
    UnitSystem? System,
    Func<double, double> ToInside,
    params ImmutableArray<string> OtherNames
)
{
    /// <summary>Whether a text names this unit.</summary>
    public bool Is(ReadOnlySpan<char> text)
    {
        foreach (var name in OtherNames)
        {
            if (text.Equals(name, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return text.Equals(Name, StringComparison.OrdinalIgnoreCase);
    }
}
