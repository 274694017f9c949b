using System.Globalization;
using BenchSim.Season.Heat;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Text;

/// <summary>
/// Numbers with units as people write them: <c>60 F</c>, <c>20 ft</c>, <c>85 %</c>. Exact factors: 1 in = 25.4 mm, 1 ft = 304.8 mm
/// (international yard and pound agreement of 1959); C = (F - 32) x 5/9.
/// </summary>
internal static class Quantity
{
    private const int LongestEcho = 30;

    private static readonly Dictionary<QuantityKind, Unit[]> UnitsOf = new()
    {
        [QuantityKind.Temperature] =
        [
            new("C", UnitSystem.Metric, value => value, "°C", "degC"),
            new("F", UnitSystem.Imperial, value => (value - 32) * 5 / 9, "°F", "degF"),
        ],
        [QuantityKind.Difference] =
        [
            new("C", UnitSystem.Metric, value => value, "°C", "degC", "K"),
            new("F", UnitSystem.Imperial, value => value * 5 / 9, "°F", "degF"),
        ],
        [QuantityKind.Length] =
        [
            new("m", UnitSystem.Metric, value => value),
            new("ft", UnitSystem.Imperial, value => value * 0.3048, "foot", "feet", "'"),
            new("cm", null, value => value / 100),
            new("mm", null, value => value / 1000),
            new("in", null, value => value * 0.0254, "inch", "inches", "\""),
        ],
        [QuantityKind.Rain] =
        [
            new("mm", UnitSystem.Metric, value => value),
            new("in", UnitSystem.Imperial, value => value * 25.4, "inch", "inches", "\""),
            new("cm", null, value => value * 10),
        ],
        [QuantityKind.Fraction] = [new("%", null, value => value / 100, "percent")],
        [QuantityKind.UValue] =
        [
            new("W/m2K", UnitSystem.Metric, value => value, "W/m2 K", "W/(m2 K)", "W/m²K"),
            new("Btu/h ft2 F", UnitSystem.Imperial, value => value * HeatUnits.UValueOfBtu, "Btu/hr ft2 F", "Btu/(h ft2 F)", "Btu/h ft² F"),
        ],
    };

    /// <summary>Reads a number with or without a unit.</summary>
    /// <param name="text">The text, without spaces around it.</param>
    /// <param name="kind">What it measures.</param>
    /// <param name="units">Units of a bare number.</param>
    /// <param name="value">The value in the units used inside.</param>
    /// <param name="problem">What is wrong and what would be right; null when the text was read.</param>
    public static bool TryRead(string text, QuantityKind kind, UnitSystem units, out double value, out Problem? problem)
    {
        value = 0;
        var (number, unitText) = Split(text);
        if (number.Length == 0)
        {
            problem = new Problem($"is {Faults.Words.Quote(text)}, which is not a number", $"write {Example(kind)}");
            return false;
        }

        if (CommaProblem(number, unitText) is { } comma)
        {
            problem = comma;
            return false;
        }

        if (!TryNumber(number, out var bare))
        {
            problem = new Problem($"is {Faults.Words.Quote(text)}, which is not a number", $"write {Example(kind)}");
            return false;
        }

        var unit =
            unitText.Length == 0
                ? UnitsOf[kind].FirstOrDefault(each => each.Bare == units)
                : UnitsOf[kind].FirstOrDefault(each => each.Is(unitText));
        if (unit is null && unitText.Length > 0)
        {
            problem = new Problem(
                $"is {Faults.Words.Quote(text)}, and {Faults.Words.Quote(unitText)} is not a unit of {NameOf(kind)}",
                $"write {Faults.Words.List([.. UnitsOf[kind].Select(each => each.Name)], "or")}, for example {Example(kind).Split(" such as ")[1]}"
            );
            return false;
        }

        value = unit is null ? bare : unit.ToInside(bare);
        problem = null;
        return true;
    }

    /// <summary>A value in the units of a site, with its unit, to at most three decimals.</summary>
    /// <param name="value">The value in the units used inside.</param>
    /// <param name="kind">What it measures.</param>
    /// <param name="units">The site's units.</param>
    public static string Written(double value, QuantityKind kind, UnitSystem units)
    {
        var unit = UnitsOf[kind].First(each => each.Bare == units || each.Bare is null);

        // Every unit is a straight line, so two points of it give the way back.
        var (zero, one) = (unit.ToInside(0), unit.ToInside(1));
        return $"{Faults.Words.Number(Math.Round((value - zero) / (one - zero), 3))} {unit.Name}";
    }

    /// <summary>Reads a plain decimal number: digits, one point, a sign before it. No exponent, no separators.</summary>
    public static bool TryNumber(string text, out double value) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value)
        && double.IsFinite(value)
        && !text.Contains('\0'); // the runtime passes over zero characters at the end

    /// <summary>The problem of a number written with a comma; null when it has none.</summary>
    public static Problem? CommaProblem(string number, string unit = "")
    {
        if (!number.Contains(','))
        {
            return null;
        }

        var after = unit.Length == 0 ? "" : " " + unit;
        var parts = number.Split(',');
        var isThousands = parts.Skip(1).All(part => part.Length == 3);

        // A text that is no number at all, such as a cell whose quotation mark is never closed, is not said a second time.
        var instead =
            after.Length + number.Length > LongestEcho || Faults.Words.HasControlCharacter(number + after)
                ? "write one number with a decimal point and without commas"
            : parts.Length > 2 || isThousands
                ? $"write {number.Replace(",", "", StringComparison.Ordinal)}{after} without a comma, or a decimal point if a fraction is meant"
            : $"write {number.Replace(',', '.')}{after} with a decimal point";
        return new Problem($"is {Faults.Words.Quote(number + after)}, which has a comma in the number", instead);
    }

    /// <summary>An example of the kind.</summary>
    public static string Example(QuantityKind kind) =>
        kind switch
        {
            QuantityKind.Temperature => "a temperature such as 60 F or 15.5 C",
            QuantityKind.Difference => "a difference of temperatures such as 10 F or 5 C",
            QuantityKind.Length => "a length such as 20 ft or 6.1 m",
            QuantityKind.Rain => "a depth of rain such as 25 mm or 1 in",
            QuantityKind.UValue => "a heat loss such as 4.5 W/m2K or 0.8 Btu/h ft2 F",
            _ => "a share such as 85 % or 0.85",
        };

    /// <summary>Splits a text into its number and its unit: the number is what only digits, signs, points and commas make up.</summary>
    private static (string Number, string Unit) Split(string text)
    {
        var length = text.TakeWhile(character => char.IsAsciiDigit(character) || character is '+' or '-' or '.' or ',').Count();
        return text[..length].Any(char.IsAsciiDigit) ? (text[..length], text[length..].Trim()) : ("", text);
    }

    private static string NameOf(QuantityKind kind) =>
        kind switch
        {
            QuantityKind.Temperature or QuantityKind.Difference => "temperature",
            QuantityKind.Length => "length",
            QuantityKind.Rain => "rain",
            QuantityKind.UValue => "heat loss",
            _ => "a share",
        };

    private sealed record Unit(string Name, UnitSystem? Bare, Func<double, double> ToInside, params string[] OtherNames)
    {
        public bool Is(string text) => OtherNames.Prepend(Name).Any(name => string.Equals(name, text, StringComparison.OrdinalIgnoreCase));
    }
}
