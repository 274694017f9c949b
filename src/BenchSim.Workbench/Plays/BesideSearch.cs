using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Workbench.Plays;

/// <summary>The plan that a search was asked about.</summary>
/// <param name="Try">Number of the try; 0 for the files.</param>
/// <param name="Name">Name of the try; null for the files.</param>
/// <param name="Texts">Its texts.</param>
/// <param name="From">The texts of the files that they are a change of.</param>
/// <param name="Beside">Which of the files that no page changes stood beside them.</param>
internal record PlanAsked(
    int Try,
    string? Name,
    ImmutableSortedDictionary<string, string> Texts,
    ImmutableSortedDictionary<string, string> From,
    long Beside
);

/// <summary>How far a search is, and what came of it.</summary>
/// <param name="Asked">What was asked for.</param>
internal sealed record SearchState<TAsked, TFound>(TAsked Asked)
    where TAsked : PlanAsked
    where TFound : class
{
    /// <summary>Whether it still looks.</summary>
    public bool IsRunning { get; init; }

    /// <summary>How far it is, in hundredths.</summary>
    public int Done { get; init; }

    /// <summary>What was found; null for nothing yet.</summary>
    public TFound? Found { get; init; }

    /// <summary>What is wrong in the files; none where a plan could be made of them.</summary>
    public ImmutableArray<Fault> Faults { get; init; } = [];

    /// <summary>On which kind of fault of its own the program stopped; null for none.</summary>
    public string? Failure { get; init; }
}

/// <summary>
/// Looks for something that takes a minute, beside the player and on half of the cores, so that the page goes on answering. One search at
/// a time: a newer one stops the one before. Safe for use by several threads.
/// </summary>
/// <param name="name">Name of its thread.</param>
/// <param name="look">Looks, on so many threads.</param>
/// <param name="tell">Told when anything has changed; null for nothing left.</param>
internal sealed class BesideSearch<TAsked, TFound>(
    string name,
    Func<TAsked, int, PlayWatch, TFound> look,
    Action<SearchState<TAsked, TFound>?> tell
) : IDisposable
    where TAsked : PlanAsked
    where TFound : class
{
    private readonly Lock _gate = new();
    private CancellationTokenSource? _running;
    private Thread? _thread;
    private SearchState<TAsked, TFound>? _state;

    /// <summary>The search that runs, or was the last to run to its end; null for none.</summary>
    public SearchState<TAsked, TFound>? State
    {
        get
        {
            lock (_gate)
            {
                return _state;
            }
        }
    }

    /// <summary>Begins a search.</summary>
    public void Start(TAsked asked)
    {
        End();
        CancellationToken cancel;
        lock (_gate)
        {
            _running = new CancellationTokenSource();
            cancel = _running.Token;
            _state = new SearchState<TAsked, TFound>(asked) { IsRunning = true };
            _thread = new Thread(() => Look(asked, cancel))
            {
                IsBackground = true,
                Name = name,
                Priority = ThreadPriority.BelowNormal,
            };
            _thread.Start();
        }

        tell(State);
    }

    /// <summary>Stops the search that runs. What an earlier one found is gone.</summary>
    public void Stop()
    {
        lock (_gate)
        {
            if (_state is not { IsRunning: true })
            {
                return;
            }
        }

        End();
        tell(null);
    }

    /// <inheritdoc />
    public void Dispose() => End();

    private void End()
    {
        CancellationTokenSource? running;
        Thread? thread;
        lock (_gate)
        {
            (running, thread, _running, _thread) = (_running, _thread, null, null);
            _state = _state is { IsRunning: true } ? null : _state;
        }

        running?.Cancel();
        thread?.Join();
        running?.Dispose();
    }

    private void Look(TAsked asked, CancellationToken cancel)
    {
        var state = new SearchState<TAsked, TFound>(asked);
        try
        {
            var watch = new SearchWatch(done => Keep(state with { IsRunning = true, Done = done }, cancel), cancel);
            state = state with { Found = look(asked, BesidePlays.Threads, watch) };
        }
        catch (OperationCanceledException)
        {
            return;
        }
        catch (FaultsFoundException found)
        {
            state = state with { Faults = found.Faults };
        }
        catch (Exception failure) when (failure is not OutOfMemoryException)
        {
            // A fault of the program itself must not end it.
            state = state with { Failure = failure.GetType().Name };
        }

        Keep(state with { Done = 100 }, cancel);
    }

    private void Keep(SearchState<TAsked, TFound> state, CancellationToken cancel)
    {
        lock (_gate)
        {
            if (cancel.IsCancellationRequested)
            {
                return;
            }

            _state = state;
        }

        tell(state);
    }

    /// <summary>Is told by what was played, and tells each hundredth.</summary>
    private sealed class SearchWatch(Action<int> tell, CancellationToken cancel) : PlayWatch(cancel)
    {
        public override T Over<T>(int parts, Func<IProgress<int>?, T> play)
        {
            ArgumentNullException.ThrowIfNull(play);
            return play(new Hundredths(parts, tell));
        }
    }

    private sealed class Hundredths(int parts, Action<int> tell) : IProgress<int>
    {
        private int _told;

        public void Report(int value)
        {
            var now = (int)(100L * value / parts);
            if (now > _told && now < 100)
            {
                _told = now;
                tell(now);
            }
        }
    }
}
