using System.Globalization;
using System.Text;

namespace BenchSim.Report.Words;

/// <summary>
/// Puts right-to-left letters in the order they are seen in, for a page that sets letters from left to right. A small part of what Unicode
/// Standard Annex 9 asks: a run from its first right-to-left letter to its last, or to the number behind it, is turned round, the numbers
/// in it kept as they are.
/// </summary>
internal static class RightToLeftRuns
{
    /// <summary>The text in the order seen.</summary>
    public static string AsSeen(string text)
    {
        if (!text.EnumerateRunes().Any(IsRightToLeft))
        {
            return text;
        }

        var elements = Elements(text);
        var builder = new StringBuilder(text.Length);
        var at = 0;
        while (at < elements.Length)
        {
            if (!StartsRightToLeft(elements[at]))
            {
                builder.Append(elements[at++]);
                continue;
            }

            var end = EndOfRun(elements, at);
            AppendTurned(builder, elements.AsSpan(at, end - at));
            at = end;
        }

        return builder.ToString();
    }

    // Up to the last right-to-left letter or digit before the next left-to-right letter.
    private static int EndOfRun(string[] elements, int from)
    {
        var end = from + 1;
        for (var at = from + 1; at < elements.Length && !char.IsAsciiLetter(elements[at][0]); at++)
        {
            if (StartsRightToLeft(elements[at]) || char.IsDigit(elements[at][0]))
            {
                end = at + 1;
            }
        }

        return end;
    }

    private static void AppendTurned(StringBuilder builder, ReadOnlySpan<string> run)
    {
        var at = run.Length - 1;
        while (at >= 0)
        {
            var first = at;
            while (char.IsDigit(run[at][0]) && first > 0 && char.IsDigit(run[first - 1][0]))
            {
                first--;
            }

            for (var place = first; place <= at; place++)
            {
                builder.Append(run[place]);
            }

            at = first - 1;
        }
    }

    private static string[] Elements(string text)
    {
        var elements = new List<string>();
        var each = StringInfo.GetTextElementEnumerator(text);
        while (each.MoveNext())
        {
            elements.Add(each.GetTextElement());
        }

        return [.. elements];
    }

    private static bool StartsRightToLeft(string element) => Rune.GetRuneAt(element, 0) is var rune && IsRightToLeft(rune);

    // Hebrew, Arabic, Syriac, Thaana, N'Ko and their presentation forms.
    private static bool IsRightToLeft(Rune rune) =>
        rune.Value is (>= 0x0590 and <= 0x07FF and not (>= 0x0660 and <= 0x0669)) or (>= 0xFB1D and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFC);
}
