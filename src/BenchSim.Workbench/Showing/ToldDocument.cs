using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;

namespace BenchSim.Workbench.Showing;

/// <summary>A column of a table, and whether numbers stand in it.</summary>
internal sealed record ToldColumn(string Name, bool IsNumbers);

/// <summary>A table of an answer.</summary>
internal sealed record ToldTable(ImmutableArray<ToldColumn> Columns, ImmutableArray<ImmutableArray<string>> Rows)
{
    /// <summary>That of an answer; null for none.</summary>
    public static ToldTable? Of(Table? table) =>
        table is null
            ? null
            : new ToldTable(
                [.. table.Columns.Select(column => new ToldColumn(column.TrimStart('>'), column.StartsWith('>')))],
                [.. table.Rows.Select(row => row.Select(cell => PlainText.Short(cell, table.LongestCell)).ToImmutableArray())]
            );
}

/// <summary>A passage of an answer: of a kind (Answers/Words/Passages.cs), in words or as a table.</summary>
internal sealed record ToldPassage(string Kind, string Text, ToldTable? Table)
{
    /// <summary>That of an answer; null for room alone.</summary>
    public static ToldPassage? Of(Passage passage) =>
        passage switch
        {
            Heading heading => new ToldPassage("heading", heading.Text, null),
            Sentence sentence => new ToldPassage("sentence", sentence.Text, null),
            Line line => new ToldPassage("sentence", line.Text, null),
            Point point => new ToldPassage("point", point.Text, null),
            Warning warning => new ToldPassage("warning", warning.Text, null),
            Table table => new ToldPassage("table", "", ToldTable.Of(table)),
            _ => null,
        };
}

/// <summary>An answer as the terminal has it: what is read first, and all of it; or why there is none.</summary>
/// <param name="Note">Why there is none; null where there is.</param>
/// <param name="Headline">The answer itself.</param>
/// <param name="Facts">The facts that decide.</param>
/// <param name="Warnings">What to know before relying on it.</param>
/// <param name="Table">The table; null for none.</param>
/// <param name="Footnote">What belongs under it; null for nothing.</param>
/// <param name="All">The whole answer.</param>
internal sealed record ToldDocument(
    string? Note,
    string Headline,
    ImmutableArray<string> Facts,
    ImmutableArray<string> Warnings,
    ToldTable? Table,
    string? Footnote,
    ImmutableArray<ToldPassage> All
)
{
    /// <summary>What crops.csv would gain; null for an answer that teaches nothing of crops.</summary>
    public TaughtDocument? Taught { get; init; }

    /// <summary>There is no answer.</summary>
    /// <param name="note">Why.</param>
    public static ToldDocument Nothing(string note) => new(note, "", [], [], null, null, []);

    /// <summary>An answer.</summary>
    public static ToldDocument Of(Answer answer)
    {
        var front = answer.Front!;
        return new ToldDocument(
            null,
            front.Headline,
            front.Facts,
            front.Warnings,
            ToldTable.Of(front.Table),
            front.Footnote,
            [.. answer.Words.Select(ToldPassage.Of).OfType<ToldPassage>()]
        );
    }
}
