using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Toml;

/// <summary>What to type in the place of a value that TOML does not take, as growers write it.</summary>
/// <param name="What">What is wrong.</param>
/// <param name="Instead">What would be right.</param>
/// <param name="Value">The value as it would be right.</param>
internal sealed record TomlAdvice(string What, string Instead, string Value)
{
    // A whole number of TOML has 64 bits, one of them for the sign: the seed of all luck may be larger.
    private const int LongestWhole = 18;

    private static readonly string[] s_words = ["true", "false", "inf", "nan"];

    /// <summary>The advice for a value without quotation marks; null for one that the parser may judge.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="value">The value, not empty.</param>
    public static TomlAdvice? Of(string key, string value)
    {
        if (NeedsNoQuotes(value) || value[0] is '"' or '\'' or '[' or '{')
        {
            return null;
        }

        if (WrittenDate.Of(value) is { } date)
        {
            return OfDate(key, value, date);
        }

        var number = value.TakeWhile(IsOfNumber).Count();
        if (number == value.Length && value.Any(char.IsAsciiDigit))
        {
            return OfNumber(key, value);
        }

        if (
            number > 0
            && value[number..].Trim() is { Length: > 0 and <= 12 } unit
            && (char.IsLetter(unit[0]) || unit[0] is '%' or '\u00B0')
            && unit.All(character => char.IsLetterOrDigit(character) || character is '%' or '\u00B0' or '/' or ' ')
        )
        {
            return new TomlAdvice(
                "a number with a unit is a text and goes in quotation marks",
                $"write {key} = \"{value}\"",
                $"\"{value}\""
            );
        }

        return char.IsLetter(value[0]) && value.Length <= 80 && !value.AsSpan().ContainsAny("\"\\=") && !Words.HasControlCharacter(value)
            ? new TomlAdvice($"the text {Words.Quote(value)} is not in quotation marks", $"write {key} = \"{value}\"", $"\"{value}\"")
            : null;
    }

    /// <summary>Whether a value is a number, a date, a time or a truth value as TOML has it.</summary>
    public static bool NeedsNoQuotes(string value)
    {
        if (s_words.Contains(value.TrimStart('+', '-'), StringComparer.Ordinal))
        {
            return true;
        }

        var digits = value.TrimStart('+', '-');
        return digits.Length is > 0 and <= 40
            && char.IsAsciiDigit(digits[0])
            && !digits.Contains(',')
            && !(digits.Length > LongestWhole && digits.All(char.IsAsciiDigit))
            && digits.All(character => IsOfNumber(character) || character is '_' or ':' or 'e' or 'E' or 'x' or 'T' or 'Z')
            && !digits.EndsWith("e", StringComparison.OrdinalIgnoreCase);
    }

    private static bool IsOfNumber(char character) => char.IsAsciiDigit(character) || character is '+' or '-' or '.' or ',';

    // What is said of a date that is none, or has no year, is said by its reader: here it gets its quotation marks.
    private static TomlAdvice OfDate(string key, string value, WrittenDate date)
    {
        var what = $"a date in this form is a text and goes in quotation marks";
        return date is { IsPair: false, Year: not null } && date.In(DateOrder.YearFirst) is { } known
            ? new TomlAdvice(what, $"write {key} = {Words.Date(known)}", Words.Date(known))
            : new TomlAdvice(what, $"write {key} = \"{value}\"", $"\"{value}\"");
    }

    private static TomlAdvice? OfNumber(string key, string value)
    {
        if (value.Contains(','))
        {
            if (WrittenNumber.TryPlain(value, isWhole: false, out var plain, out var problem))
            {
                return new TomlAdvice($"{key} is {Words.Quote(value)}, which has a comma in the number", $"write {key} = {plain}", plain);
            }

            return problem is null ? null : new TomlAdvice($"{key} {problem.What}", problem.Instead, problem.First);
        }

        if (!value.TrimStart('+', '-').All(char.IsAsciiDigit))
        {
            return null;
        }

        return ulong.TryParse(value, out _)
            ? new TomlAdvice(
                $"{key} is {value}, and the largest number without quotation marks is {long.MaxValue}",
                $"write {key} = \"{value}\"",
                $"\"{value}\""
            )
            : new TomlAdvice(
                $"{key} is {Words.Quote(value)}, and no number here is that large",
                key is "seed" ? $"write a number up to {ulong.MaxValue}" : "write a smaller number",
                "1"
            );
    }
}
