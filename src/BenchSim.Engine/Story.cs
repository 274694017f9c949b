using System.Globalization;

namespace BenchSim.Engine;

/// <summary>
/// One running process: its name, the call it is in, what it holds, and what it waits for. Stories live in numbered slots of the simulation
/// and are used again by later processes.
/// </summary>
internal sealed class Story(Simulation simulation, int slot)
{
    private string _name = "";
    private int _number = -1;
    private Holdings _holdings = new();
    private bool _goOn;

    public Simulation Simulation { get; } = simulation;

    public int Slot { get; } = slot;

    /// <summary>Running number among all processes started, for a stable order in reports.</summary>
    public long StartNumber { get; private set; }

    /// <summary>The innermost call; null when the slot is free.</summary>
    public Frame? Top { get; private set; }

    /// <summary>What it stands in line for; null when it does not.</summary>
    public Places? WaitsFor { get; set; }

    public int Wanted { get; set; }

    public int WakeOrder { get; set; }

    /// <summary>Days from getting what it stands in line for to its next turn; below 0 to have its turn as soon as it gets it.</summary>
    public double UseDays { get; set; }

    public double WaitsSince { get; set; }

    public Story? NextInLine { get; set; }

    /// <summary>Why its last request was refused while it stood in line.</summary>
    public PlacesRefusedException? Refusal { get; set; }

    public int NextFreeSlot { get; set; }

    public string Name => _number < 0 ? _name : string.Create(CultureInfo.InvariantCulture, $"{_name} {_number}");

    /// <summary>What it holds.</summary>
    public ref Holdings Holdings => ref _holdings;

    public void Begin(Frame frame, string name, int number, long startNumber)
    {
        frame.Story = this;
        Top = frame;
        _name = name;
        _number = number;
        StartNumber = startNumber;
    }

    /// <summary>Runs until it has to wait or ends. Calls of other processes run here in turn, so that no call nests on the machine's stack.</summary>
    public void Run()
    {
        Top!.MoveNext();
        while (_goOn)
        {
            _goOn = false;
            Top!.MoveNext();
        }
    }

    public void Call(Frame callee, Frame caller)
    {
        callee.Story = this;
        callee.Caller = caller;
        Top = callee;
        _goOn = true;
    }

    public void ReturnTo(Frame caller)
    {
        Top = caller;
        _goOn = true;
    }

    public void End()
    {
        if (!_holdings.IsEmpty)
        {
            ThrowStillHolds();
        }

        Simulation.NoteEnd(this);
        Top!.Story = null;
        Top = null;
        Simulation.FreeSlot(this);
    }

    public void Fail(Exception failure) => throw new ProcessException(Name, Simulation.Now, failure.Message, failure);

    /// <summary>Gives back all calls and forgets everything held and waited for.</summary>
    public void Drop()
    {
        var frame = Top;
        Top = null;
        while (frame is not null)
        {
            var caller = frame.Caller;
            frame.GiveBack();
            frame = caller;
        }

        _holdings.Clear();
        WaitsFor = null;
        NextInLine = null;
        Refusal = null;
    }

    private void ThrowStillHolds()
    {
        var left = _holdings.All().First();
        throw new ProcessException(
            Name,
            Simulation.Now,
            $"It ended while it still held {left.Count} of {Simulation.PlacesAt(left.PlacesIndex).Name}. Leave them first.",
            null
        );
    }
}
