using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Mend;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Levelling;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Plays;

/// <summary>What a search was asked for.</summary>
/// <param name="Try">Number of the try; 0 for the files.</param>
/// <param name="Name">Name of the try; null for the files.</param>
/// <param name="Texts">The texts that are to be mended.</param>
/// <param name="From">The texts of the files that they are a change of.</param>
/// <param name="Beside">Which of the files that no page changes stood beside them.</param>
/// <param name="Goal">Share of seasons in which the plan must fit, between 0 and 1.</param>
internal sealed record MendAsked(
    int Try,
    string? Name,
    ImmutableSortedDictionary<string, string> Texts,
    ImmutableSortedDictionary<string, string> From,
    long Beside,
    double Goal
);

/// <summary>How far a search is, and what came of it.</summary>
/// <param name="Asked">What was asked for.</param>
internal sealed record MendState(MendAsked Asked)
{
    /// <summary>Whether it still looks.</summary>
    public bool IsRunning { get; init; }

    /// <summary>How far it is, in hundredths.</summary>
    public int Done { get; init; }

    /// <summary>What was found; null for nothing yet.</summary>
    public MendList? Found { get; init; }

    /// <summary>The plan that was looked at; null as long as nothing was found.</summary>
    public SeasonPlan? Plan { get; init; }

    /// <summary>What is wrong in the files; none where a plan could be made of them.</summary>
    public ImmutableArray<Fault> Faults { get; init; } = [];

    /// <summary>On which kind of fault of its own the program stopped; null for none.</summary>
    public string? Failure { get; init; }
}

/// <summary>
/// Looks for what would mend a plan, beside the player and on half of the cores, so that the page goes on answering. One search at a time:
/// a newer one stops the one before. Safe for use by several threads.
/// </summary>
/// <param name="folder">The folder.</param>
/// <param name="leveller">Finds sowings to move; null to move single ones alone.</param>
/// <param name="tell">Told when anything has changed.</param>
internal sealed class Mender(OpenFolder folder, ILeveller? leveller, Action<MendState?> tell) : IDisposable
{
    private readonly Lock _gate = new();
    private CancellationTokenSource? _running;
    private Thread? _thread;
    private MendState? _state;

    /// <summary>The search that runs, or was the last to run to its end; null for none.</summary>
    public MendState? State
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
    public void Start(MendAsked asked)
    {
        End();
        CancellationToken cancel;
        lock (_gate)
        {
            _running = new CancellationTokenSource();
            cancel = _running.Token;
            _state = new MendState(asked) { IsRunning = true };
            _thread = new Thread(() => Look(asked, cancel))
            {
                IsBackground = true,
                Name = "mender",
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

    private void Look(MendAsked asked, CancellationToken cancel)
    {
        var state = new MendState(asked);
        try
        {
            var answer = new MendQuestion
            {
                Scenario = folder.Source(asked.Texts),
                NotHere = NotHereMarks.File(folder) ?? new InputFile(MendQuestion.NotHereFile, []),
                Goal = asked.Goal,
                Play = new PlayWish(Threads: BesidePlays.Threads),
            }.Ask(leveller, new MendWatch(done => Keep(state with { IsRunning = true, Done = done }, cancel), cancel));
            state = state with { Found = answer.List, Plan = answer.Result.Plan };
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

    private void Keep(MendState state, CancellationToken cancel)
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

    /// <summary>Is told by the seasons played, and tells each hundredth.</summary>
    private sealed class MendWatch(Action<int> tell, CancellationToken cancel) : PlayWatch(cancel)
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
