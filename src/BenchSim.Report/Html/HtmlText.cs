using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using BenchSim.Report.Words;

namespace BenchSim.Report.Html;

/// <summary>
/// HTML being written. What stands in the source is taken as it is, what is filled in is escaped: so that no name from a user's file can
/// become part of the page by oversight.
/// </summary>
internal sealed class HtmlText
{
    private readonly StringBuilder _text = new();

    /// <summary>Adds a piece, escaping all that is filled in except <see cref="Markup"/>.</summary>
    [SuppressMessage("Performance", "CA1822:Mark members as static", Justification = "The piece writes into this text while it is built.")]
    public void Add([InterpolatedStringHandlerArgument("")] ref Piece piece) => _ = piece;

    /// <summary>Adds all of another text.</summary>
    public void Add(HtmlText other) => _text.Append(other._text);

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();

    /// <summary>A name from a user's file, set apart so that its direction of writing does not spill over.</summary>
    public static Markup Name(string text) => new($"<bdi>{Escape(text)}</bdi>");

    /// <summary>A name from a user's file shortened for a narrow cell; the whole of it shows on pointing.</summary>
    public static Markup Name(string text, int most)
    {
        var brief = PlainText.Short(text, most);
        return brief == text ? Name(text) : new($"<bdi title=\"{Escape(PlainText.Short(text, 400))}\">{Escape(brief)}</bdi>");
    }

    /// <summary>Escapes for text and for quoted attributes alike.</summary>
    public static string Escape(string text)
    {
        var line = PlainText.OneLine(text);
        return line.AsSpan().IndexOfAny("&<>\"'") < 0
            ? line
            : line.Replace("&", "&amp;", StringComparison.Ordinal)
                .Replace("<", "&lt;", StringComparison.Ordinal)
                .Replace(">", "&gt;", StringComparison.Ordinal)
                .Replace("\"", "&quot;", StringComparison.Ordinal)
                .Replace("'", "&#39;", StringComparison.Ordinal);
    }

    /// <summary>A piece of HTML with things filled in.</summary>
    [InterpolatedStringHandler]
    public readonly ref struct Piece
    {
        private readonly StringBuilder _text;

        public Piece(int literalLength, int formattedCount, HtmlText owner)
        {
            _text = owner._text;
            _text.EnsureCapacity(_text.Length + literalLength + (8 * formattedCount));
        }

        public void AppendLiteral(string text) => _text.Append(text);

        public void AppendFormatted(string? text) => _text.Append(Escape(text ?? ""));

        public void AppendFormatted(Markup markup) => _text.Append(markup.Html);

        public void AppendFormatted(int value) => _text.Append(value.ToString(CultureInfo.InvariantCulture));

        /// <summary>A coordinate: at most one decimal.</summary>
        public void AppendFormatted(double value)
        {
            var text = value.ToString("0.#", CultureInfo.InvariantCulture);
            _text.Append(text == "-0" ? "0" : text);
        }
    }
}
