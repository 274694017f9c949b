using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Words;
using BenchSim.Report.Json;
using BenchSim.Report.Words;
using BenchSim.Study.Shards;
using BenchSim.Study.Sweeps;

namespace BenchSim.Answers.Sweep;

/// <summary>How large a sweep is.</summary>
public sealed record SweepPlanAnswer : Answer
{
    private readonly SweepGrid _grid;
    private readonly string _name;
    private readonly int _done;

    internal SweepPlanAnswer(SweepGrid grid, string name, int done) => (_grid, _name, _done) = (grid, name, done);

    /// <inheritdoc />
    public override byte[] Json() =>
        AnswerContext.Write(
            new SweepPlanDocument(
                JsonDialect.Version,
                _name,
                _grid.Folders,
                _grid.Plans,
                _grid.Sets - 1,
                _grid.Seasons,
                SeasonsInAll,
                _grid.Tasks,
                _done
            )
        );

    private long SeasonsInAll => (long)_grid.Plans * _grid.Sets * _grid.Seasons;

    private protected override void Tell(Passages passages)
    {
        passages.Sentence(
            $"{PlainText.Short(_name, 60)}: {Numbers.Count(_grid.Tasks, "task", "tasks")}, "
                + $"{Numbers.Count(SeasonsInAll, "season", "seasons")} in all. No folder has faults."
        );
        passages.Point(
            $"{Numbers.Count(_grid.Folders, "folder", "folders")}, {Numbers.Count(_grid.Plans, "plan", "plans")} with all variants."
        );
        passages.Point(
            _grid.Sets == 1
                ? "The values as given, no other sets of values."
                : $"The values as given and {Numbers.Count(_grid.Sets - 1, "set", "sets")} of all values that may be wrong."
        );
        passages.Point(
            $"{Numbers.Count(_grid.Seasons, "season", "seasons")} of each, "
                + $"{Numbers.Count(_grid.SeasonsOf(0).Count, "season", "seasons")} a task."
        );
        passages.Sentence(
            _done == 0 ? "No results are there yet."
            : _done == _grid.Tasks ? "All results are there."
            : $"{Numbers.Count(_done, "result is", "results are")} there."
        );
    }
}

/// <summary>What came of tasks that were asked for by their numbers.</summary>
public sealed record SweepPlayedAnswer : Answer
{
    private readonly int _tasks;
    private readonly int _asked;
    private readonly TasksPlayed _played;

    internal SweepPlayedAnswer(int tasks, int asked, TasksPlayed played) => (_tasks, _asked, _played) = (tasks, asked, played);

    /// <summary>The one task; null for a share.</summary>
    internal (JsonTask Task, string File)? Task { get; init; }

    /// <summary>The share.</summary>
    internal Share Share { get; init; }

    /// <inheritdoc />
    public override byte[] Json() =>
        AnswerContext.Write(new SweepPlayedDocument(JsonDialect.Version, _tasks, _asked, _played.Played, _played.Found, _played.Replaced));

    private protected override void Tell(Passages passages)
    {
        if (Task is { } one)
        {
            passages.Sentence(
                $"{PlainText.Capital(TaskNames.Words(one.Task))}: "
                    + (
                        _played.Found > 0 ? "its result is there already, and was left as it is."
                        : _played.Replaced > 0 ? "played; its earlier result was out of date and is replaced."
                        : "played."
                    )
            );
            passages.Line($"Result: {one.File}");
            return;
        }

        passages.Sentence(
            $"Share {Numbers.Whole(Share.Number)} of {Numbers.Whole(Share.Of)}: {Numbers.Count(_asked, "task", "tasks")} of "
                + $"{Numbers.Whole(_tasks)}. {SweepSentences.Tasks(_played)}"
        );
        passages.Sentence("The answer comes when all results are there: --merge adds them.");
    }
}

/// <summary>What a merge lacks: nothing was written.</summary>
public sealed record SweepLackingAnswer : Answer
{
    private const int MostNamed = 8;

    private readonly int _tasks;
    private readonly TasksLacking _lacking;
    private readonly JsonTask _first;

    internal SweepLackingAnswer(int tasks, TasksLacking lacking, JsonTask first) => (_tasks, _lacking, _first) = (tasks, lacking, first);

    internal string File { get; init; } = "";

    internal string? Out { get; init; }

    /// <inheritdoc />
    public override byte[] Json() =>
        AnswerContext.Write(
            new SweepLackingDocument(
                JsonDialect.Version,
                _tasks,
                _lacking.Count,
                _lacking.Of(TaskState.Missing),
                _lacking.Of(TaskState.Damaged),
                _lacking.Of(TaskState.OtherBuild),
                _lacking.Of(TaskState.OtherFiles),
                [.. _lacking.Ranges.Select(range => new JsonTaskRange(range.First, range.Last))],
                _lacking.More,
                _first
            )
        );

    private protected override void Tell(Passages passages)
    {
        passages.Sentence(
            $"Nothing was written: of {Numbers.Count(_tasks, "task", "tasks")} {Numbers.Count(_lacking.Count, "has", "have")} no result "
                + $"that can be merged: {_lacking.Named(MostNamed)}."
        );
        passages.Point($"The first is {TaskNames.Words(_first)}.");
        Tell(passages, TaskState.Missing, "not played yet");
        Tell(passages, TaskState.Damaged, "damaged or cut short");
        Tell(passages, TaskState.OtherBuild, "played by another build of BenchSim, which may play otherwise");
        Tell(passages, TaskState.OtherFiles, "of other files or settings than there are now");
        passages.Gap();
        passages.Heading("Play them, and merge:");
        string[] place = Out is { } folder ? ["--out", folder] : [];
        passages.Line(NextStep.Of("", "sweep", [File, .. place]).Command, 2);
    }

    private void Tell(Passages passages, TaskState state, string what)
    {
        if (_lacking.Of(state) is > 0 and var count)
        {
            passages.Point($"{Numbers.Whole(count)} {what}.");
        }
    }
}
