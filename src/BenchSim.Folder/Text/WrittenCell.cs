using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Text;

/// <summary>A cell, or the single value of a key, asked for by the kinds of the fields.</summary>
internal class WrittenCell(CellReader cells) : IWritten
{
    private readonly Cell _cell;

    /// <summary>A cell that has been looked up.</summary>
    public WrittenCell(CellReader cells, Cell cell)
        : this(cells) => _cell = cell;

    public string Text => Cell.Text;

    public string Quoted => Faults.Words.Quote(Cell.Text);

    public UnitSystem Units => Cell.Units;

    /// <summary>The cell.</summary>
    protected virtual Cell Cell => _cell;

    public virtual void Refuse(string what, string instead) => cells.Refuse(Cell, what, instead);

    public string? Name() => cells.Name(Cell);

    public int? Whole(int least, int most) => cells.Whole(Cell, least, most);

    public double? Number(double least, double most) => cells.Number(Cell, least, most);

    public double? Money(double least, double most) => cells.Money(Cell, least, most);

    public double? Measured(Quantity quantity, double least, double most) => cells.Measured(Cell, quantity, least, most);

    public double? Share(bool aboveNone, bool belowAll) => cells.Fraction(Cell, aboveNone, belowAll);

    public DateOnly? Date() => cells.Date(Cell);

    public TimeOnly? Time() => cells.Time(Cell);

    public bool TryChoose<T>(ImmutableArray<(string Word, T Value)> words, string choices, out T value) =>
        cells.TryChoose(Cell, words, choices, out value);

    public IWritten With(string text) => new WrittenCell(cells, Cell with { Text = text });

    // A column of several values has a separator of its own.
    public virtual IReadOnlyList<IWritten>? Items(string? form = null, string? instead = null) =>
        throw new InvalidOperationException($"{Cell.Name} is a single value");
}
