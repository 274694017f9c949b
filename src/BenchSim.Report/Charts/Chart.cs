using System.Collections.Immutable;

namespace BenchSim.Report.Charts;

/// <summary>
/// A chart worked out once: what stands on it, in which order and in which words, in the units of its axes. Painters lay it out on a page,
/// a picture or a sheet of paper, each with axes of its own.
/// </summary>
internal sealed record Chart
{
    /// <summary>Words above it where it stands by itself; empty for none.</summary>
    public required string Title { get; init; }

    /// <summary>What it shows, in words for those who hear it read.</summary>
    public required string Label { get; init; }

    /// <summary>The table with its figures, in the folder that it is written to.</summary>
    public required string Table { get; init; }

    /// <summary>The axis below.</summary>
    public required ChartAxis Across { get; init; }

    /// <summary>The axis at the left; null where rows stand one below the other.</summary>
    public ChartAxis? Up { get; init; }

    /// <summary>The rows, in groups; none where there is an axis at the left.</summary>
    public ImmutableArray<RowGroup> Groups { get; init; } = [];

    /// <summary>Bars that stand one below the other in a row.</summary>
    public int Lanes { get; init; } = 1;

    /// <summary>What is drawn over the whole of it, after the marks of the rows and in this order.</summary>
    public ImmutableArray<Mark> Marks { get; init; } = [];

    /// <summary>What the looks of the marks mean.</summary>
    public required ImmutableArray<KeyEntry> Key { get; init; }

    /// <summary>The rows of all groups.</summary>
    public IEnumerable<ChartRow> Rows => Groups.SelectMany(group => group.Rows);
}

/// <summary>Rows that belong together.</summary>
/// <param name="Heading">Words above them; null for none.</param>
/// <param name="Rows">The rows, the uppermost first.</param>
internal sealed record RowGroup(string? Heading, ImmutableArray<ChartRow> Rows);

/// <summary>A row of a chart.</summary>
/// <param name="Label">Its name at the left.</param>
internal sealed record ChartRow(string Label)
{
    /// <summary>A second, fainter name; with one, a painter may shorten both to the room it has. Null for none.</summary>
    public string? Detail { get; init; }

    /// <summary>The row in words, for those who point at it or hear it read; null for none.</summary>
    public string? Told { get; init; }

    /// <summary>What stands in it, in the order of drawing.</summary>
    public ImmutableArray<Mark> Marks { get; init; } = [];

    /// <summary>Figures drawn last of all and on the ground of the paper, so that no line runs through them.</summary>
    public ImmutableArray<FigureMark> Figures { get; init; } = [];
}

/// <summary>What a look means.</summary>
/// <param name="Look">The look.</param>
/// <param name="Words">Its meaning, as a picture has it.</param>
internal sealed record KeyEntry(Look Look, string Words)
{
    /// <summary>Its meaning on the page, where there is room for a whole phrase.</summary>
    public string OnPage { get; init; } = Words;

    /// <summary>Its meaning on paper, where a key takes one line.</summary>
    public string OnPaper { get; init; } = Words;
}
