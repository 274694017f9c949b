using System.Runtime.CompilerServices;

namespace BenchSim.Engine;

/// <summary>A request for places: what <see cref="Places.Take"/> gives a process to await. After the await the process holds them.</summary>
public readonly struct PlacesRequest : ICriticalNotifyCompletion
{
    private readonly Places _places;
    private readonly int _count;
    private readonly int _order;

    internal PlacesRequest(Places places, int count, int order)
    {
        _places = places;
        _count = count;
        _order = order;
    }

    /// <summary>For the compiler, which asks once: takes the places if it can at once, and says whether it did.</summary>
    public bool IsCompleted => _places.TakeAtOnce(_count);

    /// <summary>For the compiler: the request is its own awaiter.</summary>
    public PlacesRequest GetAwaiter() => this;

    /// <summary>For the compiler: throws if the request was refused while it stood in line.</summary>
    /// <exception cref="PlacesRefusedException">The capacity was lowered so far that the request can never be met.</exception>
    public void GetResult() => _places.ThrowIfRefused();

    /// <summary>Not for use: only a process can wait for places.</summary>
    /// <param name="continuation">Not used.</param>
    /// <exception cref="InvalidOperationException">Always.</exception>
    public void OnCompleted(Action continuation) => throw ProcessBuilder.OutsideProcess();

    /// <inheritdoc cref="OnCompleted"/>
    public void UnsafeOnCompleted(Action continuation) => throw ProcessBuilder.OutsideProcess();

    internal void Suspend(Story story) => _places.StandInLine(story, _count, _order);
}
