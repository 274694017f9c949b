using System.Globalization;
using System.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Faults;

/// <summary>Words of a message.</summary>
internal static class Words
{
    /// <summary>What is wrong with a place that one may not look into.</summary>
    public const string Closed = "you may not look into this folder, or into one above it";

    /// <summary>What is wrong with a file in such a place.</summary>
    public const string ClosedAround = "you may not look into the folder of this file, or into one above it";

    /// <summary>What would help there.</summary>
    public const string OpenIt = "ask its owner to let you read it, or work on a copy of your own";

    private const int LongestText = 60;

    /// <summary>The user's text between quotation marks, as <see cref="Shown"/>.</summary>
    public static string Quote(string text) => $"\"{Shown(text)}\"";

    /// <summary>The user's text, safe on a terminal: control and invisible characters are spelled out, long text is cut.</summary>
    public static string Shown(string text)
    {
        var shown = new StringBuilder();
        var runes = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            if (runes++ == LongestText)
            {
                shown.Append("...");
                break;
            }

            if (PlainNames.IsVisible(rune))
            {
                shown.Append(rune.ToString());
            }
            else
            {
                shown.Append(CultureInfo.InvariantCulture, $"[U+{rune.Value:X4}]");
            }
        }

        return shown.ToString();
    }

    /// <summary>"a, b and c", each as <see cref="Shown"/>.</summary>
    public static string List(IReadOnlyList<string> words, string joint = "and") =>
        words.Count switch
        {
            0 => "none",
            1 => Shown(words[0]),
            _ => string.Join(", ", words.Take(words.Count - 1).Select(Shown)) + $" {joint} " + Shown(words[^1]),
        };

    /// <summary>ISO date.</summary>
    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A number as a person would write it, at most four decimals.</summary>
    public static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A temperature in the units of the site.</summary>
    public static string Temperature(double celsius, UnitSystem units) =>
        units == UnitSystem.Imperial ? UnitWords.Temperature(celsius, units) : $"{Number(celsius)} C";

    public static bool HasControlCharacter(string text) => PlainNames.HasHiddenCharacter(text);
}
