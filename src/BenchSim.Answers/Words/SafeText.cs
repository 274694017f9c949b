using System.Globalization;
using System.Text;

namespace BenchSim.Answers.Words;

/// <summary>
/// Makes text from users safe on a terminal: it cannot move the cursor, change colours, turn the reading direction or hide itself.
/// </summary>
public static class SafeText
{
    private const int ZeroWidthNonJoiner = 0x200C;
    private const int ZeroWidthJoiner = 0x200D;

    /// <summary>
    /// The text on one line. Line breaks and tabs become spaces; other control characters, and characters that are invisible or turn the
    /// reading direction, become the replacement character, so that a reader sees that something stood there. The two joiners that some
    /// scripts need stay.
    /// </summary>
    public static string OneLine(string text)
    {
        if (IsPlain(text))
        {
            return text;
        }

        var safe = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (IsLineBreakOrTab(rune))
            {
                safe.Append(' ');
            }
            else
            {
                safe.Append((IsVisible(rune) ? rune : Rune.ReplacementChar).ToString());
            }
        }

        return safe.ToString();
    }

    /// <summary>
    /// One line of at most <paramref name="most"/> characters as a reader counts them; what is left out shows as an ellipsis.
    /// </summary>
    public static string Short(string text, int most)
    {
        var line = OneLine(text).Trim();
        var starts = StringInfo.ParseCombiningCharacters(line);
        return starts.Length <= most ? line : line[..starts[most - 1]].TrimEnd() + "…";
    }

    /// <summary>The text between quotation marks, on one line and not too long for a sentence.</summary>
    public static string Quote(string text) => $"\"{Short(text, 60)}\"";

    private static bool IsPlain(string text)
    {
        foreach (var c in text)
        {
            if (c is < ' ' or > '~')
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsLineBreakOrTab(Rune rune) => rune.Value is '\n' or '\r' or '\t' or 0x0B or 0x0C or 0x85 or 0x2028 or 0x2029;

    private static bool IsVisible(Rune rune) =>
        rune.Value is ZeroWidthNonJoiner or ZeroWidthJoiner
        || Rune.GetUnicodeCategory(rune)
            is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse);
}
