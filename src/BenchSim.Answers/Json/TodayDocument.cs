using System.Collections.Immutable;
using BenchSim.Report.Json;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;

namespace BenchSim.Answers.Json;

/// <summary>How the benches stand on a day by the log.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Today">The day.</param>
/// <param name="LogLines">Lines of the log.</param>
/// <param name="LatestLine">Day of the latest line; null where there is none.</param>
/// <param name="Spaces">The spaces, with the room left.</param>
/// <param name="Batches">The batches: what stands, and what became of the rest.</param>
/// <param name="Due">Jobs that are due by the plan and have no line.</param>
/// <param name="CountedOtherwise">Counts that are not what the lines before them say, and that nothing explains.</param>
/// <param name="CountedElsewhere">Moves that nobody wrote down, as two counts show.</param>
/// <param name="Warnings">Things to know about the plan that are no faults.</param>
/// <param name="Faults">What is wrong: nothing.</param>
internal sealed record TodayDocument(
    int Version,
    string Name,
    DateOnly Today,
    int LogLines,
    DateOnly? LatestLine,
    ImmutableArray<JsonSpaceToday> Spaces,
    ImmutableArray<JsonBatchToday> Batches,
    ImmutableArray<JsonDueJob> Due,
    ImmutableArray<JsonCountedOtherwise> CountedOtherwise,
    ImmutableArray<JsonCountedElsewhere> CountedElsewhere,
    ImmutableArray<JsonFault> Warnings,
    ImmutableArray<JsonFault> Faults
)
{
    public static TodayDocument Of(SeasonPlan plan, DateOnly today, BenchLedger ledger, ImmutableArray<DueJob> due)
    {
        var scenario = plan.Scenario;
        return new(
            Version: JsonDialect.Version,
            Name: scenario.Name,
            Today: today,
            LogLines: scenario.Log.Length,
            LatestLine: scenario.Log.IsEmpty ? null : scenario.Log.Max(entry => entry.Date),
            Spaces: [.. SpaceToday.Of(plan, ledger, today).Select(JsonSpaceToday.Of)],
            Batches: [.. plan.Batches.Select((batch, index) => JsonBatchToday.Of(plan, ledger, batch, index))],
            Due: [.. due.Select(job => JsonDueJob.Of(plan, job))],
            CountedOtherwise: [.. ledger.Differences.Select(each => JsonCountedOtherwise.Of(scenario, each))],
            CountedElsewhere: [.. ledger.Elsewhere.Select(each => JsonCountedElsewhere.Of(scenario, each))],
            Warnings: JsonFault.Of(plan.Warnings),
            Faults: []
        );
    }
}

/// <summary>A space on a day.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="Kind">"mat", "chamber", "bench" or "table".</param>
/// <param name="House">House id; null outdoors.</param>
/// <param name="Trays">Trays that stand there.</param>
/// <param name="Flats">Flats that stand there.</param>
/// <param name="Taken">Places they take.</param>
/// <param name="Places">Places it has on the day.</param>
/// <param name="Free">Places left; below 0 where more stand there than it has places.</param>
internal sealed record JsonSpaceToday(
    string Id,
    string Name,
    string Kind,
    string? House,
    int Trays,
    int Flats,
    int Taken,
    int Places,
    int Free
)
{
    public static JsonSpaceToday Of(SpaceToday today) =>
        new(
            today.Space.Id,
            today.Space.Name,
            Trade.Code(today.Space),
            today.Space.HouseId,
            today.Trays,
            today.Flats,
            today.Held,
            today.Places,
            today.Free
        );
}

