using BenchSim.Report.Words;
using BenchSim.Season.Play;
using BenchSim.Study.Results;

namespace BenchSim.Report.Charts;

/// <summary>The median dates of a batch as days of the play, in order, ready to draw; null where a phase does not happen
/// in at least half of the seasons.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Mat">On the mats.</param>
/// <param name="Bench">On the benches.</param>
/// <param name="Table">On the hardening table.</param>
/// <param name="PottedUp">Day of potting up.</param>
/// <param name="Wanted">Planned set-out day.</param>
internal sealed record BatchBar(
    BatchResult Batch,
    (int From, int To)? Mat,
    (int From, int To)? Bench,
    (int From, int To)? Table,
    int? PottedUp,
    int Wanted
)
{
    /// <summary>What stands in place of the bars: a batch that most seasons do not sow, or throw out before it
    /// goes to the field, has none.</summary>
    public string? Note { get; private init; }

    /// <summary>Mean days that a tray of the batch waited for a place: all its waiting, divided by its trays.</summary>
    public double WaitDays => WaitDaysOf(Batch);

    /// <summary>Mean days that a tray of the batch was held by the weather alone.</summary>
    public double HoldDays => HoldDaysOf(Batch);

    /// <summary>The two as stretches that end where the bars do, the weather's last; none shorter than a twentieth of a day.</summary>
    public IEnumerable<(bool IsHold, double From, double To)> Lost()
    {
        if ((Table ?? Bench ?? Mat) is not { } last)
        {
            yield break;
        }

        double end = last.To;
        foreach ((var isHold, var days) in new[] { (true, HoldDays), (false, WaitDays) })
        {
            if (days < 0.05)
            {
                continue;
            }

            yield return (isHold, end - days, end);
            end -= days;
        }
    }

    /// <summary><see cref="WaitDays"/> of a batch.</summary>
    public static double WaitDaysOf(BatchResult batch) => batch.BlockedTrayDays.Sum(space => space.Mean) / Math.Max(1, batch.Plan.Trays);

    /// <summary><see cref="HoldDays"/> of a batch.</summary>
    public static double HoldDaysOf(BatchResult batch) => batch.HoldTrayDays.Mean / Math.Max(1, batch.Plan.Trays);

    /// <summary>Works out the bars of one batch.</summary>
    public static BatchBar Of(BatchResult batch, DateOnly firstDay, int lastDay)
    {
        int? Day(DateSpread spread) => spread is { P50: { } day } && spread.IsUsual() ? day.DayNumber - firstDay.DayNumber : null;
        var wanted = batch.Plan.SetOutOn.DayNumber - firstDay.DayNumber;
        if (NoteOf(batch) is { } note)
        {
            return new BatchBar(batch, null, null, null, null, wanted) { Note = note };
        }

        var sown = Day(batch.SownFirst);
        var off = Day(batch.OffMat);
        var table = Day(batch.OnTable);
        var gone = Day(batch.OutLast);
        (int, int)? mat = null;
        (int, int)? bench = null;
        (int, int)? hardening = null;
        if (sown is { } start)
        {
            // Each median is taken over its own seasons, so they may stand out of order by a day or so.
            var end = Math.Max(start, gone ?? lastDay);
            var onTable = Math.Clamp(table ?? end, start, end);
            var onBench = off is { } left ? Math.Clamp(left, start, onTable) : start;
            mat = off is null ? null : (start, onBench);
            bench = (onBench, onTable);
            hardening = table is null ? null : (onTable, end);
        }

        return new BatchBar(batch, mat, bench, hardening, Day(batch.PottedUp), wanted);
    }

    private static string? NoteOf(BatchResult batch)
    {
        if (!batch.SownFirst.IsUsual())
        {
            return batch.SownFirst.Happened == 0
                ? "never sown"
                : $"sown in {Spreads.OfAll(batch.SownFirst.Happened, batch.SownFirst.Seasons)}";
        }

        var thrownOut = batch.Discarded.Any(pair => pair.Value.P50 > 0 && pair.Key != nameof(DiscardReason.Surplus));
        if (!thrownOut || batch.OutLast.IsUsual())
        {
            return null;
        }

        return batch.OutLast.Happened == 0
            ? "never out: thrown out"
            : $"out in {Spreads.OfAll(batch.OutLast.Happened, batch.OutLast.Seasons)}, else thrown out";
    }

    /// <summary>The batches drawn, by grower; growers in order of name, batches in order of the plan.</summary>
    public static IReadOnlyList<(string Grower, BatchBar[] Bars)> ByGrower(StudyResult result) =>
        [
            .. DrawnBatches
                .Of(result)
                .GroupBy(batch => batch.Plan.Order.Grower, StringComparer.Ordinal)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => (group.Key, group.Select(batch => Of(batch, result.Plan.FirstDay, result.Plan.Days - 1)).ToArray())),
        ];
}
