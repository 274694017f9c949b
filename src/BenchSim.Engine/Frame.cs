using System.Runtime.CompilerServices;

namespace BenchSim.Engine;

/// <summary>
/// Where one call of a process method stands: its state machine, and who called it. Frames are kept for the next call of the same method on
/// the same thread, so that in steady state calling a process allocates nothing.
/// </summary>
internal abstract class Frame
{
    /// <summary>The process that this call is part of; null before it starts, and when the process has ended.</summary>
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
        if (Caller is null)
        {
            Story!.End();
        }
        else
        {
            Story!.ReturnTo(Caller);
        }
    }

    public void Fail(Exception failure)
    {
        if (Caller is null)
        {
            Story!.Fail(failure);
        }

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
    private static Stack? s_kept;

    private TMachine _machine = default!;

    public static Frame<TMachine> Rent() => (s_kept ??= new Stack()).Pop() ?? new Frame<TMachine>();

    public void Hold(ref TMachine machine) => _machine = machine;

    // A process that ended in this turn has left the frame: it is given back here, where the type of the machine is known.
    public override void MoveNext()
    {
        _machine.MoveNext();
        if (Story is null)
        {
            GiveBack();
        }
    }

    public override void GiveBack()
    {
        Version++;
        _machine = default!;
        Story = null;
        Caller = null;
        Failure = null;
        (s_kept ??= new Stack()).Push(this);
    }

    /// <summary>The frames kept, the last one first.</summary>
    private sealed class Stack
    {
        private Frame<TMachine>[] _frames = new Frame<TMachine>[16];
        private int _count;

        // A frame that is taken is let go: it knows its simulation, which nothing here may keep from the garbage collector.
        public Frame<TMachine>? Pop()
        {
            if (_count == 0)
            {
                return null;
            }

            ref var top = ref _frames[--_count];
            var frame = top;
            top = null!;
            return frame;
        }

        public void Push(Frame<TMachine> frame)
        {
            var frames = _frames;
            if ((uint)_count < (uint)frames.Length)
            {
                frames[_count++] = frame;
            }
            else if (_count < MostKept)
            {
                Widen(frame);
            }
        }

        private void Widen(Frame<TMachine> frame)
        {
            Array.Resize(ref _frames, 2 * _count);
            _frames[_count++] = frame;
        }
    }
}
