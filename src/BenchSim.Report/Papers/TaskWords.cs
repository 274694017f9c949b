using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Papers;

/// <summary>Jobs in the words of the work list.</summary>
internal static class TaskWords
{
    /// <summary>The job, as a heading and as a code for tables.</summary>
    public static string Job(WorkKind kind) => kind switch
    {
        WorkKind.Sow => "Sow",
        WorkKind.OffMat => "Move off the mats",
        WorkKind.Thin => "Thin",
        WorkKind.PotUp => "Pot up",
        WorkKind.ToTable => "Move to the table",
        WorkKind.SetOut => "Set out",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>"4 trays", "1 flat".</summary>
    public static string Pieces(WorkTask task) => task.AreFlats ? Numbers.Count(task.Pieces, "flat", "flats") : Numbers.Count(task.Pieces, "tray", "trays");

    /// <summary>What a person needs to know besides.</summary>
    public static string Detail(SeasonPlan plan, WorkTask task)
    {
        BatchPlan batch = task.Batch;
        return task.Kind switch
        {
            WorkKind.Sow when batch.Flat is { } flat =>
                $"{flat.Name}, {Numbers.Count(batch.Order.SeedsPerFlat, "seed", "seeds")} a flat: {Numbers.Count(batch.Seeds, "seed", "seeds")}; to {Where(plan, batch, sown: true)}",
            WorkKind.Sow =>
                $"{batch.Tray.Name}, {Numbers.Count(batch.Order.SeedsPerCell, "seed", "seeds")} a cell: {Numbers.Count(batch.Seeds, "seed", "seeds")}; to {Where(plan, batch, sown: true)}",
            WorkKind.OffMat => $"to {Where(plan, batch, sown: false)}",
            WorkKind.Thin => $"from {batch.Order.SeedsPerCell} to {batch.Crop.KeepPerCell} a cell, from this day on",
            WorkKind.PotUp => $"{batch.Tray.Name}, from {Numbers.Count(batch.Flats, "flat", "flats")}",
            WorkKind.ToTable => $"to {Table(plan, batch)}; {Numbers.Count(batch.Crop.HardeningNights, "night", "nights")} to harden",
            WorkKind.SetOut => $"{Numbers.Count(batch.Order.Plants, "plant", "plants")} wanted",
            _ => throw new ArgumentOutOfRangeException(nameof(task)),
        };
    }

    /// <summary>"Mon 1 March".</summary>
    public static string Day(DateOnly date) => $"{date.DayOfWeek.ToString()[..3]} {date.Day} {Dates.ShortMonth(date)}";

    // The first preference; with several, the rest are named by number.
    private static string Where(SeasonPlan plan, BatchPlan batch, bool sown)
    {
        var group = sown && !batch.Mats.IsEmpty ? batch.Mats : batch.Benches;
        return group.IsEmpty ? "its place" : Named(plan, group[0], group.Length);
    }

    private static string Table(SeasonPlan plan, BatchPlan batch) =>
        batch.Tables.IsEmpty ? "the hardening table" : Named(plan, batch.Tables[0], batch.Tables.Length);

    private static string Named(SeasonPlan plan, int space, int choices) =>
        PlainText.Short(plan.Scenario.Spaces[space].Name, 60) + (choices > 1 ? $", or the next of {choices}" : "");
}
