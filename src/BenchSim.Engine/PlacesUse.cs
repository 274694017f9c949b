using System.Runtime.CompilerServices;

namespace BenchSim.Engine;

/// <summary>
/// Places for a given time: what <see cref="Places.Use"/> gives a process to await. After the await the process has had them and left them.
/// </summary>
public readonly struct PlacesUse : ICriticalNotifyCompletion
{
    private readonly Places _places;
    private readonly double _days;
    private readonly int _count;
    private readonly int _order;

    internal PlacesUse(Places places, int count, double days, int order)
    {
        _places = places;
        _days = days;
        _count = count;
        _order = order;
    }

    /// <summary>For the compiler: always false, so that even a use of 0 days lets all others go first that are due now.</summary>
    public bool IsCompleted => false;

    /// <summary>For the compiler: the use is its own awaiter.</summary>
    public PlacesUse GetAwaiter() => this;

    /// <summary>For the compiler: leaves the places, or throws if the request was refused while it stood in line.</summary>
    /// <exception cref="PlacesRefusedException">The capacity was lowered so far that the request can never be met.</exception>
    public void GetResult()
    {
        _places.ThrowIfRefused();
        _places.Leave(_count);
    }

    /// <summary>Not for use: only a process can use places.</summary>
    /// <param name="continuation">Not used.</param>
    /// <exception cref="InvalidOperationException">Always.</exception>
    public void OnCompleted(Action continuation) => throw ProcessBuilder.OutsideProcess();

    /// <inheritdoc cref="OnCompleted"/>
    public void UnsafeOnCompleted(Action continuation) => throw ProcessBuilder.OutsideProcess();

    internal void Suspend(Story story) => _places.UseOrStandInLine(story, _count, _days, _order);
}
