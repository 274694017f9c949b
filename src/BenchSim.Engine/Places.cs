using System.Runtime.CompilerServices;

namespace BenchSim.Engine;

/// <summary>
/// A number of whole places that processes take, wait for and leave: a bench, a mat, a pair of hands. Whoever asks first is served
/// first; nobody overtakes unless that was asked for. A process holds what it takes until it leaves it.
/// </summary>
public sealed class Places
{
    /// <summary>The capacity of places without limit.</summary>
    public const int Unlimited = int.MaxValue;

    private readonly int _index;
    private readonly int _firstCapacity;
    private readonly int _declaredMost;
    private Story? _first;
    private Story? _last; // says something only while somebody stands in line
    private bool _refusedSome;

    /// <summary>Makes places in a simulation.</summary>
    /// <param name="simulation">The simulation.</param>
    /// <param name="name">Name, for traces and reports.</param>
    /// <param name="capacity">Number of places, 0 or more, or <see cref="Unlimited"/>.</param>
    /// <param name="most">
    /// The most places there will ever be, if the capacity is to grow later. A request above both this and the capacity is refused.
    /// </param>
    /// <param name="mayOvertake">Whether a request that fits may go before an earlier one that does not.</param>
    /// <exception cref="ArgumentOutOfRangeException">A capacity below 0.</exception>
    public Places(Simulation simulation, string name, int capacity, int most = 0, bool mayOvertake = false)
    {
        ArgumentNullException.ThrowIfNull(simulation);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentOutOfRangeException.ThrowIfNegative(capacity);
        Simulation = simulation;
        Name = name;
        Capacity = _firstCapacity = capacity;
        _declaredMost = most;
        MayOvertake = mayOvertake;
        _index = simulation.Register(this);
    }

    /// <summary>The simulation that the places belong to.</summary>
    public Simulation Simulation { get; }

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Number of places now.</summary>
    public int Capacity { get; private set; }

    /// <summary>Places held now. Above the capacity only after the capacity was lowered below it.</summary>
    public int Held { get; private set; }

    /// <summary>Places not held now, 0 or more.</summary>
    public int Free => Math.Max(0, Capacity - Held);

    /// <summary>Processes that stand in line now.</summary>
    public int InLine { get; private set; }

    /// <summary>Whether a request that fits may go before an earlier one that does not.</summary>
    public bool MayOvertake { get; }

    /// <summary>Places held over time; null until <see cref="Watch"/>.</summary>
    public Level? HeldLevel { get; private set; }

    /// <summary>Processes in line over time; null until <see cref="Watch"/>.</summary>
    public Level? LineLevel { get; private set; }

    /// <summary>Days from asking with <see cref="Take"/> or <see cref="Use"/> to getting, 0 for those who got at once; null until <see cref="Watch"/>.</summary>
    public Tally? Waits { get; private set; }

    /// <summary>Starts to keep statistics, from now. Until then they cost nothing.</summary>
    public void Watch()
    {
        HeldLevel = new Level(Simulation.Now, Held);
        LineLevel = new Level(Simulation.Now, InLine);
        Waits = new Tally();
    }

    /// <summary>Asks for places: await it, and the process goes on when it holds all of them.</summary>
    /// <param name="count">Places, 1 or more.</param>
    /// <param name="order">Whose turn comes first when several become able to go on at the same time; never who gets the places.</param>
    /// <exception cref="PlacesRefusedException">There are never so many places.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count below 1, or an order out of range.</exception>
    public PlacesRequest Take(int count, int order = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        Simulation.CheckOrder(order);
        if (IsTooMuch(count))
        {
            throw Refusal(Simulation.Current(), count);
        }

        return new PlacesRequest(this, count, order);
    }

