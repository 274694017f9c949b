namespace BenchSim.Season.Play;

/// <summary>
/// Place-days refused by who waits for whom, a week at a time. Of the pairs of spaces few ever wait, so only those are kept: the rest are
/// rows of zeros.
/// </summary>
public sealed class RefusedPlaces
{
    private readonly Dictionary<long, int[]> _rows = [];
    private int[] _nothing = [];

    /// <summary>Place-days refused by week, the first week from day 0. Not to be written to.</summary>
    /// <param name="from">Space in which the trays stand; the number of spaces for trays that are not sown yet.</param>
    /// <param name="by">Space of first preference of the group that refuses them.</param>
    public int[] this[int from, int by] => _rows.GetValueOrDefault(Key(from, by), _nothing);

    /// <summary>Sum over all pairs and weeks.</summary>
    public long Sum => _rows.Values.Sum(row => row.Sum(places => (long)places));

    /// <summary>Empties it for a play.</summary>
    /// <param name="weeks">Weeks played.</param>
    internal void Prepare(int weeks)
    {
        if (_nothing.Length != weeks)
        {
            _nothing = new int[weeks];
            _rows.Clear();
        }

        foreach (var row in _rows.Values)
        {
            Array.Clear(row);
        }
    }

    /// <summary>Counts places that were refused on a day of a week.</summary>
    internal void Add(int from, int by, int week, int places)
    {
        var key = Key(from, by);
        if (!_rows.TryGetValue(key, out var row))
        {
            _rows.Add(key, row = new int[_nothing.Length]);
        }

        row[week] += places;
    }

    /// <summary>A copy that no play changes.</summary>
    internal RefusedPlaces Copy()
    {
        var copy = new RefusedPlaces { _nothing = _nothing };
        foreach (var (key, row) in _rows)
        {
            copy._rows.Add(key, [.. row]);
        }

        return copy;
    }

    private static long Key(int from, int by) => ((long)from << 32) | (uint)by;
}
