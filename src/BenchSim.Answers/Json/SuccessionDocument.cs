using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Json;
using BenchSim.Study.Succession;

namespace BenchSim.Answers.Json;

/// <summary>Schedules of successions of one line of the plan, in the same seasons.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Batch">Id of the line.</param>
/// <param name="PlantsEach">Plants of each succession.</param>
/// <param name="Seasons">Seasons played of each schedule.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="SupplyAfterDays">Days from the day on which half of a set-out's trays are out to the first that it supplies.</param>
/// <param name="SupplyDays">Days that one set-out supplies.</param>
/// <param name="Schedules">The schedules.</param>
internal sealed record SuccessionDocument(
    int Version,
    string Name,
    string Batch,
    int PlantsEach,
    int Seasons,
    string Seed,
    int SupplyAfterDays,
    int SupplyDays,
    ImmutableArray<JsonSchedule> Schedules
)
{
    public static SuccessionDocument Of(SuccessionResult result) =>
        new(
            JsonDialect.Version,
            result.Plan.Scenario.Name,
            result.Line.Id,
            result.Line.Orders[0].Plants,
            result.Seasons,
            result.Seed.ToString(CultureInfo.InvariantCulture),
            result.Supply.AfterDays,
            result.Supply.Days,
            [.. result.Schedules.Select(JsonSchedule.Of)]
        );
}

/// <summary>A schedule.</summary>
/// <param name="EveryDays">Days from one sowing to the next.</param>
/// <param name="Times">Sowings in all.</param>
/// <param name="Figures">What came of it; null where it was not played.</param>
/// <param name="WhyNot">Why it was not played; null where it was.</param>
internal sealed record JsonSchedule(int EveryDays, int Times, JsonScheduleFigures? Figures, string? WhyNot)
{
    public static JsonSchedule Of(ScheduleResult result) =>
        new(
            result.Schedule.Every,
            result.Schedule.Times,
            result.Figures is { } figures ? JsonScheduleFigures.Of(figures) : null,
            result.Figures is null ? result.WhyNot : null
        );
}

/// <summary>What came of a schedule.</summary>
/// <param name="LastSetOut">Planned date of its last set-out.</param>
/// <param name="Fits">Chance that the whole plan fits with these successions in it.</param>
/// <param name="LatePlantDays">Late plant-days of the whole plan.</param>
/// <param name="OwnLatePlantDays">Late plant-days of the successions alone.</param>
/// <param name="GapDays">Days without supply between the first and the last set-out.</param>
/// <param name="WithoutGap">Chance of a season without a gap in which every succession goes out.</param>
/// <param name="NeverOut">Successions of which nothing reaches the field.</param>
internal sealed record JsonScheduleFigures(
    DateOnly LastSetOut,
    JsonChance Fits,
    JsonEstimate LatePlantDays,
    JsonEstimate OwnLatePlantDays,
    JsonEstimate GapDays,
    JsonChance WithoutGap,
    JsonEstimate NeverOut
)
{
    public static JsonScheduleFigures Of(ScheduleFigures figures) =>
        new(
            figures.LastSetOut,
            JsonChance.Of(figures.Fits),
            JsonEstimate.Of(figures.LatePlantDays),
            JsonEstimate.Of(figures.OwnLatePlantDays),
            JsonEstimate.Of(figures.GapDays),
            JsonChance.Of(figures.WithoutGap),
            JsonEstimate.Of(figures.NeverOut)
        );
}
