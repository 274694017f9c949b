using System.Collections.Immutable;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Study.Counting;

/// <summary>Counts all figures of one kind of owner.</summary>
internal abstract class FigureTally
{
    /// <summary>Counts one season.</summary>
    /// <param name="season">The season with places as given.</param>
    /// <param name="roomy">The same season with places without limit.</param>
    public abstract void Add(SeasonResult season, RoomySeason roomy);

    /// <summary>Adds another thread's counts of the same kind.</summary>
    public abstract void Merge(FigureTally other);

    /// <summary>Names all counts.</summary>
    public abstract void Exchange(ITallyExchange exchange);
}

/// <inheritdoc/>
/// <typeparam name="TOwner">The kind of owner.</typeparam>
/// <param name="owners">The owners; they are filled with one season after another.</param>
/// <param name="figures">Their figures.</param>
/// <param name="days">Days played.</param>
internal class FigureTally<TOwner>(TOwner[] owners, FigureList<TOwner> figures, int days) : FigureTally
    where TOwner : OwnerSeason
{
    private readonly FigureCounts<TOwner>[] _counts = [.. figures.Select(figure => FigureCounts<TOwner>.Of(figure, owners, days))];

    /// <summary>The owners.</summary>
    public IReadOnlyList<TOwner> Owners => owners;

    /// <inheritdoc/>
    public override void Add(SeasonResult season, RoomySeason roomy)
    {
        foreach (var owner in owners)
        {
            owner.Read(season, roomy);
        }

        foreach (var counts in _counts)
        {
            counts.Add();
        }
    }

    /// <inheritdoc/>
    public override void Merge(FigureTally other)
    {
        for (var figure = 0; figure < _counts.Length; figure++)
        {
            _counts[figure].Merge(((FigureTally<TOwner>)other)._counts[figure]);
        }
    }

    /// <inheritdoc/>
    public override void Exchange(ITallyExchange exchange)
    {
        foreach (var counts in _counts)
        {
            counts.Exchange(exchange);
        }
    }

    /// <summary>All that was counted of one owner.</summary>
    /// <param name="at">Its position.</param>
    /// <param name="telling">The rest.</param>
    public ImmutableArray<ToldFigure<TOwner>> Tell(int at, Telling telling)
    {
        var told = ImmutableArray.CreateBuilder<ToldFigure<TOwner>>(_counts.Length);
        foreach (var counts in _counts)
        {
            if (counts.Tell(at, telling) is { } value)
            {
                told.Add(new ToldFigure<TOwner>(counts.Figure, value));
            }
        }

        return told.ToImmutable();
    }

    /// <summary>One figure of one owner that has it.</summary>
    public object Tell(Figure<TOwner> figure, int at, Telling telling) => Counts(figure).Tell(at, telling)!;

    /// <summary>Sums over all seasons of one figure of one owner, in whole numbers as they were counted: one a cell of its row.</summary>
    public double[] Sums(Figure<TOwner> figure, int at, Telling telling) => Counts(figure).Sums(at, telling);

    private FigureCounts<TOwner> Counts(Figure<TOwner> figure) => Array.Find(_counts, counts => counts.Figure == figure)!;
}
