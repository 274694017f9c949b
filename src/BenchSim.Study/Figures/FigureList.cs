using System.Collections;

namespace BenchSim.Study.Figures;

/// <summary>The figures of one kind of owner, in the order in which they are told. Each is described where it joins the list.</summary>
/// <typeparam name="TOwner">Whose they are.</typeparam>
public sealed class FigureList<TOwner> : IReadOnlyList<Figure<TOwner>>
{
    private readonly List<Figure<TOwner>> _figures = [];

    internal FigureList() { }

    /// <inheritdoc/>
    public int Count => _figures.Count;

    /// <inheritdoc/>
    public Figure<TOwner> this[int index] => _figures[index];

    /// <inheritdoc/>
    public IEnumerator<Figure<TOwner>> GetEnumerator() => _figures.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    internal ChanceFigure<TOwner> Chance(string id, string name, Func<TOwner, bool> happens, string? meaning = null) =>
        Joined(new ChanceFigure<TOwner>(id, name, happens) { Meaning = meaning });

    internal DateFigure<TOwner> Date(string id, string name, Func<TOwner, int> day, string? meaning = null) =>
        Joined(new DateFigure<TOwner>(id, name, day) { Meaning = meaning });

    internal AmountFigure<TOwner> Amount(string id, string name, string unit, Func<TOwner, long> amount, string? meaning = null) =>
        Joined(new AmountFigure<TOwner>(id, name, unit, amount) { Meaning = meaning });

    internal AmountFigure<TOwner> Wide(string id, string name, string unit, Func<TOwner, long> amount, string? meaning = null) =>
        Joined(new AmountFigure<TOwner>(id, name, unit, amount) { IsWide = true, Meaning = meaning! });

    internal DailyFigure<TOwner> Daily(
        string id,
        string name,
        string unit,
        Func<TOwner, int> count,
        Func<TOwner, int[]> days,
        string? meaning = null
    ) => Joined(new DailyFigure<TOwner>(id, name, unit, count, days) { Meaning = meaning });

    internal TFigure Joined<TFigure>(TFigure figure)
        where TFigure : Figure<TOwner>
    {
        _figures.Add(figure);
        return figure;
    }
}
