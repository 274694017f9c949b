using System.Collections.Immutable;
using System.Text.Json;
using BenchSim.Report.Json;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;

namespace BenchSim.Answers.Json;

/// <summary>What was played from a day on.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Today">The day.</param>
/// <param name="Due">Jobs that are due by the plan and have no line; they count as not done.</param>
/// <param name="DaysObserved">Days of weather before that day that were observed.</param>
/// <param name="DaysTakenAsNormal">Days before that day of which nothing is known.</param>
/// <param name="DaysForecast">Days from that day on that are forecast, and taken as true.</param>
/// <param name="Answer">The answer, in the shape that it has without a day.</param>
internal sealed record UnderwayDocument(
    int Version,
    DateOnly Today,
    ImmutableArray<JsonDueJob> Due,
    int DaysObserved,
    ImmutableArray<DateOnly> DaysTakenAsNormal,
    int DaysForecast,
    JsonElement Answer
)
{
    public static UnderwayDocument Of(SeasonPlan plan, DateOnly today, ImmutableArray<DueJob> due, JsonElement answer)
    {
        var known = plan.Scenario.Known ?? KnownDays.None;
        return new(
            Version: JsonDialect.Version,
            Today: today,
            Due: [.. due.Select(job => JsonDueJob.Of(plan, job))],
            DaysObserved: known.Observed - known.Lacking.Length,
            DaysTakenAsNormal: known.Lacking,
            DaysForecast: known.Days.Length - known.Observed,
            Answer: answer
        );
    }
}
