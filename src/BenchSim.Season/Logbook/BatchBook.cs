using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Logbook;

/// <summary>The book of one batch while the ledger is kept.</summary>
internal sealed class BatchBook(int index, BatchOrder order)
{
    /// <summary>
    /// Days within which a count that misses some and a count that finds some elsewhere are taken for a move that nobody wrote down: a walk
    /// through all spaces takes a day or two, and dates slip by one to three days.
    /// </summary>
    private const int DaysOfAWalk = 3;

    private readonly PileList _piles = new();
    private readonly List<GonePile> _gone = [];
    private readonly List<Difference> _differences = [];
    private readonly List<CountedElsewhere> _elsewhere = [];
    private readonly List<(DateOnly On, int Count)> _sowings = [];
    private readonly List<(DateOnly On, int Trays, int? Plants)> _out = [];
    private readonly List<(DateOnly On, int Trays)> _handedOver = [];
    private readonly List<SeenOfBatch> _seen = [];
    private DateOnly? _begunOn;
    private Pile? _usedLast;
    private int _begunFlats;
    private int _begunTrays;
    private int _filled;
    private int _flatsUsed;
    private int _traysThrownOut;
    private int _flatsThrownOut;

    public BatchOrder Order => order;

    public bool IsPotUp => order.Method == Method.PotUp;

    /// <summary>Whether anything of it has been sown, or has been counted.</summary>
    public bool IsBegun => _sowings.Count > 0 || _begunOn is not null;

    /// <summary>Whether a flat has been used up, so that a tray can be filled from what is left of it.</summary>
    public bool HasUsedAFlat => _usedLast is not null;

    public IEnumerable<Difference> Differences => _differences;

    public IEnumerable<CountedElsewhere> Elsewhere => _elsewhere;

    public BatchLedger Ledger =>
        new()
        {
            Order = order,
            Sowings = [.. _sowings],
            BegunOn = _begunOn,
            BegunFlats = _begunFlats,
            BegunTrays = _begunTrays,
            Piles = _piles.InOrder,
            Filled = _filled,
            FlatsUsed = _flatsUsed,
            Out = [.. _out],
            HandedOver = [.. _handedOver],
            Seen = [.. _seen],
            Gone = [.. _gone, .. _differences.SelectMany(each => each.Missing, (each, pile) => new GonePile(pile, TrayEnd.Gone, each.On))],
            TraysThrownOut = _traysThrownOut,
            FlatsThrownOut = _flatsThrownOut,
        };

    public int Standing(bool areFlats, int space) => _piles.Standing(areFlats, space);

    /// <inheritdoc cref="PileList.Spaces"/>
    public ImmutableArray<(int Space, int Count)> Spaces(bool areFlats) => _piles.Spaces(areFlats);

    public void Sow(int count, int space, DateOnly on)
    {
        _sowings.Add((on, count));
        _piles.Add(_piles.New(IsPotUp, count, space, on) with { SownOn = on });
    }

    public void Move(bool areFlats, int from, int to, int count, DateOnly on)
    {
        foreach (var pile in _piles.Take(areFlats, from, count, on))
        {
            _piles.Add(pile with { Path = pile.Path.Add(new(to, on)) });
        }
    }

    public void PotUp(int flats, int from, int trays, int space, DateOnly on)
    {
        var used = _piles.Take(areFlats: true, from, flats, on);
        _gone.AddRange(used.Select(pile => new GonePile(pile, TrayEnd.UsedUp, on)));
        _usedLast = used.LastOrDefault() ?? _usedLast;
        _flatsUsed += flats;
        _filled += trays;
        if (trays > 0)
        {
            _piles.Add(
                _piles.New(areFlats: false, trays, space, on) with
                {
                    SownOn = _usedLast?.SownOn,
                    PottedOn = on,
                    Path = [.. _usedLast?.Path ?? [], new(space, on)],
                    Borrowed = _usedLast?.Path.Length ?? 0,
                }
            );
        }
    }

    public void SetOut(int from, int trays, int? plants, DateOnly on)
    {
        var (left, counted) = (trays, plants);
        foreach (var pile in _piles.Take(areFlats: false, from, trays, on))
        {
            // Plants that were counted together are shared out by trays.
            var part = counted is { } all ? (int)((long)all * pile.Count / left) : (int?)null;
            _gone.Add(new(pile, TrayEnd.Out, on, part));
            (left, counted) = (left - pile.Count, counted - part);
        }

        _out.Add((on, trays, plants));
    }

