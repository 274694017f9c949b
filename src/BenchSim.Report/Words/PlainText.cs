using System.Globalization;
using System.Text;

namespace BenchSim.Report.Words;

/// <summary>Makes text from users safe to show: valid, on one line, reading in one direction, not too long.</summary>
internal static class PlainText
{
    /// <summary>Replaces halves of surrogate pairs, which no encoding can hold, by the replacement character.</summary>
    public static string Valid(string text)
    {
        var broken = false;
        foreach (var rune in text.EnumerateRunes())
        {
            broken |= rune == Rune.ReplacementChar;
        }

        if (!broken)
        {
            return text;
        }

        var builder = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            builder.Append(rune.ToString());
        }

        return builder.ToString();
    }

    /// <summary>
    /// Text on one line: line breaks and tabs become spaces, other control characters the replacement character, and the
    /// characters that turn the reading direction of what follows are dropped, for they could make one name pass for another.
    /// </summary>
    public static string OneLine(string text)
    {
        var builder = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (IsLineBreakOrTab(rune))
            {
                builder.Append(' ');
            }
            else if (IsDirectionMark(rune))
            {
                continue;
            }
            else if (Rune.IsControl(rune) || rune.Value is 0xFFFE or 0xFFFF)
            {
                builder.Append('\uFFFD');
            }
            else
            {
                builder.Append(rune.ToString());
            }
        }

        return builder.ToString();
    }

    /// <summary>One line of at most <paramref name="most"/> characters as a reader counts them, the rest shown as an ellipsis.</summary>
    public static string Short(string text, int most)
    {
        var line = OneLine(text).Trim();
        var elements = StringInfo.GetTextElementEnumerator(line);
        var count = 0;
        var cut = 0;
        while (elements.MoveNext())
        {
            count++;
            if (count == most)
            {
                cut = elements.ElementIndex;
            }

            if (count > most)
            {
                return line[..cut].TrimEnd() + "…";
            }
        }

        return line;
    }

    /// <summary>With a capital first letter.</summary>
    public static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>a, b and c.</summary>
    public static string List(IReadOnlyList<string> words) =>
        words.Count == 1 ? words[0] : $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}";

    /// <summary>A part of a file name: lower case letters a to z, digits and hyphens; "space" when nothing is left.</summary>
    public static string FilePart(string text)
    {
        var builder = new StringBuilder();
        foreach (var c in text.ToLowerInvariant())
        {
            if (c is (>= 'a' and <= 'z') or (>= '0' and <= '9'))
            {
                builder.Append(c);
            }
            else if (builder.Length > 0 && builder[^1] != '-')
            {
                builder.Append('-');
            }

            if (builder.Length == 30)
            {
                break;
            }
        }

        var part = builder.ToString().Trim('-');
        return part.Length == 0 ? "space" : part;
    }

    private static bool IsLineBreakOrTab(Rune rune) => rune.Value is '\n' or '\r' or '\t' or 0x0B or 0x0C or 0x85 or 0x2028 or 0x2029;

    private static bool IsDirectionMark(Rune rune) =>
        rune.Value is 0x061C or 0x200E or 0x200F or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) or 0xFEFF;
}
