using System.Globalization;
using System.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Faults;

/// <summary>Words of a message.</summary>
internal static class Words
{
    private const int LongestQuote = 60;

    /// <summary>
    /// The user's text between quotation marks, safe on a terminal: control and invisible characters are spelled out, long text is cut.
    /// </summary>
    public static string Quote(string text)
    {
        var quoted = new StringBuilder("\"");
        var shown = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            if (shown++ == LongestQuote)
            {
                quoted.Append("...");
                break;
            }

            if (PlainNames.IsVisible(rune))
            {
                quoted.Append(rune.ToString());
            }
            else
            {
                quoted.Append(CultureInfo.InvariantCulture, $"[U+{rune.Value:X4}]");
            }
        }

        return quoted.Append('"').ToString();
    }

    /// <summary>"a, b and c".</summary>
    public static string List(IReadOnlyList<string> words, string joint = "and") =>
        words.Count switch
        {
            0 => "none",
            1 => words[0],
            _ => string.Join(", ", words.Take(words.Count - 1)) + $" {joint} " + words[^1],
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
