using System.Runtime.CompilerServices;

namespace BenchSim.Engine;

/// <summary>
/// One simulated world: its clock in days, the calendar of what is due, the processes that live in it and the places that they take.
/// Not for use by two threads at once; as many simulations as wanted may run side by side.
/// </summary>
public sealed class Simulation
{
    private Calendar _calendar = new();
    private ReadyLine _ready = new();
    private readonly List<Places> _places = [];
    private Story[] _stories = [];
    private int _storyCount;
    private int _freeSlot = -1;
    private int _current = -1;
    private long _sequence;
    private long _started;
    private double _pauseTime;
    private int _pauseOrder;
    private int _pauseNumber;
    private string? _pauseWhy;
    private bool _running;
    private bool _broken;

    /// <summary>The time, in days from the start of the run.</summary>
    public double Now { get; private set; }

    /// <summary>Where each step is told to; null, the default, for nowhere, which costs nothing.</summary>
    public ITrace? Trace { get; set; }

    /// <summary>Turns that processes have had since the start of the run.</summary>
    public long Events => _sequence - _calendar.Count - _ready.Count;

    /// <summary>The places of this simulation, in the order in which they were made.</summary>
    public IReadOnlyList<Places> AllPlaces => _places;

    /// <summary>Starts a process. Its first turn comes at <paramref name="at"/>, never before this call returns.</summary>
    /// <param name="process">A process that was not started or awaited before.</param>
    /// <param name="name">Name, for traces and reports.</param>
    /// <param name="number">Number behind the name ("lot 7"), or -1 for none. A name made of text and number costs nothing until it is read.</param>
    /// <param name="at">When its first turn comes, in days, not before now; null for now.</param>
    /// <param name="order">Who goes first among those due at the same time: the lower, from -32,768 to 32,767.</param>
    /// <exception cref="InvalidOperationException">The process was started before, or the run is over.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time before now or endless, or an order out of range.</exception>
    public void Start(Process process, string name, int number = -1, double? at = null, int order = 0)
    {
        CheckUsable();
        ArgumentNullException.ThrowIfNull(name);
        var time = at ?? Now;
        CheckTime(time);
        CheckOrder(order);
        var frame = process.Unstarted();
        var story = TakeSlot();
        story.Begin(frame, name, number, _started++);
        if (Trace is not null)
        {
            Note(story, TraceAct.Starts, time, null);
        }

        if (order == 0 && time == Now)
        {
            _ready.Add(_sequence++, story.Slot);
        }
        else
        {
            _calendar.Push(time, NextRank(order), story.Slot);
        }
    }

    /// <summary>A wait of some days. A wait of 0 lets all others go first that are due now with the same or a lower order.</summary>
    /// <param name="days">Days, 0 or more.</param>
    /// <param name="order">Who goes first among those due at the same time: the lower, from -32,768 to 32,767.</param>
    /// <param name="why">Why, for the trace.</param>
    /// <exception cref="ArgumentOutOfRangeException">Days below 0, endless or not a number, or an order out of range.</exception>
    /// <exception cref="InvalidOperationException">No process is running.</exception>
    public Pause Delay(double days, int order = 0, string? why = null)
    {
        if (!(days >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(days), days, "A process cannot wait for less than 0 days.");
        }

        return Until(Now + days, order, why);
    }

    /// <summary>A wait until a time.</summary>
    /// <param name="time">Time, in days from the start of the run, not before now.</param>
    /// <param name="order">Who goes first among those due at the same time: the lower, from -32,768 to 32,767.</param>
    /// <param name="why">Why, for the trace.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time before now, endless or not a number, or an order out of range.</exception>
    /// <exception cref="InvalidOperationException">No process is running.</exception>
    public Pause Until(double time, int order = 0, string? why = null)
    {
        CheckTime(time);
        CheckOrder(order);
        if (_current < 0)
        {
            throw ProcessBuilder.OutsideProcess();
        }

        _pauseTime = time;
        _pauseOrder = order;
        if (Trace is not null)
        {
            _pauseWhy = why;
        }

        return new Pause(++_pauseNumber);
    }

    /// <summary>Runs until nothing is due any more.</summary>
    /// <exception cref="ProcessException">A process threw; the run is over.</exception>
    public void Run() => Run(double.PositiveInfinity);

    /// <summary>
    /// Runs everything due up to and including a time, and leaves the clock there. What is due later stays due: the run may be taken up again.
    /// </summary>
    /// <param name="until">Time, in days, not before now; infinity to run until nothing is due, which leaves the clock at the last event.</param>
    /// <exception cref="ProcessException">A process threw; the run is over.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time before now.</exception>
    /// <exception cref="InvalidOperationException">Called from inside a process, or after a process threw.</exception>
    public void Run(double until)
    {
        CheckUsable();
        if (_running)
        {
            throw new InvalidOperationException("The simulation is running already.");
        }

        if (!(until >= Now))
        {
            throw new ArgumentOutOfRangeException(nameof(until), until, $"The clock already shows {Now}.");
        }

        _running = true;
        _broken = true;
        try
        {
            RunTurns(until);
            if (double.IsFinite(until))
            {
                Now = until;
            }

            _broken = false;
        }
        finally
        {
            _current = -1;
            _running = false;
        }
    }

