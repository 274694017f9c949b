using BenchSim.Report.Words;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Charts;

/// <summary>The line between what was and what may come, on a chart of the days of a season under way.</summary>
internal static class TodayMark
{
    /// <summary>The line; none where the season is played from its first day.</summary>
    public static IEnumerable<Mark> Of(SeasonPlan plan) =>
        plan.Past is { } past ? [new EdgeMark(Looks.FromToday, past.Today, IsUpright: true)] : [];

    /// <summary>What it means.</summary>
    public static KeyEntry Key(SeasonPlan plan) =>
        new(Looks.FromToday, $"{new Dates(plan).Plain(plan.Today!.Value)}: before it as it was, then as it may come");

    /// <summary>What the title of a chart says of it; empty where the season is played from its first day.</summary>
    public static string Title(SeasonPlan plan) => plan.Today is { } today ? $", from {Dates.Full(today)} on" : "";
}
