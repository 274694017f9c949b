using System.Collections;
using System.Collections.Immutable;

namespace BenchSim.Answers.Words;

/// <summary>A piece of what an answer says. It says nothing of widths, colours or how it is set.</summary>
public abstract record Passage;

/// <summary>A heading over what follows.</summary>
/// <param name="Text">Its words.</param>
public sealed record Heading(string Text) : Passage;

/// <summary>A sentence or more, broken into lines as the place needs.</summary>
/// <param name="Text">Its words.</param>
/// <param name="Depth">How deep it stands under what is above it: 0 for not at all, in steps of 2.</param>
public sealed record Sentence(string Text, int Depth) : Passage;

/// <summary>A line that stays in one piece.</summary>
/// <param name="Text">Its words.</param>
/// <param name="Depth">How deep it stands under what is above it: 0 for not at all, in steps of 2.</param>
public sealed record Line(string Text, int Depth) : Passage;

/// <summary>One of several points.</summary>
/// <param name="Text">Its words.</param>
/// <param name="IsSure">True for one that stands out: a finding rather than a remark.</param>
public sealed record Point(string Text, bool IsSure) : Passage;

/// <summary>Something to know before relying on the rest.</summary>
/// <param name="Text">Its words.</param>
public sealed record Warning(string Text) : Passage;

/// <summary>Some room between what is above and what is below.</summary>
public sealed record Gap : Passage;

/// <summary>A table.</summary>
/// <param name="Columns">Headings; one that begins with "&gt;" stands over numbers.</param>
/// <param name="LongestCell">Longest text of a cell in characters; what is longer is cut.</param>
public sealed record Table(ImmutableArray<string> Columns, int LongestCell) : Passage
{
    private readonly List<ImmutableArray<string>> _rows = [];

    /// <summary>The rows, a cell a column.</summary>
    public IReadOnlyList<ImmutableArray<string>> Rows => _rows;

    internal void Add(params ReadOnlySpan<string> cells) => _rows.Add([.. cells]);
}

/// <summary>What an answer says: passages in order.</summary>
public sealed class Passages : IReadOnlyList<Passage>
{
    private const int LongestCell = 40;

    private readonly List<Passage> _passages = [];

    /// <inheritdoc />
    public int Count => _passages.Count;

    /// <inheritdoc />
    public Passage this[int index] => _passages[index];

    /// <inheritdoc />
    public IEnumerator<Passage> GetEnumerator() => _passages.GetEnumerator();

    /// <inheritdoc />
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    internal void Heading(string text) => _passages.Add(new Heading(text));

    internal void Sentence(string text, int depth = 0) => _passages.Add(new Sentence(text, depth));

    internal void Line(string text, int depth = 0) => _passages.Add(new Line(text, depth));

    internal void Point(string text, bool isSure = false) => _passages.Add(new Point(text, isSure));

    internal void Gap() => _passages.Add(new Gap());

    /// <summary>A table, to be filled.</summary>
    internal Table Table(IEnumerable<string> columns, int longestCell = LongestCell)
    {
        var table = new Table([.. columns], longestCell);
        _passages.Add(table);
        return table;
    }
}