    /// <summary>
    /// Takes places, holds them for some days and leaves them, all in one: await it, and the process goes on when it has left them. It is
    /// <see cref="Take"/>, <see cref="Simulation.Delay"/> and <see cref="Leave"/> one after the other, but without a turn between standing in
    /// line and holding.
    /// </summary>
    /// <param name="count">Places, 1 or more.</param>
    /// <param name="days">Days from when it gets the places, 0 or more. They are given when it asks; if they depend on when it gets them, use single steps.</param>
    /// <param name="order">Who goes first among those due when the days are over, or when the request is refused: the lower, from -32,768 to 32,767.</param>
    /// <exception cref="PlacesRefusedException">There are never so many places.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count below 1, days below 0, endless or not a number, or an order out of range.</exception>
    public PlacesUse Use(int count, double days, int order = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        if (!(days >= 0 && days < double.PositiveInfinity))
        {
            ThrowDays(days);
        }

        Simulation.CheckOrder(order);
        if (IsTooMuch(count))
        {
            throw Refusal(Simulation.Current(), count);
        }

        return new PlacesUse(this, count, days, order);
    }

    /// <summary>Takes what fits now, without waiting: nothing while others stand in line, unless overtaking is allowed.</summary>
    /// <param name="most">The most places wanted, 0 or more.</param>
    /// <returns>Places taken, from 0 to <paramref name="most"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 0 wanted.</exception>
    /// <exception cref="InvalidOperationException">Called from outside a process.</exception>
    public int TakeWhatFits(int most)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(most);
        var story = Simulation.Current();
        var count = _first is null || MayOvertake ? Math.Min(most, Free) : 0;
        if (count > 0)
        {
            Hand(story, count);
        }

