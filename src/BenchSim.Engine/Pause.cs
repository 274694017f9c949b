using System.Runtime.CompilerServices;

namespace BenchSim.Engine;

/// <summary>
/// A wait for a moment: what <see cref="Simulation.Delay"/> and <see cref="Simulation.Until"/> give a process to await at once. It carries a
/// number only; the moment itself is kept by the simulation, so that a waiting process has less to remember.
/// </summary>
public readonly struct Pause : ICriticalNotifyCompletion
{
    internal Pause(int number) => Number = number;

    /// <summary>For the compiler: always false, so that even a delay of 0 lets all others go first that are due now.</summary>
    public bool IsCompleted => false;

    /// <summary>For the compiler: the pause is its own awaiter.</summary>
    public Pause GetAwaiter() => this;

    /// <summary>For the compiler: nothing to give.</summary>
    public void GetResult() { }

    /// <summary>Not for use: only a process can wait for a moment of the simulation.</summary>
    /// <param name="continuation">Not used.</param>
    /// <exception cref="InvalidOperationException">Always.</exception>
    public void OnCompleted(Action continuation) => throw ProcessBuilder.OutsideProcess();

    /// <inheritdoc cref="OnCompleted"/>
    public void UnsafeOnCompleted(Action continuation) => throw ProcessBuilder.OutsideProcess();

    internal int Number { get; }
}
