using System.Collections.Immutable;
using BenchSim.Report.Json;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;

namespace BenchSim.Answers.Json;

/// <summary>What came of a run from a day on.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Today">The day.</param>
/// <param name="Due">Jobs that are due by the plan and have no line; they count as not done.</param>
/// <param name="DaysObserved">Days of weather before that day that were observed.</param>
/// <param name="DaysTakenAsNormal">Days before that day of which nothing is known.</param>
/// <param name="DaysForecast">Days from that day on that are forecast, and taken as true.</param>
/// <param name="Run">The answer.</param>
internal sealed record UnderwayDocument(
    int Version,
    DateOnly Today,
    ImmutableArray<JsonDueJob> Due,
    int DaysObserved,
    ImmutableArray<DateOnly> DaysTakenAsNormal,
    int DaysForecast,
    RunDocument Run
)
{
    public static UnderwayDocument Of(SeasonPlan plan, DateOnly today, ImmutableArray<DueJob> due, RunDocument run)
    {
        var known = plan.Scenario.Known ?? new KnownDays([], 0);
        return new(
            Version: JsonDialect.Version,
            Today: today,
            Due: [.. due.Select(job => JsonDueJob.Of(plan, job))],
            DaysObserved: known.Observed - known.Lacking.Length,
            DaysTakenAsNormal: known.Lacking,
            DaysForecast: known.Days.Length - known.Observed,
            Run: run
        );
    }
}
