using System.Collections.Immutable;
using BenchSim.Study.Figures;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>What telling a figure takes besides its counts.</summary>
/// <param name="FirstDay">Date of day 0.</param>
/// <param name="Seasons">Seasons counted, one or more.</param>
internal sealed record Telling(DateOnly FirstDay, int Seasons)
{
    /// <summary>Student factors.</summary>
    public StudentFactors Student { get; } = new();

    /// <summary>Filled with the counts of one cell after another.</summary>
    public Seen Seen { get; } = new();
}

/// <summary>
/// Counts one figure over all its owners. All of it is whole numbers, so threads add up in any order
/// (docs/decisions/004-exact-counting.md).
/// </summary>
/// <typeparam name="TOwner">Whose it is.</typeparam>
internal abstract class FigureCounts<TOwner>
{
    // The first cell of each owner, and the end.
    private readonly int[] _first;
    private readonly int _most;

    private protected FigureCounts(Figure<TOwner> figure, TOwner[] owners, int days)
    {
        (Figure, Owners) = (figure, owners);
        _first = new int[owners.Length + 1];
        for (var at = 0; at < owners.Length; at++)
        {
            _first[at + 1] = _first[at] + CellsOf(figure, owners[at]);
        }

        _most = figure switch
        {
            ChanceFigure<TOwner> => 1,
            ChoiceFigure<TOwner> choice => choice.Choices,
            DateFigure<TOwner> or AmountFigure<TOwner> { IsOfSome: true } => days + 1,
            _ => int.MaxValue,
        };
        if (figure.IsWide)
        {
            Wide = new WideCounts(_first[^1]);
        }
        else
        {
            Exact = new ExactCounts(_first[^1]);
        }
    }

    /// <summary>The figure.</summary>
    public Figure<TOwner> Figure { get; }

    private protected TOwner[] Owners { get; }

    private protected ExactCounts Exact { get; } = new(0);

    private protected WideCounts Wide { get; } = new(0);

    /// <summary>Empty counts of a figure.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="owners">Its owners.</param>
    /// <param name="days">Days played.</param>
    public static FigureCounts<TOwner> Of(Figure<TOwner> figure, TOwner[] owners, int days) =>
        figure switch
        {
            ChanceFigure<TOwner> chance => new ChanceCounts<TOwner>(chance, owners, days),
            ChoiceFigure<TOwner> choice => new ChoiceCounts<TOwner>(choice, owners, days),
            DateFigure<TOwner> date => new DateCounts<TOwner>(date, owners, days),
            AmountFigure<TOwner> amount => new AmountCounts<TOwner>(amount, owners, days),
            RowFigure<TOwner> row => new RowCounts<TOwner>(row, owners, days),
            DailyFigure<TOwner> daily => new DailyCounts<TOwner>(daily, owners, days),
            _ => throw new InvalidOperationException("An unknown kind of figure."),
        };

    /// <summary>Counts one season, which the owners have read.</summary>
    public abstract void Add();

    /// <summary>Adds another thread's counts of the same figure.</summary>
    public void Merge(FigureCounts<TOwner> other)
    {
        Exact.Merge(other.Exact);
        Wide.Merge(other.Wide);
    }

    /// <summary>Names the counts.</summary>
    public void Exchange(ITallyExchange exchange)
    {
        exchange.Numbers(Exact, _most);
        exchange.Numbers(Wide);
    }

    /// <summary>What was counted of one owner, in the type that its kind of figure is told in; null where it has none.</summary>
    /// <param name="at">Position of the owner.</param>
    /// <param name="telling">The rest.</param>
    public object? Tell(int at, Telling telling)
    {
        var owner = Owners[at];
        if (Figure.IsTold?.Invoke(owner) == false)
        {
            return null;
        }

        var parts = Figure.Parts?.Invoke(owner) ?? 1;
        return Figure switch
        {
            ChanceFigure<TOwner> => Chances.Of(Read(_first[at], telling).Seasons, telling.Seasons),
            ChoiceFigure<TOwner> choice => Choices(Read(_first[at], telling), choice.Choices),
            DateFigure<TOwner> => ReadSome(_first[at], telling).ToDates(telling.FirstDay, telling.Seasons),
            AmountFigure<TOwner> { IsOfSome: true } => ReadSome(_first[at], telling).ToEstimate(telling.Student, parts),
            AmountFigure<TOwner> => ReadEvery(_first[at], telling).ToEstimate(telling.Student, parts),
            RowFigure<TOwner> => Cells(at, cell => ReadEvery(cell, telling).ToEstimate(telling.Student, parts)),
            _ => Cells(at, cell => ReadEvery(cell, telling).ToSpread()),
        };
    }

    /// <summary>Sums over all seasons of one owner's numbers, in whole numbers as they were counted.</summary>
    public double[] Sums(int at, Telling telling) => [.. Cells(at, cell => (double)Read(cell, telling).Moments().Sum)];

