using System.Collections.Immutable;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>
/// What decides: where room runs out, and by name the batches that wait for a place, those that the weather holds, and those that are slow,
/// the worst three of each.
/// </summary>
internal static class VerdictDecides
{
    private const int MostNamed = 3;
    private const int LongestName = 20;

    // Days a tray, and share of the plants, below which a batch decides nothing.
    private const double FewDays = 0.5;
    private const double FewLate = 0.005;

    public static ImmutableArray<string> Sentences(StudyResult result) =>
        [.. new[] { Room(result), Held(result), Slow(result) }.OfType<string>()];

    /// <summary>Mean days that a tray of the batch waits for a place.</summary>
    public static double DaysWaited(BatchResult batch) => batch.BlockedTrayDays.Sum(space => space.Mean) / TraysOf(batch);

    /// <summary>Mean days on which the weather alone holds a tray of the batch.</summary>
    public static double DaysHeld(BatchResult batch) => batch.HoldTrayDays.Mean / TraysOf(batch);

    /// <summary>Trays of the batch, or its flats where they are more.</summary>
    public static int TraysOf(BatchResult batch) => Math.Max(batch.Plan.Trays, batch.Plan.Flats);

    private static string? Room(StudyResult result)
    {
        GroupResult[] full = [.. result.Groups.Where(group => group.RunsOut.Hits > 0).OrderByDescending(group => group.RunsOut.Hits)];
        if (full.Length == 0)
        {
            return null;
        }

        var waiting = Worst(result, DaysWaited, FewDays);
        var where = $"Out of room: {string.Join("; ", full.Select((group, at) => Full(result, group, at == 0)))}.";
        return waiting.Length == 0 ? where : $"{where} Longest wait: {Named(waiting, DaysWaited)}.";
    }

    // "heat mats in all seasons, from 14 April, 29 trays waiting on the worst day".
    private static string Full(StudyResult result, GroupResult group, bool isFirst)
    {
        var share = (result.Seasons, group.RunsOut.Hits) switch
        {
            (1, _) => "",
            _ when group.RunsOut.Hits == group.RunsOut.Seasons => " in all seasons",
            _ => $" in {ChanceWords.Brief(group.RunsOut)} {(result.Seasons < Numbers.EnoughSeasons ? "" : "of ")}seasons",
        };
        var from = group.RunsOutOn.P50 is { } day ? $", from {new Dates(result.Plan).Plain(day)}" : "";
        (var one, var many) = VerdictSpaces.Unit(result);
        var worst = group.WorstWaiting.P50;
        return $"{Trade.Spaces(result.Plan.Scenario, group.Kind)}{share}{from}"
            + (worst > 0 ? $", {Numbers.Count(worst, one, many)}{(isFirst ? " waiting on the worst day" : "")}" : "");
    }

    private static string? Held(StudyResult result)
    {
        var held = Worst(result, DaysHeld, FewDays);
        return held.Length == 0 ? null : $"The weather holds longest: {Named(held, DaysHeld)}.";
    }

    // Late with hardly a wait: held days do not count as late, so that slow growth is what is left.
    private static string? Slow(StudyResult result)
    {
        BatchResult[] slow =
        [
            .. result
                .Batches.Where(batch => LateShare(batch) >= FewLate && DaysWaited(batch) < FewDays)
                .OrderByDescending(LateShare)
                .Take(MostNamed),
        ];
        return slow.Length == 0
            ? null
            : "Slow: "
                + PlainText.List([
                    .. slow.Select(
                        (batch, at) =>
                            at == 0
                                ? $"{Id(batch)} ({Numbers.Count(batch.Plan.DaysInHand, "day", "days")} in hand, "
                                    + $"{ChanceWords.Percent(LateShare(batch))} of its plants late)"
                                : $"{Id(batch)} ({Numbers.Whole(batch.Plan.DaysInHand)}, {ChanceWords.Percent(LateShare(batch))})"
                    ),
                ])
                + ".";
    }

    /// <summary>Share of the plants of the batch that are late, mean.</summary>
    public static double LateShare(BatchResult batch) => VerdictFelt.MeanLate(batch) / batch.Plan.Order.Plants;

    private static BatchResult[] Worst(StudyResult result, Func<BatchResult, double> days, double least) =>
        [.. result.Batches.Where(batch => days(batch) >= least).OrderByDescending(days).Take(MostNamed)];

    private static string Named(BatchResult[] batches, Func<BatchResult, double> days) =>
        PlainText.List([.. batches.Select((batch, at) => $"{Id(batch)} {Numbers.Short(days(batch))}{(at == 0 ? " days a tray" : "")}")]);

    private static string Id(BatchResult batch) => PlainText.Short(batch.Plan.Order.Id, LongestName);
}
