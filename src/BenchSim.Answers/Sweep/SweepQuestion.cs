using BenchSim.Answers.Asking;
using BenchSim.Report;
using BenchSim.Report.Words;
using BenchSim.Study.Shards;
using BenchSim.Study.Sweeps;

namespace BenchSim.Answers.Sweep;

/// <summary>Asks the same of many scenario folders, their variants and sets of values, as tasks that can be played anywhere.</summary>
public sealed record SweepQuestion
{
    /// <summary>The file of the sweep.</summary>
    public required string File { get; init; }

    /// <summary>Folder for the results of tasks and the answer; null for the file's name with "-sweep", beside it.</summary>
    public string? Out { get; init; }

    /// <summary>Threads, 1 or more; null for one a core. No answer depends on it.</summary>
    public int? Threads { get; init; }

    private string Place => Out ?? Path.ChangeExtension(File, null) + "-sweep";

    private string AnswerPlace => Path.Combine(Place, "answer");

    /// <summary>Plays all tasks that have no result yet, merges them, and writes the answer.</summary>
    /// <param name="watch">Watches the play.</param>
    /// <exception cref="FaultsFoundException">The file or some folders have faults; nothing was played.</exception>
    /// <exception cref="RefusedException">The sweep is too large, or a result cannot be written.</exception>
    /// <exception cref="StoppedException">It was stopped; what was done is kept.</exception>
    public Answer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var sweep = OpenedSweep.Read(File);
        SweepFolder.Check(AnswerPlace);
        sweep.Check(Threads ?? 0, watch.Cancel);
        var tasks = new TaskFolder(Place);
        tasks.TidyUp();
        var played = new SweepRunner(sweep, tasks, Threads ?? 0, watch).Play(1, 1);
        return Merged(sweep, tasks, played, watch);
    }

    /// <summary>Says how large the sweep is, once all folders were found to be without faults.</summary>
    /// <inheritdoc cref="Ask" path="/param"/>
    /// <inheritdoc cref="Ask" path="/exception"/>
    public Answer Plan(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var sweep = OpenedSweep.Read(File);
        sweep.Check(Threads ?? 0, watch.Cancel);
        var lacking = new SweepMerger(sweep, new TaskFolder(Place)).Merge(watch.Cancel).Lacking;
        return new SweepPlanAnswer(sweep.Grid, sweep.File.Settings.Name, sweep.Grid.Tasks - lacking.Count);
    }

    /// <summary>Plays one task, unless its result is there.</summary>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="watch">Watches the play.</param>
    /// <inheritdoc cref="Ask" path="/exception"/>
    public Answer Task(int number, PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var sweep = OpenedSweep.Read(File);
        if (number < 1 || number > sweep.Grid.Tasks)
        {
            throw new RefusedException(
                $"{PlainText.Quote(File)} has no task {Numbers.Whole(number)}; write a number from 1 to {Numbers.Whole(sweep.Grid.Tasks)}."
            );
        }

        var tasks = new TaskFolder(Place);
        var played = new SweepRunner(sweep, tasks, Threads ?? 0, watch).PlayOne(number);
        return new SweepPlayedAnswer(sweep.Grid.Tasks, 1, played) { Task = (TaskNames.Of(sweep, number), tasks.PathOf(number)) };
    }

    /// <summary>Plays the tasks of a share that have no result yet: of share 2 of 8 those numbered 2, 10, 18 and so on.</summary>
    /// <param name="share">The share.</param>
    /// <param name="watch">Watches the play.</param>
    /// <inheritdoc cref="Ask" path="/exception"/>
    public Answer Shard(Share share, PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var sweep = OpenedSweep.Read(File);
        sweep.Check(Threads ?? 0, watch.Cancel);
        var played = new SweepRunner(sweep, new TaskFolder(Place), Threads ?? 0, watch).Play(share.Number, share.Of);
        return new SweepPlayedAnswer(sweep.Grid.Tasks, played.Played + played.Found, played) { Share = share };
    }

    /// <summary>Plays nothing: merges what is there and writes the answer, or says what is lacking.</summary>
    /// <inheritdoc cref="Ask" path="/param"/>
    /// <inheritdoc cref="Ask" path="/exception"/>
    public Answer Merge(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var sweep = OpenedSweep.Read(File);
        SweepFolder.Check(AnswerPlace);
        return Merged(sweep, new TaskFolder(Place), null, watch);
    }

    private Answer Merged(OpenedSweep sweep, TaskFolder tasks, TasksPlayed? played, PlayWatch watch)
    {
        var (result, lacking) = new SweepMerger(sweep, tasks).Merge(watch.Cancel);
        if (result is null)
        {
            return new SweepLackingAnswer(sweep.Grid.Tasks, lacking, TaskNames.Of(sweep, lacking.Ranges[0].First))
            {
                File = File,
                Out = Out,
            };
        }

        var answer = new SweepAnswer(result, AnswerPlace)
        {
            File = File,
            Out = Out,
            Played = played,
        };
        SweepFolder.Write(AnswerPlace, result, SweepSentences.All(result), answer.Json(), watch.Cancel);
        return answer;
    }
}
