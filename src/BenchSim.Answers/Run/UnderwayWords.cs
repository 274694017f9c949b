using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Answers.Run;

/// <summary>Tells from what a season under way was played: what the log lacks, and how far the weather is known.</summary>
internal static class UnderwayWords
{
    private const int MostNamed = 3;

    /// <summary>The sentences; none for a play of the whole season.</summary>
    public static IEnumerable<string> Of(RunAnswer answer)
    {
        if (answer.Today is not { } today)
        {
            yield break;
        }

        var plan = answer.Result.Plan;
        var sowings = today.Due.Count(job => job.Kind == WorkKind.Sow);
        var others = today.Due.Length - sowings;
        yield return "The days before are those of the log"
            + (
                today.Due.IsEmpty
                    ? ", and nothing that is due lacks a line."
                    : $"; {Numbers.Count(today.Due.Length, "job is", "jobs are")} due without a line and counted as not done: "
                        + $"{Numbers.Count(sowings, "sowing", "sowings")}, {Numbers.Count(others, "other", "others")}."
            );
        if (plan.Scenario.Known is { } known)
        {
            yield return Weather(new Dates(plan), known);
        }
    }

    private static string Weather(Dates dates, KnownDays known)
    {
        var observed = known.Observed - known.Lacking.Length;
        var forecast = known.Days.Length - known.Observed;
        var lacking =
            known.Lacking.IsEmpty ? ""
            : known.Lacking.Length <= MostNamed ? $", {PlainText.List([.. known.Lacking.Select(dates.Plain)])} taken as normal"
            : $", {Numbers.Whole(known.Lacking.Length)} from {dates.Plain(known.Lacking[0])} to {dates.Plain(known.Lacking[^1])} taken "
                + "as normal";
        return $"Weather: {Numbers.Count(observed, "day", "days")} observed{lacking}; {Numbers.Count(forecast, "day", "days")} forecast"
            + (forecast == 0 ? "" : $", to {dates.Plain(known.Days[^1].Date)}")
            + "; then that of each season.";
    }
}
