using System.Runtime.CompilerServices;
using System.Runtime.ExceptionServices;

namespace BenchSim.Engine;

/// <summary>
/// A process: what an <c>async Process</c> method returns. Calling the method runs nothing yet. Give it to
/// <see cref="Simulation.Start"/> to let it live on its own, or await it inside another process to make it a part of that one.
/// Either may be done once. A process may await only the clock, places and other processes of its own simulation.
/// </summary>
[AsyncMethodBuilder(typeof(ProcessBuilder))]
public readonly struct Process : ICriticalNotifyCompletion
{
    private readonly Frame? _frame;
    private readonly int _version;

    internal Process(Frame frame)
    {
        _frame = frame;
        _version = frame.Version;
    }

    /// <summary>For the compiler: an awaited process always gets a turn of its own.</summary>
    public bool IsCompleted => false;

    /// <summary>For the compiler: the process is its own awaiter.</summary>
    public Process GetAwaiter() => this;

    /// <summary>For the compiler: gives the call's memory back, and throws what went wrong in it.</summary>
    public void GetResult()
    {
        var failure = _frame!.Failure;
        _frame.GiveBack();
        if (failure is not null)
        {
            ExceptionDispatchInfo.Throw(failure);
        }
    }

    /// <summary>Not for use: only a process can await a process.</summary>
    /// <param name="continuation">Not used.</param>
    /// <exception cref="InvalidOperationException">Always.</exception>
    public void OnCompleted(Action continuation) => throw ProcessBuilder.OutsideProcess();

    /// <inheritdoc cref="OnCompleted"/>
    public void UnsafeOnCompleted(Action continuation) => throw ProcessBuilder.OutsideProcess();

    /// <summary>The call to run; refused if it was started or awaited before.</summary>
    internal Frame Unstarted()
    {
        if (_frame is null)
        {
            throw new InvalidOperationException("This is no process: call an async Process method to get one.");
        }

        if (_frame.Version != _version || _frame.Story is not null)
        {
            throw new InvalidOperationException("This process was started before. Call its method again for another one.");
        }

        return _frame;
    }
}
