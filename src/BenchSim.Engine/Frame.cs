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

    private Frame<TMachine>? _nextKept;
    private int _keptBelow;
    private TMachine _machine = default!;

    public static Frame<TMachine> Rent()
    {
        ref var top = ref s_kept;
        var frame = top;
        if (frame is null) return new Frame<TMachine>();
        top = frame._nextKept;
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
        ref var top = ref s_kept;
        _keptBelow = top is null ? 0 : top._keptBelow + 1;
        if (_keptBelow >= MostKept) return;
        _nextKept = top;
        top = this;
    }
}
