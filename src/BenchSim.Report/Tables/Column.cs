using System.Collections.Immutable;

namespace BenchSim.Report.Tables;

/// <summary>
/// A column of a table, or a family of columns that begin alike. Each is described where its table is written, and nowhere else.
/// </summary>
/// <param name="Name">Name; of a family what its names begin with.</param>
/// <param name="Unit">Unit, or what kind of value stands in it.</param>
/// <param name="Meaning">What it is.</param>
internal sealed record Column(string Name, string Unit, string Meaning)
{
    /// <summary>How the names of a family end; empty for one column.</summary>
    public ImmutableArray<ColumnEnding> Endings { get; init; } = [];

    /// <summary>Whether the family has a column a space.</summary>
    public bool IsBySpace { get; init; }

    /// <summary>The columns one by one.</summary>
    public IEnumerable<Column> Each =>
        Endings.IsEmpty
            ? [this]
            : Endings.Select(ending => new Column($"{Name}_{ending.Name}", ending.Unit ?? Unit, $"{Meaning}: {ending.Meaning}"));
}

/// <summary>How the name of one column of a family ends.</summary>
/// <param name="Name">The ending.</param>
/// <param name="Meaning">What it is of what the family is.</param>
/// <param name="Unit">Its unit; null for that of the family.</param>
internal sealed record ColumnEnding(string Name, string Meaning, string? Unit = null);
