using BenchSim.Engine;

namespace BenchSim.Season.Play;

/// <summary>Places: who holds them, who may take them, and what is kept for whom.</summary>
internal sealed class PlaceBook
{
    private readonly SiteTables _tables;
    private readonly int[] _held;
    private readonly int[] _places;
    private readonly int[] _withoutLimit;
    private readonly int[] _closedInStep;
    private readonly int[] _closedInPass;
    private readonly int[] _heldByGrower;
    private readonly CountInTime[][] _byGrower;
    private int _step;
    private int _pass;

    public PlaceBook(SiteTables tables, int growers)
    {
        _tables = tables;
        var spaces = tables.Places.Length;
        _held = new int[spaces];
        _places = new int[spaces];
        _withoutLimit = new int[spaces];
        _closedInStep = new int[spaces];
        _closedInPass = new int[spaces];
        _heldByGrower = new int[growers];
        _byGrower = [.. Enumerable.Range(0, growers).Select(_ => new CountInTime[spaces])];
    }

    /// <summary>Whether the aisle may be used too.</summary>
    public bool IsAisleOpen { get; set; }

    /// <summary>Evenings still to be counted, this day's included.</summary>
    public int EveningsLeft { get; set; }

    public int Spaces => _held.Length;

    public ReadOnlySpan<int> Held => _held;

    public ReadOnlySpan<int> HeldByGrower => _heldByGrower;

    /// <summary>Whether no place is held anywhere.</summary>
    public bool AreEmpty => !_held.AsSpan().ContainsAnyExcept(0);

    /// <summary>Places of each space today.</summary>
    public ReadOnlySpan<int> Today => _places;

    public void Clear()
    {
        Array.Clear(_held);
        Array.Clear(_heldByGrower);
        Array.Clear(_closedInStep);
        Array.Clear(_closedInPass);
        foreach (var spaces in _byGrower)
        {
            Array.Clear(spaces);
        }

        (_step, _pass, IsAisleOpen) = (0, 0, false);
        EveningsLeft = _tables.Days;
    }

    /// <summary>The places of a day.</summary>
    public void Set(int[][] places, int day)
    {
        for (var space = 0; space < _places.Length; space++)
        {
            _places[space] = places[space][day];
            _withoutLimit[space] = _tables.Open[space][day];
        }
    }

    public void BeginPass() => _pass++;

    public void BeginStep() => _step++;

    /// <summary>Most trays of a size that still fit a space, up to those asked for; 0 when it is shut or kept for others.</summary>
    public int Fits(BatchState batch, int space, int placesEach, int asked)
    {
        var fit = _closedInStep[space] == _step || _closedInPass[space] == _pass ? 0 : Math.Max(0, Room(space)) / placesEach;
        if (fit >= asked)
        {
            return asked;
        }

        NoteLimit(batch, space);
        return fit;
    }

    public bool AnyFits(BatchState batch, int[] group, int placesEach)
    {
        foreach (var space in group)
        {
            if (Fits(batch, space, placesEach, 1) > 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Free places, below 0 where more are held than there are.</summary>
    public int Room(int space)
    {
        var places = _places[space];
        if (IsAisleOpen && places > 0)
        {
            places += _tables.Aisle[space];
        }

        return places - _held[space];
    }

    /// <summary>Whether not one place is free of the benches of a batch among which a lot stands.</summary>
    public bool AreBenchesFull(BatchState batch, Lot lot)
    {
        var benches = batch.BenchesAround(lot);
        foreach (var space in benches)
        {
            if (Room(space) > 0)
            {
                return false;
            }
        }

        NoteLimit(batch, benches);
        return true;
    }

    /// <summary>Trays that fit the spaces of a group together, were some places of one of them free.</summary>
    public long FitsTogether(int[] group, int placesEach, int ownSpace, int ownPlaces)
    {
        var fit = 0L;
        foreach (var space in group)
        {
            fit += Math.Max(0, (space == ownSpace ? ownPlaces : 0) + Room(space)) / placesEach;
        }

        return fit;
    }

    public void Hold(BatchState batch, int space, int places)
    {
        _held[space] += places;
        _heldByGrower[batch.Grower] += places;
        _byGrower[batch.Grower][space].Change(places, EveningsLeft);
        batch.Holdings.Add(new Holding(_tables.Days - EveningsLeft, space, places));
    }

    /// <summary>Places that a grower holds in a space.</summary>
    public int HeldBy(int grower, int space) => _byGrower[grower][space].Value;

    /// <summary>Place-days by grower and space.</summary>
    public long TrayDays(int grower, int space) => _byGrower[grower][space].Sum;

    /// <summary>The same up to now.</summary>
    public long TrayDaysSoFar(int grower, int space)
    {
        var count = _byGrower[grower][space];
        return count.Sum - ((long)count.Value * EveningsLeft);
    }

    /// <summary>After a refusal nobody behind in the order may take what the refused tray was after: no overtaking.</summary>
    public void CloseForStep(int[] group)
    {
        foreach (var space in group)
        {
            _closedInStep[space] = _step;
        }
    }

    /// <summary>Keeps what is free out of reach of the later steps of this pass.</summary>
    public void CloseForPass(int[] group)
    {
        foreach (var space in group)
        {
            _closedInPass[space] = _pass;
        }
    }

    /// <summary>Trays in the aisle of a space; a space that has no places today has no aisle.</summary>
    public int InAisle(int space) => _places[space] == 0 ? 0 : Math.Clamp(_held[space] - _places[space], 0, _tables.Aisle[space]);

    /// <summary>
    /// Notes that a batch asked for more than the room of a space: it has met a limit where the space is open and has one.
    /// </summary>
    public void NoteLimit(BatchState batch, int space) => batch.HasMetLimit |= _places[space] < _withoutLimit[space];

    /// <summary>The same for all spaces of a group.</summary>
    public void NoteLimit(BatchState batch, int[] group)
    {
        foreach (var space in group)
        {
            NoteLimit(batch, space);
        }
    }
}