    public void HandOver(int from, int trays, DateOnly on)
    {
        _gone.AddRange(_piles.Take(areFlats: false, from, trays, on).Select(pile => new GonePile(pile, TrayEnd.Out, on)));
        _handedOver.Add((on, trays));
    }

    public void ThrowOut(bool areFlats, int from, int count, DateOnly on)
    {
        _gone.AddRange(_piles.Take(areFlats, from, count, on).Select(pile => new GonePile(pile, TrayEnd.Gone, on)));
        _flatsThrownOut += areFlats ? count : 0;
        _traysThrownOut += areFlats ? 0 : count;
    }

    public void See(SeenOfBatch seen) => _seen.Add(seen);

    /// <summary>So many stand in a space.</summary>
    public void Count(bool areFlats, int space, int count, DateOnly on, bool isWalked = false)
    {
        var expected = Standing(areFlats, space);
        if (!IsBegun)
        {
            _begunOn = on;
        }

        if (count > expected && _begunOn == on && _sowings.Count == 0)
        {
            _begunFlats += areFlats ? count - expected : 0;
            _begunTrays += areFlats ? 0 : count - expected;
            _piles.Add(_piles.New(areFlats, count - expected, space, on));
            return;
        }

        if (count != expected)
        {
            var difference = new Difference
            {
                On = on,
                AreFlats = areFlats,
                Space = space,
                Expected = expected,
                Counted = count,
                IsWalked = isWalked,
                Open = count - expected,
            };
            _differences.Add(difference);
            Explain(difference);
        }
    }

    private void Explain(Difference difference)
    {
        if (difference.Open > 0)
        {
            Find(difference);
        }
        else
        {
            Miss(difference);
        }
    }

    // What an earlier count overlooked here is here again, and what another count misses was moved here; the rest is new to the ledger.
    private void Find(Difference found)
    {
        foreach (var missing in Near(found).Where(each => each.Open < 0))
        {
            var count = Math.Min(found.Open, -missing.Open);
            var wasHere = missing.Space == found.Space;
            _piles.Add(
                PileList
                    .TakeFrom(missing.Missing, count)
                    .Select(pile => wasHere ? pile : pile with { Path = pile.Path.Add(new(found.Space, found.On)) })
            );
            Settle(missing, found, count, found.On);
        }

        if (found.Open > 0)
        {
            var like = _piles.Latest(found.AreFlats);
            _piles.Add(
                _piles.New(found.AreFlats, found.Open, found.Space, found.On) with
                {
                    SownOn = like?.SownOn ?? (_sowings.Count == 0 ? null : _sowings[0].On),
                    PottedOn = like?.PottedOn,
                    Path = [.. like?.Path ?? [], new(found.Space, found.On)],
                    Borrowed = like?.Path.Length ?? 0,
                    FoundBy = found,
                }
            );
        }
    }

    // What another count has found, and nobody expected there, was moved from here.
    private void Miss(Difference missing)
    {
        missing.Missing.AddRange(_piles.Take(missing.AreFlats, missing.Space, -missing.Open, missing.On));
        foreach (var found in Near(missing).Where(each => each.Open > 0 && each.Space != missing.Space))
        {
            var count = Math.Min(found.Open, -missing.Open);
            var known = PileList.TakeFrom(missing.Missing, count);
            foreach (var pile in _piles.TakeFound(found, count))
            {
                _piles.Add(
                    PileList.TakeFrom(known, pile.Count).Select(past => past with { Path = [.. past.Path, .. pile.Path[pile.Borrowed..]] })
                );
            }

            Settle(missing, found, count, missing.On);
        }
    }

    // Those of the same space first, whenever they were.
    private IEnumerable<Difference> Near(Difference one) =>
        _differences
            .Where(other => other.AreFlats == one.AreFlats)
            .Where(other => other.Space == one.Space || one.On.DayNumber - other.On.DayNumber <= DaysOfAWalk)
            .OrderBy(other => other.Space != one.Space);

    private void Settle(Difference missing, Difference found, int count, DateOnly on)
    {
        missing.Open += count;
        found.Open -= count;
        if (missing.Space != found.Space && count > 0)
        {
            _elsewhere.Add(new(on, index, found.AreFlats, missing.Space, found.Space, count));
        }
    }
}
