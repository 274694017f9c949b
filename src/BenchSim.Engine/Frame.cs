using System.Runtime.CompilerServices;

namespace BenchSim.Engine;

/// <summary>
/// Where one call of a process method stands: its state machine, and who called it. Frames are kept for the next call of the same method on
/// the same thread, so that in steady state calling a process allocates nothing.
/// </summary>
internal abstract class Frame
{
    /// <summary>The process that this call is part of; null before it starts.</summary>
    public Story? Story;

    /// <summary>The call that awaits this one; null for the outermost.</summary>
    public Frame? Caller;

    /// <summary>What went wrong in this call, for the caller to see.</summary>
    public Exception? Failure;

    /// <summary>Grows each time the frame is given back, so that an outdated handle is noticed.</summary>
    public int Version;

    public abstract void MoveNext();

    /// <summary>Forgets everything and keeps the frame for the next call.</summary>
    public abstract void GiveBack();

    public void Finish()
    {
        if (Caller is null) Story!.End();
        else Story!.ReturnTo(Caller);
    }

    public void Fail(Exception failure)
    {
        if (Caller is null) Story!.Fail(failure);
        Failure = failure;
        Story!.ReturnTo(Caller!);
    }
}

/// <summary>The frame of one process method.</summary>
/// <typeparam name="TMachine">The state machine that the compiler made of the method.</typeparam>
internal sealed class Frame<TMachine> : Frame
    where TMachine : IAsyncStateMachine
{
    // Enough for any run that is not absurd; frames above it are left to the garbage collector.
    private const int MostKept = 16_384;

    [ThreadStatic]
    private static Frame<TMachine>? s_kept;

    [ThreadStatic]
    private static int s_keptCount;

    private Frame<TMachine>? _nextKept;
    private TMachine _machine = default!;

    public static Frame<TMachine> Rent()
    {
        var frame = s_kept;
        if (frame is null) return new Frame<TMachine>();
        s_kept = frame._nextKept;
        s_keptCount--;
        frame._nextKept = null;
        return frame;
    }

    public void Hold(ref TMachine machine) => _machine = machine;

    public override void MoveNext() => _machine.MoveNext();

    public override void GiveBack()
    {
        Version++;
        _machine = default!;
        Story = null;
        Caller = null;
        Failure = null;
        if (s_keptCount >= MostKept) return;
        _nextKept = s_kept;
        s_kept = this;
        s_keptCount++;
    }
}
