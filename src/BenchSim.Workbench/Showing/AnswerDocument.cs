using System.Collections.Immutable;
using BenchSim.Answers.Check;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study.Results;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;

namespace BenchSim.Workbench.Showing;

/// <summary>A share of seasons with its interval, to be drawn, and in words that follow "in".</summary>
internal sealed record ShareDocument(double Share, double Low, double High, string Words)
{
    /// <summary>The shape of a chance.</summary>
    public static ShareDocument Of(Chance chance) => new(chance.Share, chance.Low, chance.High, ChanceWords.OfAllSeasons(chance));
}

/// <summary>The share of seasons from which a plan is called reliable.</summary>
internal sealed record ReliableDocument(double Share, string Words)
{
    /// <summary>That of the verdict.</summary>
    public static ReliableDocument Now { get; } = new(Verdict.ReliableFrom, ChanceWords.Fine(Verdict.ReliableFrom));
}

/// <summary>The verdict in words.</summary>
internal sealed record VerdictDocument(
    bool? Fits,
    string Headline,
    string? Weak,
    ImmutableArray<string> Sentences,
    ImmutableArray<string> LeavesOut
);

/// <summary>A space by day, and the places it is given. Waiting is of trays that want it.</summary>
internal sealed record SpaceDocument(
    string Id,
    string Name,
    string Kind,
    int Entry,
    bool IsSized,
    int Given,
    ImmutableArray<int> Places,
    ImmutableArray<int> Low,
    ImmutableArray<int> Middle,
    ImmutableArray<int> High,
    ImmutableArray<int> Wanted,
    ImmutableArray<int> Waiting,
    ImmutableArray<int> BaseMiddle,
    ImmutableArray<int> BasePlaces
);

/// <summary>A batch on a kind of space, on its planned days; on the last it leaves.</summary>
internal sealed record StayDocument(string Kind, int From, int To);

/// <summary>A date of a line of the plan: as it is written, and as the program reads it or, where none is written, plans it.</summary>
internal sealed record LineDateDocument(string Text, DateOnly Date);

/// <summary>A line of the plan with its dates, which are those of its first succession.</summary>
internal sealed record LineDocument(string Id, LineDateDocument Sow, LineDateDocument SetOut);

/// <summary>A batch with its planned days, counted from the first, and what came of it.</summary>
internal sealed record BatchDocument(
    string Id,
    int Row,
    LineDocument Line,
    string Crop,
    string Grower,
    string Trays,
    int Sow,
    int? PotUp,
    int SetOut,
    ImmutableArray<StayDocument> Stays,
    string Complete,
    bool IsWeak,
    int? OutMedian,
    int? OutLate
);

