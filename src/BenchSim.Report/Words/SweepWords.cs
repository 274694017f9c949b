using BenchSim.Study.Sweeps;

namespace BenchSim.Report.Words;

/// <summary>Words for the plans of a sweep.</summary>
public static class SweepWords
{
    /// <summary>What a plan is called: "as planned", or the name of its variant.</summary>
    public static string Plan(SweptPlan plan) => plan.Variant is { } variant ? variant : "as planned";

    /// <summary>The share of seasons that fit over the sets of values: "30.1 to 62.0 %"; empty without sets.</summary>
    public static string OverSets(SweptPlan plan) =>
        plan.Row.FitsOverSets is { } range ? $"{ChanceWords.FineNumber(range.Low)} to {ChanceWords.Fine(range.High)}" : "";

    /// <summary>The space that trays most often wait for, with its share of seasons: "Heat mats (41.2 %)"; "none" for none.</summary>
    public static string Tightest(SweptPlan plan) =>
        plan.Tightest is { } tightest ? $"{PlainText.Short(tightest.Name, 40)} ({ChanceWords.Fine(tightest.Share)})" : "none";

    /// <summary>What was played.</summary>
    public static string Played(SweepResult result)
    {
        var sets =
            result.ValueSets == 0
                ? ""
                : $", and as many of each of {Numbers.Count(result.ValueSets, "set", "sets")} of all values that may be wrong";
        return $"{Numbers.Count(result.Seasons, "season", "seasons")} of each plan at the values as given{sets}: "
            + $"{Numbers.Count(result.Tasks, "task", "tasks")}.";
    }
}
