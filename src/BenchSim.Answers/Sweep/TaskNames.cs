using BenchSim.Answers.Json;
using BenchSim.Folder.Reference;
using BenchSim.Report.Words;

namespace BenchSim.Answers.Sweep;

/// <summary>What a task plays, in words.</summary>
internal static class TaskNames
{
    /// <summary>What a task plays.</summary>
    public static JsonTask Of(OpenedSweep sweep, int number)
    {
        var cell = sweep.Grid[number];
        var folder = sweep.File.Folders[cell.Folder];
        var (first, count) = sweep.Grid.SeasonsOf(cell.Block);
        return new JsonTask(number, folder.Name, folder.Variants[cell.Plan], cell.Set, first + 1, first + count);
    }

    /// <summary>The same in words: task 17, "north" with "longer-table", set of values 3, seasons 1 to 100.</summary>
    public static string Words(JsonTask task) =>
        $"task {Numbers.Whole(task.Task)}, {PlainText.Quote(task.Folder)} "
        + (task.Variant is { } variant ? $"with {PlainText.Quote(variant)}" : SweepFields.AsPlanned)
        + (task.ValueSet == 0 ? "" : $", set of values {Numbers.Whole(task.ValueSet)}")
        + (
            task.FirstSeason == task.LastSeason
                ? $", season {Numbers.Whole(task.FirstSeason)}"
                : $", seasons {Numbers.Whole(task.FirstSeason)} to {Numbers.Whole(task.LastSeason)}"
        );
}
