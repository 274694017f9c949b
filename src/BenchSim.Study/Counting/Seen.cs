using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>
/// The values that one quantity took, with the seasons that had each: what estimates are made from. Filled anew for one quantity after
/// another.
/// </summary>
public sealed class Seen
{
    private readonly List<(long Value, int Seasons)> _values = [];
    private Moments? _ofClasses;

    /// <summary>Values in rising order, each had by a season at least.</summary>
    public IReadOnlyList<(long Value, int Seasons)> Values => _values;

    /// <summary>Seasons that had a value.</summary>
    public int Seasons { get; private set; }

    /// <summary>Whether the values are those of classes (<see cref="WideCount"/>).</summary>
    public bool IsClassed => _ofClasses is not null;

    /// <summary>Forgets everything.</summary>
    internal void Clear()
    {
        _values.Clear();
        _ofClasses = null;
        Seasons = 0;
    }

    /// <summary>Puts a value behind those there are.</summary>
    internal void Add(long value, int seasons)
    {
        _values.Add((value, seasons));
        Seasons += seasons;
    }

    /// <summary>Puts values in rising order that were added in any.</summary>
    internal void Sort() => _values.Sort((one, other) => one.Value.CompareTo(other.Value));

    /// <summary>Says that the values are classes, and what the moments of the values themselves are.</summary>
    internal void SetClassed(Moments moments) => _ofClasses = moments;

    /// <summary>Gives 0 to the seasons that have no value yet.</summary>
    /// <param name="seasons">All seasons.</param>
    public void AddZeros(int seasons)
    {
        if (seasons == Seasons)
        {
            return;
        }

        _values.Insert(0, (0, seasons - Seasons));
        Seasons = seasons;
        if (_ofClasses is { } moments)
        {
            _ofClasses = moments with { Seasons = seasons, Least = 0 };
        }
    }

    /// <summary>Takes 1 off each value, which was counted as one more so that 0 can mean none.</summary>
    internal void TakeOne()
    {
        for (var at = 0; at < _values.Count; at++)
        {
            _values[at] = _values[at] with { Value = _values[at].Value - 1 };
        }
    }

    /// <summary>Exact sums and ends.</summary>
    public Moments Moments()
    {
        if (_ofClasses is { } known)
        {
            return known;
        }

        UInt128 sum = 0;
        UInt128 squares = 0;
        foreach ((var value, var seasons) in _values)
        {
            sum += (UInt128)(ulong)value * (uint)seasons;
            squares += (UInt128)(ulong)value * (ulong)value * (uint)seasons;
        }

        return _values.Count == 0 ? default : new Moments(Seasons, sum, squares, _values[0].Value, _values[^1].Value);
    }

    /// <summary>The smallest value that at least the stated percent of the seasons do not exceed; one season or more.</summary>
    public long Quantile(int percent)
    {
        // ceil(percent x seasons / 100) in whole numbers: count x 100 >= percent x seasons, without a rounding of its own.
        var needed = Math.Max(1, (((long)percent * Seasons) + 99) / 100);
        long sum = 0;
        var at = 0;
        while ((sum += _values[at].Seasons) < needed)
        {
            at++;
        }

        var value = _values[at].Value;
        return _ofClasses is { } moments && value > 0 ? Math.Min(moments.Most, WideCount.UpperEnd((int)value)) : value;
    }

    /// <summary>The estimate of the quantity; all NaN when no season has it.</summary>
    /// <param name="student">Student factors.</param>
    /// <param name="parts">Whole numbers counted to one unit shown: 1, or 60,000 where thousandths of a minute are shown as hours.</param>
    internal Estimate ToEstimate(StudentFactors student, double parts)
    {
        if (Seasons == 0)
        {
            return new Estimate(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, 0);
        }

        var moments = Moments();
        return new Estimate(
            (double)moments.Sum / Seasons / parts,
            HalfWidth(moments, student) / parts,
            Quantile(10) / parts,
            Quantile(50) / parts,
            Quantile(90) / parts,
            Quantile(95) / parts,
            moments.Least / parts,
            moments.Most / parts,
            Seasons
        );
    }

    /// <summary>The spread of a whole number of one day; one season or more.</summary>
    internal DaySpread ToSpread()
    {
        var moments = Moments();
        return new DaySpread(
            (double)moments.Sum / Seasons,
            (int)Quantile(10),
            (int)Quantile(50),
            (int)Quantile(90),
            (int)Quantile(95),
            (int)moments.Most
        );
    }

    /// <summary>Days of the clock as dates, over the seasons in which the thing happened.</summary>
    /// <param name="firstDay">Date of day 0.</param>
    /// <param name="seasons">Seasons played.</param>
    internal DateSpread ToDates(DateOnly firstDay, int seasons)
    {
        return Seasons == 0 ? new DateSpread(null, null, null, 0, seasons) : new DateSpread(At(10), At(50), At(90), Seasons, seasons);

        DateOnly At(int percent) => firstDay.AddDays((int)Quantile(percent));
    }

    /// <summary>Half the width of the 95 % Student interval of a mean; NaN for one season.</summary>
    internal static double HalfWidth(Moments moments, StudentFactors student)
    {
        double n = moments.Seasons;
        if (moments.Seasons == 1)
        {
            return double.NaN;
        }

        var variance = (double)moments.SpreadTimesSeasons / (n * (n - 1));
        return student.For(moments.Seasons) * Math.Sqrt(variance / n);
    }
}
