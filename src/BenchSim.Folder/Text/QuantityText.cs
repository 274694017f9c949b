using System.Buffers;
using System.Globalization;
using BenchSim.Folder.Faults;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Text;

/// <summary>Reads numbers with units as people write them: <c>60 F</c>, <c>20 ft</c>, <c>85 %</c>.</summary>
internal static class QuantityText
{
    private const int LongestEcho = 30;

    private static readonly SearchValues<char> NumberCharacters = SearchValues.Create("0123456789+-.,");

    /// <summary>Reads a number with or without a unit.</summary>
    /// <param name="text">The text, without spaces around it.</param>
    /// <param name="quantity">What it measures.</param>
    /// <param name="units">Units of a bare number.</param>
    /// <param name="value">The value in the units used inside.</param>
    /// <param name="problem">What is wrong and what would be right; null when the text was read.</param>
    public static bool TryRead(string text, Quantity quantity, UnitSystem units, out double value, out Problem? problem)
    {
        value = 0;
        var end = NumberLength(text);
        var number = text.AsSpan(0, end);
        var unitText = text.AsSpan(end).Trim();
        if (number.Contains(','))
        {
            problem = CommaProblem(number.ToString(), unitText.ToString());
            return false;
        }

        if (!TryNumber(number, out var bare))
        {
            problem = new Problem($"is {Words.Quote(text)}, which is not a number", $"write {quantity.Example}");
            return false;
        }

        var unit = unitText.IsEmpty ? quantity.UnitOf(units) : UnitOf(quantity, unitText);
        if (unit is null && !unitText.IsEmpty)
        {
            problem = new Problem(
                $"is {Words.Quote(text)}, and {Words.Quote(unitText.ToString())} is not a unit of {quantity.Name}",
                $"write {Words.List([.. quantity.Units.Select(each => each.Name)], "or")}, "
                    + $"for example {quantity.Example.Split(" such as ")[1]}"
            );
            return false;
        }

        value = unit is null ? bare : unit.ToInside(bare);
        problem = null;
        return true;
    }

    /// <summary>Reads a plain decimal number: digits, one point, a sign before it. No exponent, no separators.</summary>
    public static bool TryNumber(ReadOnlySpan<char> text, out double value) =>
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
            after.Length + number.Length > LongestEcho || Words.HasControlCharacter(number + after)
                ? "write one number with a decimal point and without commas"
            : parts.Length > 2 || isThousands
                ? $"write {number.Replace(",", "", StringComparison.Ordinal)}{after} without a comma, "
                    + "or a decimal point if a fraction is meant"
            : $"write {number.Replace(',', '.')}{after} with a decimal point";
        return new Problem($"is {Words.Quote(number + after)}, which has a comma in the number", instead);
    }

    // The number is what only digits, signs, points and commas make up, at the beginning; nothing where no digit is in it.
    private static int NumberLength(ReadOnlySpan<char> text)
    {
        var length = text.IndexOfAnyExcept(NumberCharacters);
        var number = length < 0 ? text : text[..length];
        return number.ContainsAnyInRange('0', '9') ? number.Length : 0;
    }

    private static QuantityUnit? UnitOf(Quantity quantity, ReadOnlySpan<char> text)
    {
        foreach (var unit in quantity.Units)
        {
            if (unit.Is(text))
            {
                return unit;
            }
        }

        return null;
    }
}
