using BenchSim.Answers.Asking;
using BenchSim.Report.Words;
using BenchSim.Study;
using BenchSim.Study.Sweeps;

namespace BenchSim.Answers.Sweep;

/// <summary>Plays the tasks of a sweep that have no result yet, each on one thread, as many at a time as there are threads.</summary>
/// <param name="sweep">The sweep.</param>
/// <param name="tasks">Where the results are.</param>
/// <param name="threads">Threads, 0 for one a core.</param>
/// <param name="watch">Watches the play.</param>
internal sealed class SweepRunner(OpenedSweep sweep, TaskFolder tasks, int threads, PlayWatch watch)
{
    /// <summary>Plays tasks.</summary>
    /// <param name="first">Number of the first.</param>
    /// <param name="step">How far the next is from each.</param>
    /// <exception cref="StoppedException">It was stopped; what was done is kept.</exception>
    /// <exception cref="RefusedException">A result cannot be written.</exception>
    public TasksPlayed Play(int first, int step)
    {
        var count = first > sweep.Grid.Tasks ? 0 : ((sweep.Grid.Tasks - first) / step) + 1;
        return count == 0 ? new TasksPlayed() : Play(count, at => first + (at * step));
    }

    /// <summary>Plays one task.</summary>
    /// <inheritdoc cref="Play(int, int)" path="/exception"/>
    public TasksPlayed PlayOne(int number) => Play(1, _ => number);

    private TasksPlayed Play(int count, Func<int, int> numberOf)
    {
        var options = new StudyOptions
        {
            Seasons = count,
            Seed = 0,
            Threads = threads,
        };
        var done = 0;
        try
        {
            return watch.Over(count, progress =>
                new ParallelSeasons<TasksPlayed>(options, progress, watch.Cancel).Run(() => new TasksPlayed(), Worker, Add)
            );
        }
        catch (OperationCanceledException stopped)
        {
            throw new StoppedException(
                $"Stopped with {Numbers.Count(done, "task", "tasks")} of {Numbers.Whole(count)} done. They are kept: the same command goes "
                    + "on from there.",
                stopped
            );
        }

        Action<int, TasksPlayed> Worker()
        {
            var player = new KeptPlayer();
            return (at, played) =>
            {
                PlayTask(numberOf(at), player, played);
                Interlocked.Increment(ref done);
            };
        }
    }

    private static void Add(TasksPlayed sum, TasksPlayed other)
    {
        sum.Played += other.Played;
        sum.Found += other.Found;
        sum.Replaced += other.Replaced;
    }

    private void PlayTask(int number, KeptPlayer player, TasksPlayed played)
    {
        var cell = sweep.Grid[number];
        var folder = sweep.Folder(cell.Folder);
        var key = sweep.KeyOf(cell, folder);
        tasks.Read(number, key, out var state);
        if (state == TaskState.Good)
        {
            played.Found++;
            return;
        }

        tasks.Prepare(number);
        var (first, count) = sweep.Grid.SeasonsOf(cell.Block);
        tasks.Write(number, key, player.Of(cell, folder).Play(first, count, watch.Cancel), watch.Cancel);
        played.Played++;
        played.Replaced += state == TaskState.Missing ? 0 : 1;
    }

    // To ready a player may take longer than a season: the next task of a thread is most often of the same plan and values.
    private sealed class KeptPlayer
    {
        private SweepPlayer? _player;
        private OpenedFolder? _folder;
        private SweepCell _cell;

        public SweepPlayer Of(SweepCell cell, OpenedFolder folder)
        {
            var asked = cell with { Block = 0 };
            if (_player is null || asked != _cell || !ReferenceEquals(folder, _folder))
            {
                _player = new SweepPlayer(folder.Values.In(folder.Plans[cell.Plan].Plan, cell.Set), folder.Seed);
                (_cell, _folder) = (asked, folder);
            }

            return _player;
        }
    }
}

/// <summary>How many tasks were played.</summary>
internal sealed class TasksPlayed
{
    /// <summary>Tasks that were played now.</summary>
    public int Played { get; set; }

    /// <summary>Tasks whose results were there.</summary>
    public int Found { get; set; }

    /// <summary>Of those played now, the ones whose earlier results were damaged, or of other files, settings or another build.</summary>
    public int Replaced { get; set; }
}
