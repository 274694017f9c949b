namespace BenchSim.Engine;

/// <summary>A figure that stays at a value until it is set to another: its mean over time, least and greatest.</summary>
public sealed class Level
{
    private double _start;
    private double _since;
    private double _area;

    /// <summary>A level that starts at a time.</summary>
    /// <param name="time">When, in days.</param>
    /// <param name="value">Value from then on.</param>
    public Level(double time, double value)
    {
        Value = value;
        Restart(time);
    }

    /// <summary>Value now.</summary>
    public double Value { get; private set; }

    /// <summary>Least value since the start, however short it lasted.</summary>
    public double Min { get; private set; }

    /// <summary>Greatest value since the start, however short it lasted.</summary>
    public double Max { get; private set; }

    /// <summary>Sets the value from a time on.</summary>
    /// <param name="time">When, in days, not before the time of the last change.</param>
    /// <param name="value">Value from then on.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time before the last change.</exception>
    public void Set(double time, double value)
    {
        _area = Area(time);
        _since = time;
        Value = value;
        if (value < Min)
        {
            Min = value;
        }

        if (value > Max)
        {
            Max = value;
        }
    }

    /// <summary>Value times days from the start until a time, such as tray-days.</summary>
    /// <param name="until">When, in days, not before the time of the last change.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time before the last change.</exception>
    public double Area(double until)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(until, _since);
        return _area + (Value * (until - _since));
    }

    /// <summary>Mean over the time from the start until a time; the value itself if no time has passed.</summary>
    /// <param name="until">When, in days, not before the time of the last change.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time before the last change.</exception>
    public double Mean(double until) => until > _start ? Area(until) / (until - _start) : Value;

    /// <summary>Forgets the past and starts anew from a time, with the value as it is.</summary>
    /// <param name="time">When, in days.</param>
    public void Restart(double time)
    {
        _start = _since = time;
        _area = 0;
        Min = Max = Value;
    }
}
