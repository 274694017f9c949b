using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Plays;

/// <summary>
/// Asks of the files what takes seconds, beside the player: one question at a time, on half of the cores, so that the page goes on
/// answering. Who asks the same of the same files gets what was found last. Safe for use by several threads.
/// </summary>
internal sealed class BesidePlays : IDisposable
{
    private readonly SemaphoreSlim _one = new(1);
    private readonly Lock _gate = new();
    private readonly Dictionary<Type, Kept> _kept = [];

    /// <summary>Threads that a question is to be played on.</summary>
    public static int Threads => Math.Max(1, Environment.ProcessorCount / 2);

    /// <summary>Asks the files; of each kind of answer the last is kept.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="of">What it is asked of, beside the files; null for nothing.</param>
    /// <param name="ask">Asks it of their texts.</param>
    /// <param name="cancel">Tells that nobody waits for it any more.</param>
    /// <exception cref="FaultsFoundException">The files have faults.</exception>
    /// <exception cref="RefusedException">It cannot be asked.</exception>
    /// <exception cref="OperationCanceledException">Nobody waits for it any more.</exception>
    public async Task<T> AskAsync<T>(
        Desk desk,
        object? of,
        Func<ImmutableSortedDictionary<string, string>, PlayWatch, T> ask,
        CancellationToken cancel
    )
        where T : class
    {
        await _one.WaitAsync(cancel);
        try
        {
            var state = desk.State;
            if (Find<T>(state, of) is { } before)
            {
                return before;
            }

            var answer = await Task.Run(() => ask(state.Files, new PlayWatch(cancel)), cancel);
            lock (_gate)
            {
                _kept[typeof(T)] = new Kept(state.Files, state.Beside, of, answer);
            }

            return answer;
        }
        finally
        {
            _one.Release();
        }
    }

    /// <summary>What was found last, where it is of the files as they are now; null for nothing.</summary>
    /// <param name="state">The desk as it is.</param>
    /// <param name="of">What it was asked of, beside the files.</param>
    public T? Find<T>(DeskState state, object? of = null)
        where T : class
    {
        lock (_gate)
        {
            return
                _kept.GetValueOrDefault(typeof(T)) is { } kept
                && Equals(kept.Of, of)
                && kept.Beside == state.Beside
                && Texts.Differing(kept.Files, state.Files).IsEmpty
                ? (T)kept.Answer
                : null;
        }
    }

    /// <inheritdoc />
    public void Dispose() => _one.Dispose();

    private sealed record Kept(ImmutableSortedDictionary<string, string> Files, long Beside, object? Of, object Answer);
}
