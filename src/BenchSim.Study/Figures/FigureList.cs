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

    internal ChanceFigure<TOwner> Chance(string id, string name, Func<TOwner, bool> happens) =>
        Joined(new ChanceFigure<TOwner>(id, name, happens));

    internal DateFigure<TOwner> Date(string id, string name, Func<TOwner, int> day) => Joined(new DateFigure<TOwner>(id, name, day));

    internal AmountFigure<TOwner> Amount(string id, string name, string unit, Func<TOwner, long> amount) =>
        Joined(new AmountFigure<TOwner>(id, name, unit, amount));

    internal AmountFigure<TOwner> Wide(string id, string name, string unit, Func<TOwner, long> amount) =>
        Joined(new AmountFigure<TOwner>(id, name, unit, amount) { IsWide = true });

    internal DailyFigure<TOwner> Daily(string id, string name, string unit, Func<TOwner, int> count, Func<TOwner, int[]> days) =>
        Joined(new DailyFigure<TOwner>(id, name, unit, count, days));

    internal TFigure Joined<TFigure>(TFigure figure)
        where TFigure : Figure<TOwner>
    {
        _figures.Add(figure);
        return figure;
    }
}
