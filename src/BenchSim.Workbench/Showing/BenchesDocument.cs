using System.Collections.Immutable;
using BenchSim.Answers.Opening;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Showing;

/// <summary>A job that is due and has no line, with the line that says it was done as planned.</summary>
internal sealed record DueDocument(
    string Job,
    string Batch,
    string Code,
    string Crop,
    string Grower,
    string Pieces,
    string Where,
    DateOnly On,
    int Late,
    ImmutableSortedDictionary<string, string> Row
);

/// <summary>Trays or flats drawn by lot, and what is to be counted in them.</summary>
/// <param name="What">What the line says was done.</param>
/// <param name="Words">Which of them to look at, and at what.</param>
/// <param name="AreCells">Whether empty cells are asked for, and not seedlings.</param>
/// <param name="Of">Seeds or cells in them.</param>
/// <param name="Note">The note of the line.</param>
internal sealed record LotDocument(string What, string Words, bool AreCells, int Of, string Note)
{
    /// <summary>That of a draw; null for none.</summary>
    public static LotDocument? From(TraysByLot? lot)
    {
        if (lot is null)
        {
            return null;
        }

        var (one, more) = lot.AreFlats ? ("flat", "flats") : ("tray", "trays");
        var numbers = PlainText.List([.. lot.Numbers.Select(number => Numbers.Whole(number))]);
        var areCells = lot.What == LogKind.Good;
        return new LotDocument(
            LogFields.What.Write(lot.What, default),
            $"Look at {(lot.Numbers.Length == 1 ? one : more)} {numbers} in the order in which they stand, whatever they look like.",
            areCells,
            lot.Among,
            $"picked by lot: {(lot.Numbers.Length == 1 ? one : more)} {numbers}"
        );
    }
}

/// <summary>What of a batch stands in a space, and what of it to look at.</summary>
internal sealed record StandingDocument(string Batch, string Code, string Crop, string Grower, int Trays, int Flats, LotDocument? Lot);

/// <summary>A space as it stands.</summary>
internal sealed record BenchDocument(string Id, string Name, int Held, int Places, ImmutableArray<StandingDocument> Stands);

/// <summary>Lines that were written here.</summary>
internal sealed record WrittenDocument(string Id, string Said, ImmutableArray<string> Lines);

/// <summary>The benches on a day by the log: what stands where, what is due, and what was written last.</summary>
internal sealed record BenchesDocument(
    DateOnly? Day,
    DateOnly? First,
    DateOnly? Last,
    string? Note,
    string? CannotWrite,
    ImmutableArray<DueDocument> Due,
    ImmutableArray<BenchDocument> Spaces,
    ImmutableArray<string> Batches,
    ImmutableArray<WrittenDocument> Written
)
{
    /// <summary>The words that may stand in the place of a count.</summary>
    public ImmutableArray<string> Words { get; } = [.. CountWords.All.Select(each => each.Word)];

    // A telephone shows about so many without a long way down.
    private const int MostWritten = 12;

    /// <summary>The benches cannot be told.</summary>
    /// <param name="note">Why, and what to do.</param>
    /// <param name="plan">The plan; null where there is none.</param>
    public static BenchesDocument Nothing(string note, SeasonPlan? plan = null) =>
        new(null, plan?.FirstDay, plan?.LastDay, note, null, [], [], [], []);

    /// <summary>The benches as they stand.</summary>
    /// <param name="today">The day.</param>
    /// <param name="desk">The desk.</param>
    /// <param name="log">What was written.</param>
    public static BenchesDocument Of(OpenedToday today, Desk desk, LogBook log)
    {
        var plan = today.Opened.Plan;
        var codes = ShortCodes.Of(plan);
        return new BenchesDocument(
            today.Today,
            plan.FirstDay,
            plan.LastDay,
            null,
            desk.ReadOnly ?? desk.InWorkbook(FileNames.Log),
            [.. today.Due.Select(job => Job(plan, codes, today, job))],
            [.. SpaceToday.Of(plan, today.Ledger, today.Today).Select((space, at) => Bench(plan, codes, today, space, at))],
            [.. plan.Batches.Select(batch => batch.Order.Id)],
            [.. log.Newest(MostWritten).Select(each => new WrittenDocument(each.Id, each.Said, each.Lines))]
        );
    }

    private static DueDocument Job(SeasonPlan plan, ShortCodes codes, OpenedToday today, DueJob job)
    {
        var batch = plan.Batches[job.Batch];
        return new DueDocument(
            TaskWords.Job(job.Kind),
            batch.Order.Id,
            codes.Full(batch),
            batch.CropAndVariety,
            batch.Order.Grower,
            job.AreFlats ? Numbers.Count(job.Count, "flat", "flats") : Numbers.Count(job.Count, "tray", "trays"),
            job.Space is { } space ? plan.Scenario.Spaces[space].Name : "",
            job.On,
            today.Today.DayNumber - job.On.DayNumber,
            LogCells.Of(PlannedRow.Of(plan, today.Ledger, job, today.Today))
        );
    }

    private static BenchDocument Bench(SeasonPlan plan, ShortCodes codes, OpenedToday today, SpaceToday space, int at) =>
        new(
            space.Space.Id,
            space.Space.Name,
            space.Held,
            space.Places,
            [
                .. today
                    .Ledger.Batches.Select((book, index) => Standing(plan, codes, today.Today, (index, at), book))
                    .Where(each => each.Trays + each.Flats > 0),
            ]
        );

    private static StandingDocument Standing(
        SeasonPlan plan,
        ShortCodes codes,
        DateOnly day,
        (int Batch, int Space) where,
        BatchLedger book
    )
    {
        var batch = plan.Batches[where.Batch];
        var (trays, flats) = (book.Standing(areFlats: false, where.Space), book.Standing(areFlats: true, where.Space));
        return new StandingDocument(
            batch.Order.Id,
            codes.Full(batch),
            batch.CropAndVariety,
            batch.Order.Grower,
            trays,
            flats,
            LotDocument.From(TraysByLot.Drawn(plan, where.Batch, where.Space, trays, flats))
        );
    }
}

/// <summary>A line of the log as cells.</summary>
internal static class LogCells
{
    /// <summary>The cells of a line by column; those that are empty are left out.</summary>
    public static ImmutableSortedDictionary<string, string> Of(LogEntry entry) =>
        LogFields
            .Table.Names.Select(name => KeyValuePair.Create(name, Cell(entry, name)))
            .Where(cell => cell.Value.Length > 0)
            .ToImmutableSortedDictionary(cell => cell.Key, cell => cell.Value, StringComparer.Ordinal);

    private static string Cell(LogEntry entry, string column) =>
        column switch
        {
            "date" => Dates.Iso(entry.Date),
            "batch" => entry.BatchId ?? "",
            "what" => LogFields.What.Write(entry.What, default),
            "trays" => Whole(entry.Trays),
            "flats" => Whole(entry.Flats),
            "from" => entry.From ?? "",
            "space" => entry.Space ?? "",
            _ => "",
        };

    private static string Whole(int? number) => number?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "";
}
