namespace BenchSim.Engine;

/// <summary>
/// Plays a model by the three-phase method (K. D. Tocher, The Art of Simulation, 1963; M. Pidd, Computer Simulation in Management Science):
/// A, advance the clock to the next event; B, let all happen that is bound to at that time; C, try what may happen then, in a stated order.
/// Between events nothing happens. Time is a number in the model's own unit. Not for use by two threads at once.
/// </summary>
public sealed class Clock
{
    private const int MostKinds = 1 << 15;
    private readonly Calendar _calendar = new();
    private bool _stopped;

    /// <summary>The time of the last event.</summary>
    public double Now { get; private set; }

    /// <summary>Empties the calendar and sets the time.</summary>
    /// <param name="now">Time to start from.</param>
    public void Reset(double now)
    {
        _calendar.Clear();
        Now = now;
        _stopped = false;
    }

    /// <summary>Puts on the calendar what is bound to happen.</summary>
    /// <param name="time">When: not before now, and not infinite.</param>
    /// <param name="kind">What, 0 to 32,767: at one time the lower kind happens first.</param>
    /// <param name="subject">To whom: a number of the model's own.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time before now, infinite or not a number, or a kind out of range.</exception>
    public void Schedule(double time, int kind, int subject)
    {
        if (!(time >= Now && time < double.PositiveInfinity))
        {
            throw new ArgumentOutOfRangeException(nameof(time), time, $"The time must lie at or after {Now}, where the clock stands.");
        }

        if ((uint)kind >= MostKinds)
        {
            throw new ArgumentOutOfRangeException(nameof(kind), kind, "A kind lies between 0 and 32,767.");
        }

        _calendar.Add(time, new BoundEvent(kind, subject));
    }

    /// <summary>Plays until nothing is due any more, or the model stops the clock.</summary>
    /// <param name="model">The model.</param>
    public void Run(IThreePhaseModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        while (!_stopped && !_calendar.IsEmpty)
        {
            Now = _calendar.NextTime;
            while (_calendar.NextTime == Now)
            {
                model.Happen(_calendar.Take());
            }

            model.Attempt();
        }
    }

    /// <summary>Ends the run after the activities of this time; what is still on the calendar does not happen.</summary>
    public void Stop() => _stopped = true;
}
