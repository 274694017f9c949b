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
    private static readonly SearchValues<char> s_numberCharacters = SearchValues.Create("0123456789+-\u2212.,");

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
        if (!WrittenNumber.TryPlain(number.ToString(), isWhole: false, out var plain, out var two) || !TryNumber(plain, out var bare))
        {
            problem = two is null
                ? new Problem($"is {Words.Quote(text)}, which is not a number", $"write {quantity.Example}")
                : new Problem(two.What, two.InsteadOf(unitText.ToString()));
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

    // The number is what only digits, signs, points and commas make up, at the beginning; nothing where no digit is in it.
    private static int NumberLength(ReadOnlySpan<char> text)
    {
        var length = text.IndexOfAnyExcept(s_numberCharacters);
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
