using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Papers;

/// <summary>Jobs in the words of the work list.</summary>
public static class TaskWords
{
    private const int LongestName = 60;

    /// <summary>The job, as a heading and as a code for tables.</summary>
    public static string Job(WorkKind kind) =>
        kind switch
        {
            WorkKind.Sow => "Sow",
            WorkKind.OffMat => "Move off the mats",
            WorkKind.Thin => "Thin",
            WorkKind.PotUp => "Pot up",
            WorkKind.Finish => "Move to finish",
            WorkKind.ToTable => "Move to the table",
            WorkKind.SetOut => "Set out",
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    /// <summary>"4 trays", "1 flat".</summary>
    /// <param name="count">How many.</param>
    /// <param name="areFlats">Whether they are flats.</param>
    public static string Pieces(int count, bool areFlats) =>
        areFlats ? Numbers.Count(count, "flat", "flats") : Numbers.Count(count, "tray", "trays");

    /// <summary>The pieces of a job.</summary>
    internal static string Pieces(WorkTask task) => Pieces(task.Pieces, task.AreFlats);

    /// <summary>What a person needs to know besides.</summary>
    internal static string Detail(SeasonPlan plan, WorkTask task)
    {
        var batch = task.Batch;
        return task.Kind switch
        {
            WorkKind.Sow when batch.Flat is { } flat => $"{Name(flat)}, {Numbers.Count(batch.Order.SeedsPerFlat, "seed", "seeds")} a flat: "
                + $"{Numbers.Count(batch.Seeds, "seed", "seeds")}; to {Where(plan, task, sown: true)}",
            WorkKind.Sow => $"{Name(batch.Tray)}, {Numbers.Count(batch.Order.SeedsPerCell, "seed", "seeds")} a cell: "
                + $"{Numbers.Count(batch.Seeds, "seed", "seeds")}; to {Where(plan, task, sown: true)}",
            WorkKind.OffMat => $"to {Where(plan, task, sown: false)}",
            WorkKind.Thin => $"from {batch.Order.SeedsPerCell} to {batch.Crop.KeepPerCell} a cell, from this day on",
            WorkKind.PotUp => $"{Name(batch.Tray)}, from {Numbers.Count(batch.Flats, "flat", "flats")}",
            WorkKind.Finish => $"to {Named(plan, batch.Finish, task.On)}",
            WorkKind.ToTable => $"to {Table(plan, task)}; {Numbers.Count(batch.Crop.HardeningNights, "night", "nights")} to harden",
            WorkKind.SetOut => $"{Trade.Plants(batch)} wanted",
            _ => throw new ArgumentOutOfRangeException(nameof(task)),
        };
    }

    /// <summary>"Mon 1 March".</summary>
    internal static string Day(DateOnly date) => $"{date.DayOfWeek.ToString()[..3]} {date.Day} {Dates.ShortMonth(date)}";

    private static string Where(SeasonPlan plan, WorkTask task, bool sown)
    {
        var group = sown && !task.Batch.Mats.IsEmpty ? task.Batch.Mats : task.Batch.Benches;
        return group.IsEmpty ? "its place" : Named(plan, group, task.On);
    }

    private static string Table(SeasonPlan plan, WorkTask task) =>
        task.Batch.Tables.IsEmpty ? "the hardening table" : Named(plan, task.Batch.Tables, task.On);

    private static string Name(TrayType tray) => PlainText.Short(tray.Name, LongestName);

    // In order of preference, those that can be used on the day; all of them where none can.
    private static string Named(SeasonPlan plan, ImmutableArray<int> all, DateOnly on)
    {
        var group = SpacePlaces.Open(plan.Scenario, all, on);
        string Name(int at) => PlainText.Short(plan.Scenario.Spaces[group[at]].Name, LongestName);
        return group.Length switch
        {
            1 => Name(0),
            2 => $"{Name(0)}, else {Name(1)}",
            _ => $"{Name(0)}, else {Name(1)} or {group.Length - 2} more",
        };
    }
}
