using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Print;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Plays;

/// <summary>
/// Plays the season on from a day, for the jobs of the next days: one play at a time, on half of the cores, so that the page goes on
/// answering. Who asks for the same files and day gets what was played last. Safe for use by several threads.
/// </summary>
internal sealed class ComingPlays : IDisposable
{
    private readonly SemaphoreSlim _one = new(1);
    private Kept? _kept;

    /// <summary>What the next days bring by the files.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="kept">Keeps what does not change from one opening of the files to the next.</param>
    /// <param name="day">The day.</param>
    /// <param name="cancel">Tells that nobody waits for it any more.</param>
    /// <exception cref="FaultsFoundException">The files have faults.</exception>
    /// <exception cref="RefusedException">The day is not of the season.</exception>
    /// <exception cref="OperationCanceledException">Nobody waits for it any more.</exception>
    public async Task<ComingAnswer> AskAsync(Desk desk, KeptOpenings kept, DateOnly day, CancellationToken cancel)
    {
        await _one.WaitAsync(cancel);
        try
        {
            var state = desk.State;
            if (
                _kept is { } before
                && before.Day == day
                && before.Beside == state.Beside
                && Texts.Differing(before.Files, state.Files).IsEmpty
            )
            {
                return before.Answer;
            }

            var asked = new ComingQuestion
            {
                Scenario = desk.Folder.Source(state.Files, kept),
                Today = day,
                Threads = Math.Max(1, Environment.ProcessorCount / 2),
            };
            var answer = await Task.Run(() => asked.Ask(new PlayWatch(cancel)), cancel);
            _kept = new Kept(state.Files, state.Beside, day, answer);
            return answer;
        }
        finally
        {
            _one.Release();
        }
    }

    /// <inheritdoc />
    public void Dispose() => _one.Dispose();

    private sealed record Kept(ImmutableSortedDictionary<string, string> Files, long Beside, DateOnly Day, ComingAnswer Answer);
}
