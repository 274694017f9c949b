using System.Buffers;

namespace BenchSim.Folder.Text;

/// <summary>Quotation marks as word processors and some spreadsheets set them.</summary>
internal static class Curly
{
    private const string Opening = "\u201C\u201E\u201D\u00AB\u2018\u201A";

    /// <summary>What closes one.</summary>
    public static SearchValues<char> Closing { get; } = SearchValues.Create("\u201C\u201D\u00BB\u2019");

    /// <summary>Whether a character opens one.</summary>
    public static bool IsOpening(char character) => Opening.Contains(character);

    /// <summary>A text without a pair of them around it.</summary>
    public static string Unwrapped(string text) =>
        text.Length > 2 && IsOpening(text[0]) && Closing.Contains(text[^1]) && text.AsSpan(1, text.Length - 2).IndexOfAny(Closing) < 0
            ? text[1..^1].Trim()
            : text;
}