    /// <summary>Who stands in line now, for what, who holds it, and which processes wait for each other in a ring.</summary>
    public WaitReport WhoWaits() => WaitReport.Of(this, _calendar.IsEmpty && _ready.IsEmpty, _stories.AsSpan(0, _storyCount));

    /// <summary>
    /// Ends all processes where they stand and makes everything as new: clock at 0, nothing due, all places free with the capacity that
    /// they were made with, statistics empty. What a process has after its await is never run, nor are its finally blocks. Their memory
    /// serves the next processes. A simulation that is not used again needs no ending: nothing outlives it.
    /// </summary>
    /// <exception cref="InvalidOperationException">Called from inside a process.</exception>
    public void Reset()
    {
        EndAll();
        Now = 0;
        _sequence = 0;
        _started = 0;
        _broken = false;
        foreach (var places in _places)
        {
            places.Restart();
        }
    }

    internal int Register(Places places)
    {
        CheckUsable();
        _places.Add(places);
        return _places.Count - 1;
    }

    internal Places PlacesAt(int index) => _places[index];

    /// <summary>The process whose turn it is.</summary>
    internal Story Current() =>
        _current >= 0 ? _stories[_current] : throw new InvalidOperationException("Only a running process can take or leave places.");

    internal void Suspend(Story story, Pause pause)
    {
        if (pause.Number != _pauseNumber)
        {
            throw new InvalidOperationException("A pause must be awaited at once, and inside the simulation that it came from.");
        }

        _pauseNumber++;
        Suspend(story, _pauseTime, _pauseOrder, _pauseWhy);
    }

    internal void SuspendFor(Story story, double days, int order)
    {
        var until = Now + days;
        CheckTime(until);
        Suspend(story, until, order, null);
    }

    internal void Wake(Story story)
    {
        if (story.WakeOrder == 0)
        {
            _ready.Add(_sequence++, story.Slot);
        }
        else
        {
            _calendar.Push(Now, NextRank(story.WakeOrder), story.Slot);
        }
    }

    internal void NoteEnd(Story story)
    {
        if (Trace is not null)
        {
            Note(story, TraceAct.Ends, 0, null);
        }
    }

    internal void FreeSlot(Story story)
    {
        story.NextFreeSlot = _freeSlot;
        _freeSlot = story.Slot;
    }

    internal static void CheckOrder(int order)
    {
        if (order != (short)order)
        {
            throw new ArgumentOutOfRangeException(nameof(order), order, "An order lies between -32,768 and 32,767.");
        }
    }

    private void Suspend(Story story, double until, int order, string? why)
    {
        if (Trace is not null)
        {
            Note(story, TraceAct.Pauses, until, why);
        }

        _calendar.Push(until, NextRank(order), story.Slot);
    }

    // Order in the upper 16 bits, running number in the lower 48: enough for a million events a second over nine years.
    private long NextRank(int order) => ((long)order << 48) | _sequence++;

    // A method of its own, never inlined: beside a finally block all that the loop uses would live in memory and not in registers.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void RunTurns(double until)
    {
        int slot;
        while ((slot = TakeNext(until)) >= 0)
        {
            _current = slot;
            _stories[slot].Run();
        }
    }

    private int TakeNext(double until)
    {
        if (!_ready.IsEmpty && !_calendar.HasBefore(Now, _ready.FirstRank))
        {
            return _ready.TakeFirst();
        }

        if (_calendar.IsEmpty)
        {
            return -1;
        }

        ref readonly var top = ref _calendar.Top;
        if (top.Time > until)
        {
            return -1;
        }

        Now = top.Time;
        _calendar.Pop();
        return top.Slot;
    }

    // Never inlined: the note would take room, to be cleared at each call, in methods that run millions of times without a trace.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Note(Story story, TraceAct act, double until, string? why) =>
        Trace!.Note(new TraceNote(Now, story.Name, act, null, 0, until, 0, why));

    private Story TakeSlot()
    {
        if (_freeSlot >= 0)
        {
            var free = _stories[_freeSlot];
            _freeSlot = free.NextFreeSlot;
            return free;
        }

        if (_storyCount == _stories.Length)
        {
            Array.Resize(ref _stories, Math.Max(16, 2 * _storyCount));
        }

        return _stories[_storyCount] = new Story(this, _storyCount++);
    }

    private void EndAll()
    {
        if (_running)
        {
            throw new InvalidOperationException("A simulation cannot be ended from inside a process.");
        }

        _calendar.Clear();
        _ready.Clear();
        _freeSlot = -1;
        for (var slot = _storyCount - 1; slot >= 0; slot--)
        {
            _stories[slot].Drop();
            FreeSlot(_stories[slot]);
        }
    }

    private void CheckUsable()
    {
        if (_broken && !_running)
        {
            throw new InvalidOperationException("A process threw and the run is over. Reset the simulation to run again.");
        }
    }

    private void CheckTime(double time)
    {
        if (!(time >= Now && time < double.PositiveInfinity))
        {
            ThrowTime(time);
        }
    }

    private void ThrowTime(double time) =>
        throw new ArgumentOutOfRangeException(nameof(time), time, $"The time must lie at or after {Now}, where the clock stands.");
}
