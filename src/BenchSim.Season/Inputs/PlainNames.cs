using System.Buffers;
using System.Globalization;
using System.Text;

namespace BenchSim.Season.Inputs;

/// <summary>
/// Names of files of a scenario folder that every system can store, so that a report can keep the files it was made from.
/// </summary>
public static class PlainNames
{
    private static readonly SearchValues<char> s_forbidden = SearchValues.Create("\\:*?\"<>|");

    /// <summary>
    /// Whether a name is relative, stays inside the folder, and can be stored anywhere: parts with "/" between them, none of them empty,
    /// ending in a dot, or with blanks at an end; no character that cannot be seen and none of \ : * ? " &lt; &gt; |.
    /// </summary>
    /// <param name="name">Name of a file, relative to the folder.</param>
    public static bool IsPlain(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.AsSpan().IndexOfAny(s_forbidden) < 0
            && !HasHiddenCharacter(name)
            && Array.TrueForAll(name.Split('/'), part => part.Length > 0 && part.Trim().Length == part.Length && !part.EndsWith('.'));
    }

    /// <summary>Whether a text holds a character that cannot be seen, or that turns what is around it.</summary>
    /// <param name="text">Any text.</param>
    public static bool HasHiddenCharacter(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.EnumerateRunes().Any(rune => !IsVisible(rune));
    }

    /// <summary>Whether a character can be seen and leaves what is around it as it is.</summary>
    /// <param name="rune">A character.</param>
    public static bool IsVisible(Rune rune) =>
        Rune.GetUnicodeCategory(rune)
            is not (
                UnicodeCategory.Control
                or UnicodeCategory.Format
                or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator
                or UnicodeCategory.Surrogate
                or UnicodeCategory.PrivateUse
                or UnicodeCategory.OtherNotAssigned
            );
}