/// <summary>A batch by the log.</summary>
/// <param name="Id">Id.</param>
/// <param name="Crop">Crop id.</param>
/// <param name="Grower">Grower.</param>
/// <param name="InFlats">Whether it is sown in flats, to be potted up.</param>
/// <param name="Planned">Trays or flats planned to be sown.</param>
/// <param name="Sown">Trays or flats sown.</param>
/// <param name="ToSow">Trays or flats still to be sown.</param>
/// <param name="BegunOn">Day of its first count, where the log does not say when it was sown; else null.</param>
/// <param name="FlatsUsed">Flats used up by potting up.</param>
/// <param name="Filled">Trays filled by potting up.</param>
/// <param name="SetOut">Trays set out.</param>
/// <param name="PlantsSetOut">Plants set out, of the lines that count them; null where none does.</param>
/// <param name="HandedOver">Trays handed over to their grower.</param>
/// <param name="TraysThrownOut">Trays thrown out.</param>
/// <param name="FlatsThrownOut">Flats thrown out.</param>
/// <param name="Stands">What stands where.</param>
internal sealed record JsonBatchToday(
    string Id,
    string Crop,
    string Grower,
    bool InFlats,
    int Planned,
    int Sown,
    int ToSow,
    DateOnly? BegunOn,
    int FlatsUsed,
    int Filled,
    int SetOut,
    int? PlantsSetOut,
    int HandedOver,
    int TraysThrownOut,
    int FlatsThrownOut,
    ImmutableArray<JsonPile> Stands
)
{
    public static JsonBatchToday Of(SeasonPlan plan, BenchLedger ledger, BatchPlan batch, int index)
    {
        var book = ledger.Batches[index];
        return new(
            Id: batch.Order.Id,
            Crop: batch.Crop.Id,
            Grower: batch.Order.Grower,
            InFlats: batch.Flat is not null,
            Planned: DueWork.Planned(batch),
            Sown: book.Sown,
            ToSow: DueWork.Unsown(batch, book),
            BegunOn: book.BegunOn,
            FlatsUsed: book.FlatsUsed,
            Filled: book.Filled,
            SetOut: book.Out.Sum(each => each.Trays),
            PlantsSetOut: book.Out.Any(each => each.Plants is not null) ? book.Out.Sum(each => each.Plants ?? 0) : null,
            HandedOver: book.HandedOver.Sum(each => each.Trays),
            TraysThrownOut: book.TraysThrownOut,
            FlatsThrownOut: book.FlatsThrownOut,
            Stands:
            [
                .. book.Piles.Select(pile => new JsonPile(
                    plan.Scenario.Spaces[pile.Space].Id,
                    pile.AreFlats ? 0 : pile.Count,
                    pile.AreFlats ? pile.Count : 0,
                    pile.Since,
                    pile.SownOn,
                    pile.PottedOn
                )),
            ]
        );
    }
}

/// <summary>Trays or flats of a batch that share their past.</summary>
/// <param name="Space">Id of the space.</param>
/// <param name="Trays">Trays; 0 where they are flats.</param>
/// <param name="Flats">Flats; 0 where they are trays.</param>
/// <param name="Since">Since when they stand there.</param>
/// <param name="Sown">Day of sowing; null where the log does not say.</param>
/// <param name="PottedUp">Day of potting up; null for what was not potted up, and where the log does not say.</param>
internal sealed record JsonPile(string Space, int Trays, int Flats, DateOnly Since, DateOnly? Sown, DateOnly? PottedUp);

/// <summary>A job that is due by the plan and has no line.</summary>
/// <param name="Job">Job, as the work list names it.</param>
/// <param name="Batch">Id of the batch.</param>
/// <param name="Trays">Trays; 0 where they are flats.</param>
/// <param name="Flats">Flats; 0 where they are trays.</param>
/// <param name="Space">Id of the space in which they stand; null for a sowing.</param>
/// <param name="On">The day on which it was due.</param>
internal sealed record JsonDueJob(string Job, string Batch, int Trays, int Flats, string? Space, DateOnly On)
{
    public static JsonDueJob Of(SeasonPlan plan, DueJob job) =>
        new(
            TaskWords.Job(job.Kind),
            plan.Batches[job.Batch].Order.Id,
            job.AreFlats ? 0 : job.Count,
            job.AreFlats ? job.Count : 0,
            job.Space is { } space ? plan.Scenario.Spaces[space].Id : null,
            job.On
        );
}

/// <summary>A count that is not what the lines before it say.</summary>
/// <param name="On">Day.</param>
/// <param name="Batch">Id of the batch.</param>
/// <param name="Flats">Whether flats were counted.</param>
/// <param name="Space">Id of the space.</param>
/// <param name="ByTheLog">What the lines say.</param>
/// <param name="Counted">What was counted; 0 where a walk found none.</param>
/// <param name="Unexplained">Those of the difference that no count elsewhere explains, below 0 for missing.</param>
/// <param name="Walked">Whether it is a walk that says so.</param>
internal sealed record JsonCountedOtherwise(
    DateOnly On,
    string Batch,
    bool Flats,
    string Space,
    int ByTheLog,
    int Counted,
    int Unexplained,
    bool Walked
)
{
    public static JsonCountedOtherwise Of(Scenario scenario, CountedOtherwise each) =>
        new(
            each.On,
            scenario.Batches[each.Batch].Id,
            each.AreFlats,
            scenario.Spaces[each.Space].Id,
            each.Expected,
            each.Counted,
            each.Unexplained,
            each.IsWalked
        );
}

/// <summary>A move that nobody wrote down.</summary>
/// <param name="On">Day on which it showed.</param>
/// <param name="Batch">Id of the batch.</param>
/// <param name="Flats">Whether they are flats.</param>
/// <param name="From">Id of the space in which they are missing.</param>
/// <param name="To">Id of the space in which they were found.</param>
/// <param name="Count">How many.</param>
internal sealed record JsonCountedElsewhere(DateOnly On, string Batch, bool Flats, string From, string To, int Count)
{
    public static JsonCountedElsewhere Of(Scenario scenario, CountedElsewhere each) =>
        new(
            each.On,
            scenario.Batches[each.Batch].Id,
            each.AreFlats,
            scenario.Spaces[each.From].Id,
            scenario.Spaces[each.To].Id,
            each.Count
        );
}
