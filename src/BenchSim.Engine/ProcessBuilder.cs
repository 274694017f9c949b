using System.ComponentModel;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;

namespace BenchSim.Engine;

/// <summary>For the compiler: makes a <see cref="Process"/> of an async method. Nobody calls it by hand.</summary>
[EditorBrowsable(EditorBrowsableState.Never)]
public struct ProcessBuilder
{
    private Frame _frame;

    /// <summary>The process that the method returns.</summary>
    public readonly Process Task => new(_frame);

    /// <summary>A fresh builder.</summary>
    public static ProcessBuilder Create() => default;

    /// <summary>Keeps the state machine in a frame, and runs nothing: a process runs when it is started or awaited.</summary>
    /// <typeparam name="TMachine">The state machine.</typeparam>
    /// <param name="stateMachine">The state machine, whose builder is this one.</param>
    public void Start<TMachine>(ref TMachine stateMachine)
        where TMachine : IAsyncStateMachine
    {
        var frame = Frame<TMachine>.Rent();
        _frame = frame;
        frame.Hold(ref stateMachine);
    }

    /// <summary>Not used: a frame holds its state machine from the start.</summary>
    /// <param name="stateMachine">Not used.</param>
    [SuppressMessage("Performance", "CA1822:Mark members as static", Justification = "The compiler calls it on an instance.")]
    public readonly void SetStateMachine(IAsyncStateMachine stateMachine) { }

    /// <summary>The method has run to its end.</summary>
    public readonly void SetResult() => _frame.Finish();

    /// <summary>The method has thrown.</summary>
    /// <param name="exception">What it threw.</param>
    public readonly void SetException(Exception exception) => _frame.Fail(exception);

    /// <summary>The method waits.</summary>
    /// <typeparam name="TAwaiter">What for.</typeparam>
    /// <typeparam name="TMachine">The state machine.</typeparam>
    /// <param name="awaiter">What for.</param>
    /// <param name="stateMachine">The state machine.</param>
    public readonly void AwaitOnCompleted<TAwaiter, TMachine>(ref TAwaiter awaiter, ref TMachine stateMachine)
        where TAwaiter : INotifyCompletion
        where TMachine : IAsyncStateMachine => Wait(ref awaiter);

    /// <inheritdoc cref="AwaitOnCompleted"/>
    public readonly void AwaitUnsafeOnCompleted<TAwaiter, TMachine>(ref TAwaiter awaiter, ref TMachine stateMachine)
        where TAwaiter : ICriticalNotifyCompletion
        where TMachine : IAsyncStateMachine => Wait(ref awaiter);

    internal static InvalidOperationException OutsideProcess() =>
        new("Only a process of this simulation can wait, in its turn: await it inside an async method that returns Process.");

    // The type tests are settled when the method is compiled to machine code: each call has one of the branches only, and boxes nothing.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly void Wait<TAwaiter>(ref TAwaiter awaiter)
    {
        var story = _frame.Story!;
        if (typeof(TAwaiter) == typeof(Pause))
        {
            story.Simulation.Suspend(story, Unsafe.As<TAwaiter, Pause>(ref awaiter));
        }
        else if (typeof(TAwaiter) == typeof(PlacesRequest))
        {
            Unsafe.As<TAwaiter, PlacesRequest>(ref awaiter).Suspend(story);
        }
        else if (typeof(TAwaiter) == typeof(PlacesUse))
        {
            Unsafe.As<TAwaiter, PlacesUse>(ref awaiter).Suspend(story);
        }
        else if (typeof(TAwaiter) == typeof(Process))
        {
            story.Call(Unsafe.As<TAwaiter, Process>(ref awaiter).Unstarted(), _frame);
        }
        else
        {
            throw new InvalidOperationException($"A process can await the clock, places or another process, not {typeof(TAwaiter)}.");
        }
    }
}
