using BenchSim.Season.Inputs;

namespace BenchSim.Study.Mending;

/// <summary>Single sowings sown on another day; their set-out dates stay.</summary>
internal static class SowingMoves
{
    // Days tried where the plan gives no tolerance.
    private static readonly int[] s_usual = [-10, -7, -4];

    /// <summary>The moves of a plan: of lines that are sown once, as a variant cannot move one succession alone.</summary>
    public static IEnumerable<SowChange> Of(SeasonPlan plan) =>
        from line in PlanLine.Of(plan)
        where line.IsSingle
        from to in Days(line.First.Order)
            .Select(days => plan.Scenario.Rules.WorkDayFrom(line.First.SowOn.AddDays(days)))
            .Where(date => date != line.First.SowOn && date >= plan.Scenario.Window.Opens && !(line.First.Order.TestedOn > date))
            .Where(date => date < line.First.SetOutOn && IsAllowed(line.First, date))
            .Distinct()
        select new SowChange([MoveOf(line, to)]);

    /// <summary>The move of a line.</summary>
    public static SowingMove MoveOf(PlanLine line, DateOnly to) =>
        new(line.Id, line.First.Order.Grower, line.First.SowOn, to, line.First.SetOutOn);

    private static int[] Days(BatchOrder order) =>
        order is { EarlierDays: 0, LaterDays: 0 }
            ? s_usual
            : [-order.EarlierDays, -(order.EarlierDays + 1) / 2, (order.LaterDays + 1) / 2, order.LaterDays];

    // Where the plan says how far it may move, it moves no further, work day or not.
    private static bool IsAllowed(BatchPlan batch, DateOnly to)
    {
        var days = to.DayNumber - batch.SowOn.DayNumber;
        return batch.Order is { EarlierDays: 0, LaterDays: 0 } || (days >= -batch.Order.EarlierDays && days <= batch.Order.LaterDays);
    }
}
