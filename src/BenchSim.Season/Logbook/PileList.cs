using System.Collections.Immutable;

namespace BenchSim.Season.Logbook;

/// <summary>The piles of a batch while the ledger is kept.</summary>
internal sealed class PileList
{
    private readonly List<Pile> _piles = [];
    private int _nextFlat;
    private int _nextTray;

    /// <summary>The piles in order of space, entry and lowest index.</summary>
    public ImmutableArray<Pile> InOrder => [.. _piles.OrderBy(pile => pile.Space).ThenBy(pile => pile.Since).ThenBy(pile => pile.First)];

    public int Standing(bool areFlats, int space) => OfKind(areFlats).Where(pile => pile.Space == space).Sum(pile => pile.Count);

    /// <summary>The spaces in which trays or flats of it stand, with how many, in order.</summary>
    public ImmutableArray<(int Space, int Count)> Spaces(bool areFlats) =>
        [
            .. OfKind(areFlats)
                .GroupBy(pile => pile.Space)
                .Select(group => (Space: group.Key, Count: group.Sum(pile => pile.Count)))
                .OrderBy(each => each.Space),
        ];

    /// <summary>The pile that came last; null for none.</summary>
    public Pile? Latest(bool areFlats) => OfKind(areFlats).MaxBy(pile => pile.Since);

    public void Add(Pile pile) => _piles.Add(pile);

    public void Add(IEnumerable<Pile> piles) => _piles.AddRange([.. piles]);

    /// <summary>A pile with indices of its own, which is not among the others yet.</summary>
    public Pile New(bool areFlats, int count, int space, DateOnly on)
    {
        var first = areFlats ? _nextFlat : _nextTray;
        _nextFlat += areFlats ? count : 0;
        _nextTray += areFlats ? 0 : count;
        return new Pile
        {
            AreFlats = areFlats,
            First = first,
            Count = count,
            Path = [new(space, on)],
        };
    }

    /// <summary>
    /// Takes trays or flats out of a space. Where too few stand, which is a fault, the rest is made up, so that the rows after are judged
    /// by what they mean.
    /// </summary>
    public List<Pile> Take(bool areFlats, int from, int count, DateOnly on)
    {
        var lacking = count - Standing(areFlats, from);
        if (lacking > 0)
        {
            Add(New(areFlats, lacking, from, on));
        }

        return TakeFrom(_piles, count, pile => pile.AreFlats == areFlats && pile.Space == from);
    }

    /// <summary>Takes some of those that a count found, as many as are still there.</summary>
    public List<Pile> TakeFound(Difference found, int count) => TakeFrom(_piles, count, pile => pile.FoundBy == found);

    /// <summary>Takes piles out of a list: who came first goes first, lowest indices before others.</summary>
    public static List<Pile> TakeFrom(List<Pile> piles, int count, Func<Pile, bool>? which = null)
    {
        var taken = new List<Pile>();
        foreach (var pile in piles.Where(which ?? (_ => true)).OrderBy(pile => pile.Since).ThenBy(pile => pile.First).ToArray())
        {
            if (count == 0)
            {
                break;
            }

            var part = Math.Min(count, pile.Count);
            count -= part;
            taken.Add(pile with { Count = part });
            var at = piles.IndexOf(pile);
            piles.RemoveAt(at);
            if (part < pile.Count)
            {
                piles.Insert(at, pile with { First = pile.First + part, Count = pile.Count - part });
            }
        }

        return taken;
    }

    private IEnumerable<Pile> OfKind(bool areFlats) => _piles.Where(pile => pile.AreFlats == areFlats);
}