        return count;
    }

    /// <summary>Leaves places that the running process holds. Those in line get them in the same moment; they go on after this process pauses, or with <see cref="Use"/> when their days are over.</summary>
    /// <param name="count">Places, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count below 1.</exception>
    /// <exception cref="InvalidOperationException">The process does not hold so many, or no process is running.</exception>
    public void Leave(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var story = Simulation.Current();
        if (!story.Holdings.Remove(_index, count))
        {
            ThrowHoldsFewer(story, count);
        }

        Held -= count;
        HeldLevel?.Set(Simulation.Now, Held);
        if (Simulation.Trace is not null)
        {
            Note(story, TraceAct.Leaves, count);
        }

        if (_first is not null)
        {
            ServeLine();
        }
    }

    /// <summary>
    /// Changes the number of places. Nobody is thrown out: if more are held, none are given until enough are left. Requests in line that can
    /// never be met any more are refused where they wait.
    /// </summary>
    /// <param name="capacity">Number of places from now on, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A capacity below 0.</exception>
    public void ChangeCapacity(int capacity)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(capacity);
        Capacity = capacity;
        if (_first is null)
        {
            return;
        }

        RefuseTooMuch();
        ServeLine();
    }

    internal bool TakeAtOnce(int count) => TryHand(Simulation.Current(), count);

    /// <summary>Hands places to a process, or puts it at the end of the line; its turn comes some days after it gets them.</summary>
    internal void UseOrStandInLine(Story story, int count, double days, int order)
    {
        if (!ReferenceEquals(story.Simulation, Simulation))
        {
            throw ProcessBuilder.OutsideProcess();
        }

        if (TryHand(story, count))
        {
            Simulation.SuspendFor(story, days, order);
        }
        else
        {
            StandInLine(story, count, order, days);
        }
    }

    /// <summary>Puts a process at the end of the line.</summary>
    /// <param name="story">Who.</param>
    /// <param name="count">Places wanted.</param>
    /// <param name="order">Order of its next turn.</param>
    /// <param name="useDays">Days from getting the places to that turn; below 0 to have it as soon as it gets them.</param>
    internal void StandInLine(Story story, int count, int order, double useDays = -1)
    {
        story.WakeOrder = order;
        if (IsTooMuch(count))
        {
            // The capacity was lowered between asking and waiting.
            Refuse(story, count);
            return;
        }

        story.WaitsFor = this;
        story.Wanted = count;
        story.UseDays = useDays;
        story.WaitsSince = Simulation.Now;
        if (_first is null)
        {
            _first = story;
        }
        else
        {
            _last!.NextInLine = story;
        }

        _last = story;
        if (Simulation.Trace is not null)
        {
            Note(story, TraceAct.Waits, count);
        }

        InLine++;
        LineLevel?.Set(Simulation.Now, InLine);
    }

    internal void ThrowIfRefused()
    {
        if (!_refusedSome)
        {
            return;
        }

        var story = Simulation.Current();
        if (story.Refusal is not { } refusal)
        {
            return;
        }

        story.Refusal = null;
        throw refusal;
    }

    /// <summary>For each process in line but the first, the one directly before it.</summary>
    internal void AddLineTo(Dictionary<Story, Story> ahead)
    {
        for (var story = _first; story?.NextInLine is { } next; story = next)
        {
            ahead.Add(next, story);
        }
    }

    internal int HeldBy(Story story) => story.Holdings.Of(_index);

    internal void Restart()
    {
        Capacity = _firstCapacity;
        Held = 0;
        InLine = 0;
        _first = _last = null;
        _refusedSome = false;
        if (HeldLevel is not null)
        {
            Watch();
        }
    }

    // Texts are put together in methods of their own: in one that runs millions of times they would take room, to be cleared at each call.
    private static void ThrowDays(double days) =>
        throw new ArgumentOutOfRangeException(nameof(days), days, "Places are used for 0 days or more, and not for ever.");

    private void ThrowHoldsFewer(Story story, int count) =>
        throw new InvalidOperationException($"{story.Name} cannot leave {count} of {Name}: it holds {story.Holdings.Of(_index)}.");

    private bool IsTooMuch(int count) => count > Capacity && count > _declaredMost;

    private PlacesRefusedException Refusal(Story story, int count) => new(story.Name, Name, count, Math.Max(Capacity, _declaredMost));

    private void Refuse(Story story, int count)
    {
        story.Refusal = Refusal(story, count);
        _refusedSome = true;
        Simulation.Wake(story);
    }

    private bool TryHand(Story story, int count)
    {
        if (count > Capacity - Held || (_first is not null && !MayOvertake))
        {
            return false;
        }

        Hand(story, count);
        Waits?.Add(0);
        return true;
    }

    private void Hand(Story story, int count)
    {
        Held += count;
        story.Holdings.Add(_index, count);
        HeldLevel?.Set(Simulation.Now, Held);
        if (Simulation.Trace is not null)
        {
            Note(story, TraceAct.Takes, count);
        }
    }

    private void ServeLine()
    {
        Story? before = null;
        var story = _first;
        while (Held < Capacity && story is not null)
        {
            var next = story.NextInLine;
            if (story.Wanted <= Capacity - Held)
            {
                Unlink(story, before);
                Hand(story, story.Wanted);
                Waits?.Add(Simulation.Now - story.WaitsSince);
                if (story.UseDays < 0)
                {
                    Simulation.Wake(story);
                }
                else
                {
                    Simulation.SuspendFor(story, story.UseDays, story.WakeOrder);
                }
            }
            else if (MayOvertake)
            {
                before = story;
            }
            else
            {
                break;
            }

            story = next;
        }
    }

    private void RefuseTooMuch()
    {
        Story? before = null;
        var story = _first;
        while (story is not null)
        {
            var next = story.NextInLine;
            if (IsTooMuch(story.Wanted))
            {
                Unlink(story, before);
                Refuse(story, story.Wanted);
            }
            else
            {
                before = story;
            }

            story = next;
        }
    }

    private void Unlink(Story story, Story? before)
    {
        if (before is null)
        {
            _first = story.NextInLine;
        }
        else
        {
            before.NextInLine = story.NextInLine;
            if (ReferenceEquals(_last, story))
            {
                _last = before;
            }
        }

        story.NextInLine = null;
        story.WaitsFor = null;
        InLine--;
        LineLevel?.Set(Simulation.Now, InLine);
    }

    // Never inlined, for the reason given at Simulation.Note.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Note(Story story, TraceAct act, int count) =>
        Simulation.Trace!.Note(new TraceNote(Simulation.Now, story.Name, act, this, count, 0, InLine, null));
}
