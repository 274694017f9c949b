using BenchSim.Answers.Opening;
using BenchSim.Season.Inputs;

namespace BenchSim.Workbench.Plays;

/// <summary>The day from which a page looks at a season that has a log.</summary>
internal static class SeasonDay
{
    /// <summary>
    /// The day of the calendar, where the season has it; else the day of the season that is nearest. A log that is ahead of it is of a day
    /// that somebody chose: then that of its last line.
    /// </summary>
    /// <param name="plan">The plan.</param>
    public static DateOnly Of(SeasonPlan plan)
    {
        var today = DateOnly.FromDateTime(DateTime.Today);
        var nearest =
            today < plan.FirstDay ? plan.FirstDay
            : today > plan.LastDay ? plan.LastDay
            : today;
        var newest = plan.Scenario.Log.IsEmpty ? nearest : plan.Scenario.Log.Max(entry => entry.Date);
        return newest > nearest && newest <= plan.LastDay ? newest : nearest;
    }

    /// <summary>Opens a scenario to be played: where it has a log, on from today's benches.</summary>
    /// <param name="source">The scenario.</param>
    public static OpenedScenario Open(ScenarioSource source)
    {
        var opened = source.Open();
        return opened.Plan.Scenario.Log.IsEmpty ? opened : source.On(Of(opened.Plan)).Open();
    }
}
