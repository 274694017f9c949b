using BenchSim.Folder.Faults;

namespace BenchSim.Folder.Text;

/// <summary>
/// A number as people and spreadsheets write it, with separators of thousands or a decimal comma. What has one meaning is read; what has
/// two is a fault that names both.
/// </summary>
internal static class WrittenNumber
{
    private const int LongestEcho = 30;

    /// <summary>Turns a written number into a plain one: digits, one decimal point, a sign before it.</summary>
    /// <param name="text">The text, without spaces around it.</param>
    /// <param name="isWhole">Whether a whole number is meant, so that three digits behind one comma are thousands.</param>
    /// <param name="plain">The plain number; the text itself where it is no number.</param>
    /// <param name="problem">The two meanings; null where there is one, or none.</param>
    /// <returns>Whether the plain number may be read.</returns>
    public static bool TryPlain(string text, bool isWhole, out string plain, out TwoMeanings? problem)
    {
        (plain, problem) = (text, null);
        var (sign, digits) = text is ['+' or '-' or '\u2212', ..] ? (text[0] == '+' ? "" : "-", text[1..]) : ("", text);
        digits = digits is [.., var before, '.'] && char.IsAsciiDigit(before) ? digits[..^1] : digits;
        if (text.Length > LongestEcho || digits.Length == 0 || !char.IsAsciiDigit(digits[^1]) || !digits.Any(char.IsAsciiDigit))
        {
            return false;
        }

        var separators = digits.Where(character => !char.IsAsciiDigit(character)).ToArray();
        if (separators.Length == 0)
        {
            plain = sign + digits;
            return true;
        }

        var last = separators[^1];
        var (whole, part) = (digits[..digits.LastIndexOf(last)], digits[(digits.LastIndexOf(last) + 1)..]);
        var isOfBlanks = last is ' ' or '\u00A0' or '\u2009' or '\u202F' or '\'' or '\u2019';
        if (last is not (',' or '.') && !isOfBlanks)
        {
            return false;
        }

        if (isOfBlanks || separators.Count(character => character == last) > 1)
        {
            // Thousands to the end: no mark of a fraction.
            plain = sign + Joined(digits, last);
            return plain.Length > sign.Length;
        }

        if (separators.Length > 1)
        {
            var thousands = separators[0];
            plain = $"{sign}{Joined(whole, thousands)}.{part}";
            return !plain.AsSpan(sign.Length).StartsWith(".") && thousands != last;
        }

        var isThousands = part.Length == 3 && whole.Length is >= 1 and <= 3 && whole.Trim('0').Length > 0 && whole[0] != '0';
        if (!isThousands || (last == '.' && !isWhole))
        {
            plain = $"{sign}{whole}.{part}";
            return true;
        }

        if (last == ',' && isWhole)
        {
            plain = sign + whole + part;
            return true;
        }

        var fraction = part.TrimEnd('0');
        var small = sign + whole + (fraction.Length == 0 ? "" : "." + fraction);
        problem = new TwoMeanings($"is {Words.Quote(text)}, which may be {sign}{whole}{part} or {small}", sign + whole + part, small);
        return false;
    }

    // The digits without the mark between thousands; empty where the groups are not of three.
    private static string Joined(string digits, char mark)
    {
        var groups = digits.Split(mark);
        var isGrouped =
            groups.All(group => group.Length > 0 && group.All(char.IsAsciiDigit))
            && groups[0].Length <= 3
            && groups.Skip(1).All(group => group.Length == 3);
        return isGrouped ? string.Concat(groups) : "";
    }
}

/// <summary>A number that may be read two ways.</summary>
/// <param name="What">What is wrong, to follow the name of the column or key.</param>
/// <param name="First">One number.</param>
/// <param name="Second">The other.</param>
internal sealed record TwoMeanings(string What, string First, string Second)
{
    /// <summary>What would be right.</summary>
    public string Instead => $"write {First} or {Second}";

    /// <summary>With a unit behind the numbers.</summary>
    public string InsteadOf(string unit) => unit.Length == 0 ? Instead : $"write {First} {unit} or {Second} {unit}";
}