    private static int CellsOf(Figure<TOwner> figure, TOwner owner) =>
        figure switch
        {
            RowFigure<TOwner> row => row.Count(owner),
            DailyFigure<TOwner> daily => daily.Count(owner),
            _ => 1,
        };

    private static ImmutableArray<int> Choices(Seen seen, int choices)
    {
        var seasons = new int[choices];
        foreach ((var choice, var had) in seen.Values)
        {
            seasons[choice - 1] = had;
        }

        return ImmutableArray.Create(seasons);
    }

    private ImmutableArray<T> Cells<T>(int at, Func<int, T> tell) =>
        [.. Enumerable.Range(_first[at], _first[at + 1] - _first[at]).Select(tell)];

    private Seen Read(int cell, Telling telling)
    {
        if (Figure.IsWide)
        {
            Wide.Read(cell, telling.Seen);
        }
        else
        {
            Exact.Read(cell, telling.Seen);
        }

        return telling.Seen;
    }

    private Seen ReadEvery(int cell, Telling telling)
    {
        Read(cell, telling).AddZeros(telling.Seasons);
        return telling.Seen;
    }

    private Seen ReadSome(int cell, Telling telling)
    {
        Read(cell, telling).TakeOne();
        return telling.Seen;
    }
}

/// <summary>Counts 1 where it happens.</summary>
internal sealed class ChanceCounts<TOwner>(ChanceFigure<TOwner> figure, TOwner[] owners, int days)
    : FigureCounts<TOwner>(figure, owners, days)
{
    private readonly Func<TOwner, bool> _happens = figure.Happens;

    public override void Add()
    {
        for (var at = 0; at < Owners.Length; at++)
        {
            Exact.Add(at, _happens(Owners[at]) ? 1 : 0);
        }
    }
}

/// <summary>Counts the number of the choice and 1, so that none is 0.</summary>
internal sealed class ChoiceCounts<TOwner>(ChoiceFigure<TOwner> figure, TOwner[] owners, int days)
    : FigureCounts<TOwner>(figure, owners, days)
{
    public override void Add()
    {
        for (var at = 0; at < Owners.Length; at++)
        {
            Exact.Add(at, figure.Which(Owners[at]) + 1);
        }
    }
}

/// <summary>Counts the day and 1, so that never is 0.</summary>
internal sealed class DateCounts<TOwner>(DateFigure<TOwner> figure, TOwner[] owners, int days) : FigureCounts<TOwner>(figure, owners, days)
{
    private readonly Func<TOwner, int> _day = figure.Day;

    public override void Add()
    {
        for (var at = 0; at < Owners.Length; at++)
        {
            Exact.Add(at, _day(Owners[at]) + 1);
        }
    }
}

/// <summary>Counts the amount; where a season may have none the amount and 1, so that none is 0.</summary>
internal sealed class AmountCounts<TOwner>(AmountFigure<TOwner> figure, TOwner[] owners, int days)
    : FigureCounts<TOwner>(figure, owners, days)
{
    private readonly Func<TOwner, long> _amount = figure.Amount;
    private readonly int _more = figure.IsOfSome ? 1 : 0;

    public override void Add()
    {
        if (figure.IsWide)
        {
            for (var at = 0; at < Owners.Length; at++)
            {
                Wide.Add(at, _amount(Owners[at]));
            }

            return;
        }

        for (var at = 0; at < Owners.Length; at++)
        {
            Exact.Add(at, checked((int)_amount(Owners[at])) + _more);
        }
    }
}

/// <summary>Counts each quantity of a row. Most rows are empty in most seasons: nothing waits, nothing is thrown out.</summary>
internal sealed class RowCounts<TOwner>(RowFigure<TOwner> figure, TOwner[] owners, int days) : FigureCounts<TOwner>(figure, owners, days)
{
    public override void Add()
    {
        var cell = 0;
        foreach (var owner in Owners)
        {
            ReadOnlySpan<long> row = figure.Row(owner);
            if (row.ContainsAnyExcept(0))
            {
                Add(cell, row);
            }

            cell += row.Length;
        }
    }

    private void Add(int first, ReadOnlySpan<long> row)
    {
        for (var at = 0; at < row.Length; at++)
        {
            if (figure.IsWide)
            {
                Wide.Add(first + at, row[at]);
            }
            else
            {
                Exact.Add(first + at, checked((int)row[at]));
            }
        }
    }
}

/// <summary>Counts each day.</summary>
internal sealed class DailyCounts<TOwner>(DailyFigure<TOwner> figure, TOwner[] owners, int days)
    : FigureCounts<TOwner>(figure, owners, days)
{
    public override void Add()
    {
        var cell = 0;
        foreach (var owner in Owners)
        {
            var row = figure.Days(owner);
            Exact.Add(cell, row);
            cell += row.Length;
        }
    }
}