/// <summary>An answer, as the page draws it.</summary>
internal sealed record AnswerDocument(
    long Revision,
    int Try,
    bool IsLive,
    bool IsLast,
    int Seasons,
    string? Name,
    string? Chip,
    string? FilesChip,
    ImmutableArray<FaultDocument> Faults,
    string? Failure,
    ImmutableArray<FaultDocument> Warnings,
    VerdictDocument? Said,
    ReliableDocument Reliable,
    ShareDocument? Fits,
    ShareDocument? Base,
    string? Difference,
    DateOnly? FirstDay,
    int Days,
    ImmutableArray<SpaceDocument> Spaces,
    ImmutableArray<BatchDocument> Batches
)
{
    /// <summary>From which day it is played on, in a sentence; null where it is played from its first day.</summary>
    public string? Underway { get; init; }

    /// <summary>Heater, fans and vents of the houses; null where the size of none is given, and where there are faults.</summary>
    public AirDocument? Air { get; init; }

    /// <summary>The answer of a play.</summary>
    /// <param name="told">The play.</param>
    /// <param name="workbook">The table of a workbook by the name of its file; null where there is none.</param>
    public static AnswerDocument Of(Told told, Func<string, CsvOutline?> workbook)
    {
        var places = new FaultPlaces(told.Question.Now, workbook);
        var question = told.Question;
        if (told.Played is not { Plan: { } plan, Result: { } result })
        {
            return new AnswerDocument(
                question.Revision,
                question.Try,
                question.IsLive,
                true,
                0,
                null,
                ChipWords.Of(told.Played),
                ChipWords.Of(told.Base),
                [.. told.Played.Faults.Select(places.Of)],
                told.Played.Failure is { } kind ? FailureWords.Of("play", kind) : null,
                [],
                null,
                ReliableDocument.Now,
                null,
                told.Base?.Result is { } other ? ShareDocument.Of(other.Fits) : null,
                null,
                null,
                0,
                [],
                []
            );
        }

        var verdict = Verdict.Of(result);
        return new AnswerDocument(
            question.Revision,
            question.Try,
            question.IsLive,
            told.IsLast,
            result.Seasons,
            PlainText.Short(plan.Scenario.Name, 80),
            ChipWords.Of(told.Played),
            ChipWords.Of(told.Base),
            [],
            null,
            [.. HeaterWarnings.Of(plan.Scenario).Concat(plan.Warnings).Select(places.Of)],
            new VerdictDocument(verdict.Fits, verdict.Headline, verdict.Weak, verdict.Sentences, verdict.LeavesOut),
            ReliableDocument.Now,
            ShareDocument.Of(result.Fits),
            told.Base?.Result is { } files ? ShareDocument.Of(files.Fits) : null,
            DifferenceWords.Of(told),
            plan.FirstDay,
            plan.Days,
            [.. result.Spaces.Select(space => Space(space, places.Site, told.Base?.Result))],
            [.. result.Batches.GroupBy(batch => batch.Plan.Order.Place).SelectMany(line => Line([.. line], plan, places))]
        )
        {
            Air = AirDocument.Of(plan.Scenario),
            Underway = told.Played.Today is { } day
                ? $"Played on from {new Dates(plan).Plain(day)}, from the benches as log.csv has them."
                : null,
        };
    }

    /// <summary>What a phone is told of it: the verdict, without the strips, the bars and the houses.</summary>
    public AnswerDocument Short() => this with { Spaces = [], Batches = [], Air = null };

    private static SpaceDocument Space(SpaceResult space, TomlOutline site, StudyResult? files)
    {
        var part = site.Parts.FirstOrDefault(each => each.Section is "space" && each.Find("id")?.Plain == space.Space.Id);
        var before = files?.Spaces.FirstOrDefault(each => each.Space.Id == space.Space.Id);
        return new SpaceDocument(
            space.Space.Id,
            space.Space.Name,
            SpaceFields.Word[space.Space.Kind],
            part?.Entry ?? -1,
            part?.Find("places") is null,
            space.Space.Places,
            space.Places,
            [.. space.Held.Select(day => day.P10)],
            [.. space.Held.Select(day => day.P50)],
            [.. space.Held.Select(day => day.P90)],
            [.. space.Wanted.Select(day => day.P50)],
            [.. space.Waiting.Select(day => day.P90)],
            before is null ? [] : [.. before.Held.Select(day => day.P50)],
            before is null ? [] : before.Places
        );
    }

    private static IEnumerable<BatchDocument> Line(BatchResult[] line, SeasonPlan plan, FaultPlaces places)
    {
        var first = line[0].Plan;
        var place = first.Order.Place;
        var written = new LineDocument(
            places.CellOf(place, "id"),
            new LineDateDocument(places.CellOf(place, "sow"), first.Order.Sow ?? first.SowOn),
            new LineDateDocument(places.CellOf(place, "set_out"), first.Order.SetOut ?? first.SetOutOn)
        );
        return line.Select(batch => Batch(batch, written, plan, places));
    }

    private static BatchDocument Batch(BatchResult batch, LineDocument line, SeasonPlan plan, FaultPlaces places)
    {
        var planned = batch.Plan;
        var trays = Numbers.Count(planned.Trays, "tray", "trays");
        return new BatchDocument(
            planned.Order.Id,
            places.RowOf(planned.Order.Place),
            line,
            planned.CropAndVariety,
            planned.Order.Grower,
            planned.Flats > 0 ? $"{Numbers.Count(planned.Flats, "flat", "flats")}, then {trays}" : trays,
            Day(planned.SowOn),
            planned.PotUpOn is { } pot ? Day(pot) : null,
            Day(planned.SetOutOn),
            [
                .. PlannedRoom
                    .Stays(planned)
                    .Where(stay => stay.From < stay.Until)
                    .Select(stay => new StayDocument(SpaceFields.Word[stay.Kind], Day(stay.From), Day(stay.Until))),
            ],
            ChanceWords.Fine(batch.Complete.Share),
            batch.Complete.High < Verdict.ReliableFrom,
            batch.OutMedian.P50 is { } middle ? Day(middle) : null,
            batch.OutLast.P90 is { } late ? Day(late) : null
        );

        int Day(DateOnly date) => date.DayNumber - plan.FirstDay.DayNumber;
    }
}
