namespace BenchSim.Engine;

/// <summary>
/// Count, mean, variance, least and greatest of values, without keeping them. Running update after B. P. Welford (1962), "Note on a method
/// for calculating corrected sums of squares and products", Technometrics 4, which does not lose digits when the mean is large.
/// </summary>
public sealed class Tally
{
    private double _mean;
    private double _squares;
    private double _least = double.NaN;
    private double _greatest = double.NaN;

    /// <summary>Number of values.</summary>
    public long Count { get; private set; }

    /// <summary>Mean; not a number when there is no value.</summary>
    public double Mean => Count > 0 ? _mean : double.NaN;

    /// <summary>Variance with divisor count - 1; not a number below two values.</summary>
    public double Variance => Count > 1 ? _squares / (Count - 1) : double.NaN;

    /// <summary>Least value; not a number when there is no value.</summary>
    public double Min => _least;

    /// <summary>Greatest value; not a number when there is no value.</summary>
    public double Max => _greatest;

    /// <summary>Adds a value.</summary>
    /// <param name="value">Any finite number.</param>
    public void Add(double value)
    {
        Count++;
        var off = value - _mean;
        _mean += off / Count;
        _squares += off * (value - _mean);
        if (!(value >= _least))
        {
            _least = value;
        }

        if (!(value <= _greatest))
        {
            _greatest = value;
        }
    }

    /// <summary>Forgets all values.</summary>
    public void Clear()
    {
        Count = 0;
        _mean = _squares = 0;
        _least = _greatest = double.NaN;
    }
}
