using System.Collections.Immutable;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Results;

/// <summary>One figure of one owner over the seasons.</summary>
/// <param name="Figure">Which.</param>
/// <param name="Value">
/// What came of it: a <see cref="Chance"/>, a <see cref="DateSpread"/>, an <see cref="Estimate"/>; of rows an array of estimates, of days
/// an array of <see cref="DaySpread"/>, of choices an array of whole numbers of seasons.
/// </param>
public readonly record struct ToldFigure<TOwner>(Figure<TOwner> Figure, object Value);

/// <summary>What was counted of one owner: its figures, in the order of their list.</summary>
/// <typeparam name="TOwner">The kind of owner.</typeparam>
public abstract record Told<TOwner>
{
    /// <summary>All figures that the owner has.</summary>
    public ImmutableArray<ToldFigure<TOwner>> Figures { get; init; } = [];

    /// <summary>A chance.</summary>
    public Chance this[ChanceFigure<TOwner> figure]
    {
        get => Find<Chance>(figure);
        init => Figures = With(figure, value);
    }

    /// <summary>Seasons of each of a few choices.</summary>
    public ImmutableArray<int> this[ChoiceFigure<TOwner> figure]
    {
        get => Find<ImmutableArray<int>>(figure);
        init => Figures = With(figure, value);
    }

    /// <summary>A date.</summary>
    public DateSpread this[DateFigure<TOwner> figure]
    {
        get => Find<DateSpread>(figure);
        init => Figures = With(figure, value);
    }

    /// <summary>A quantity.</summary>
    public Estimate this[AmountFigure<TOwner> figure]
    {
        get => Find<Estimate>(figure);
        init => Figures = With(figure, value);
    }

    /// <summary>A row of quantities.</summary>
    public ImmutableArray<Estimate> this[RowFigure<TOwner> figure]
    {
        get => Find<ImmutableArray<Estimate>>(figure);
        init => Figures = With(figure, value);
    }

    /// <summary>Whole numbers by day or week.</summary>
    public ImmutableArray<DaySpread> this[DailyFigure<TOwner> figure]
    {
        get => Find<ImmutableArray<DaySpread>>(figure);
        init => Figures = With(figure, value);
    }

    /// <summary>Whether the owner has a figure.</summary>
    public bool Has(Figure<TOwner> figure) => IndexOf(figure) >= 0;

    private T Find<T>(Figure<TOwner> figure) =>
        IndexOf(figure) is >= 0 and var at ? (T)Figures[at].Value : throw new InvalidOperationException($"{figure} was not counted.");

    /// <summary>The figures with another value of one of them, or without it.</summary>
    private protected ImmutableArray<ToldFigure<TOwner>> With(Figure<TOwner> figure, object? value)
    {
        var others = Figures.RemoveAll(told => told.Figure == figure);
        return value is null ? others : others.Add(new ToldFigure<TOwner>(figure, value));
    }

    private int IndexOf(Figure<TOwner> figure)
    {
        for (var at = 0; at < Figures.Length; at++)
        {
            if (Figures[at].Figure == figure)
            {
                return at;
            }
        }

        return -1;
    }
}
