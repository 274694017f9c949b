using System.Globalization;
using System.Text;

namespace BenchSim.Report.Words;

/// <summary>
/// Makes text from users safe to show on a page, on paper and on a terminal: valid, on one line, not too long; it cannot move the cursor,
/// change colours, turn the reading direction or hide itself.
/// </summary>
public static class PlainText
{
    private const int ZeroWidthNonJoiner = 0x200C;
    private const int ZeroWidthJoiner = 0x200D;

    /// <summary>Replaces halves of surrogate pairs, which no encoding can hold, by the replacement character.</summary>
    /// <param name="text">Any text.</param>
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
    /// The text on one line. Line breaks and tabs become spaces; other control characters, and characters that are invisible or turn the
    /// reading direction, become the replacement character, so that a reader sees that something stood there and one name cannot pass for
    /// another. The two joiners that some scripts need stay.
    /// </summary>
    /// <param name="text">Any text.</param>
    public static string OneLine(string text)
    {
        if (!text.AsSpan().ContainsAnyExceptInRange(' ', '~'))
        {
            return text;
        }

        var safe = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            safe.Append(
                IsLineBreakOrTab(rune) ? " "
                : IsVisible(rune) ? rune.ToString()
                : "\uFFFD"
            );
        }

        return safe.ToString();
    }

    /// <summary>One line of so many characters as a reader counts them; what is left out shows as an ellipsis.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="most">Most characters, 1 or more.</param>
    public static string Short(string text, int most)
    {
        var line = OneLine(text).Trim();
        var starts = StringInfo.ParseCombiningCharacters(line);
        return starts.Length <= most ? line : line[..starts[most - 1]].TrimEnd() + "…";
    }

    /// <summary>The text between quotation marks, on one line and not too long for a sentence.</summary>
    /// <param name="text">Any text.</param>
    public static string Quote(string text) => $"\"{Short(text, 60)}\"";

    /// <summary>With a capital first letter.</summary>
    /// <param name="words">One letter or more.</param>
    public static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>a, b and c; "none" for nothing.</summary>
    /// <param name="words">The words.</param>
    public static string List(IReadOnlyList<string> words) =>
        words.Count switch
        {
            0 => "none",
            1 => words[0],
            _ => $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}",
        };

    /// <summary>A part of a file name: lower case letters a to z, digits and hyphens.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="otherwise">The part when nothing is left.</param>
    public static string FilePart(string text, string otherwise)
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
        return part.Length == 0 ? otherwise : part;
    }

    private static bool IsLineBreakOrTab(Rune rune) => rune.Value is '\n' or '\r' or '\t' or 0x0B or 0x0C or 0x85 or 0x2028 or 0x2029;

    // The last two are no characters, and XML may not hold them.
    private static bool IsVisible(Rune rune) =>
        rune.Value is ZeroWidthNonJoiner or ZeroWidthJoiner
        || (
            Rune.GetUnicodeCategory(rune)
                is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse)
            && rune.Value is not (0xFFFE or 0xFFFF)
        );
}
