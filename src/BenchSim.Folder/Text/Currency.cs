using System.Globalization;

namespace BenchSim.Folder.Text;

/// <summary>The sign of a currency beside an amount, such as $ or EUR.</summary>
internal static class Currency
{
    // Codes of ISO 4217 have three letters.
    private const int CodeLength = 3;

    /// <summary>An amount without the currency before or behind it.</summary>
    public static string TakenOff(string text)
    {
        var behind = text.Length - text.AsSpan().TrimEndOfCurrency().Length;
        return behind > 0 ? text[..^behind].Trim() : text[LengthBefore(text)..].Trim();
    }

    private static ReadOnlySpan<char> TrimEndOfCurrency(this ReadOnlySpan<char> text) =>
        text is [.., var last] && char.GetUnicodeCategory(last) == UnicodeCategory.CurrencySymbol ? text[..^1]
        : text.Length > CodeLength && IsCode(text[^CodeLength..]) && !char.IsLetter(text[^(CodeLength + 1)]) ? text[..^CodeLength]
        : text;

    private static int LengthBefore(ReadOnlySpan<char> text) =>
        text is [var first, ..] && char.GetUnicodeCategory(first) == UnicodeCategory.CurrencySymbol ? 1
        : text.Length > CodeLength && IsCode(text[..CodeLength]) && !char.IsLetter(text[CodeLength]) ? CodeLength
        : 0;

    private static bool IsCode(ReadOnlySpan<char> letters) => letters.IndexOfAnyExceptInRange('A', 'Z') < 0;
}
