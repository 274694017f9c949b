using BenchSim.Season.Inputs;

namespace BenchSim.Report.Words;

/// <summary>When a season fits, in words.</summary>
internal static class FitRule
{
    /// <summary>The rule, to follow "a season fits when".</summary>
    public static string Of(SeasonPlan plan)
    {
        var (wait, rules) = (plan.SownInTimeDays, plan.Scenario.Rules);
        var sown = wait == 0 ? "one work day" : $"{Numbers.Count(wait, "day", "days")} and one work day";
        var late = rules.LateDays == 0 ? "in time" : $"at most {Numbers.Count(rules.LateDays, "day", "days")} late";
        return $"each batch is sown at most {sown} after its date, no tray stands too long for lack of a place, "
            + $"and {ChanceWords.Setting(rules.ServiceGoal)} of the wanted plants are out {late}, days on which only the weather held them "
            + "back not counted";
    }
}
