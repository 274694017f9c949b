using System.Globalization;
using System.Text.RegularExpressions;
using BenchSim.Season.Fields;

namespace BenchSim.Folder.Editing;

/// <summary>Writes what somebody typed into a field as a value of TOML.</summary>
public static partial class TomlWriting
{
    /// <summary>The value as it is written: numbers and dates bare, lists between brackets, all else between quotation marks.</summary>
    /// <param name="kind">What the key holds.</param>
    /// <param name="typed">What was typed.</param>
    public static string Of(Kind kind, string typed)
    {
        // A list may be typed as it is written: tables in it, such as later numbers of places, can be typed in no other way.
        var isBracketed = (kind.IsList || kind is MonthsKind) && typed.StartsWith('[') && typed.EndsWith(']');
        if (isBracketed && TomlEdit.IsValue(typed))
        {
            return typed;
        }

        if (kind.IsList || isBracketed || (kind is MonthsKind && typed.Contains(',', StringComparison.Ordinal)))
        {
            var items = (isBracketed ? typed[1..^1] : typed).Split(
                ',',
                StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries
            );
            return $"[{string.Join(", ", items.Select(One))}]";
        }

        return kind is TextKind ? Quoted(typed) : One(typed);
    }

    private static string One(string text) => IsNumber(text) || Date().IsMatch(text) ? text : Quoted(text);

    private static bool IsNumber(string text) =>
        Number().IsMatch(text) && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    private static string Quoted(string text) => TomlEdit.Quoted(string.Concat(text.Select(each => char.IsControl(each) ? ' ' : each)));

    [GeneratedRegex(@"^-?(0|[1-9][0-9]*)(\.[0-9]+)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();

    [GeneratedRegex(@"^[0-9]{4}-[0-9]{2}-[0-9]{2}$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Date();
}
