using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Labels;

/// <summary>The label of one tray or flat.</summary>
/// <param name="Batch">Batch.</param>
/// <param name="Short">Short code of the batch, with the mark of its grower where there are several.</param>
/// <param name="IsFlat">True for an open flat.</param>
/// <param name="Number">Its number in the batch, from 1.</param>
/// <param name="Of">Trays, or flats, in the batch.</param>
internal sealed record TrayLabel(BatchPlan Batch, string Short, bool IsFlat, int Number, int Of)
{
    private const int LongestIdInCode = 40;

    /// <summary>The day it is filled and needs its label: sown, or potted up.</summary>
    public DateOnly FilledOn => !IsFlat && Batch.PotUpOn is { } potUp ? potUp : Batch.SowOn;

    /// <summary>"tray", "flat" or "potted tray".</summary>
    public string What =>
        IsFlat ? "flat"
        : Batch.Flat is null ? "tray"
        : "potted tray";

    /// <summary>"tray 3 of 12".</summary>
    public string Count => $"{What} {Number} of {Of}";

    /// <summary>
    /// What the square code holds, short enough to be read from a small label: batch (its first 40 letters),
    /// tray, sow date and set-out date.
    /// </summary>
    public string Code =>
        $"{PlainText.Short(Batch.Order.Id, LongestIdInCode)}; {(IsFlat ? "flat" : "tray")} {Number}/{Of}; sow {Dates.Iso(Batch.SowOn)}; "
        + $"out {Dates.Iso(Batch.SetOutOn)}";

    /// <summary>The labels of a plan for what is filled from one date to another, in order of filling, batch and number.</summary>
    /// <param name="plan">The plan, with the batches that are asked for.</param>
    /// <param name="codes">Short codes of the whole plan.</param>
    /// <param name="from">First date.</param>
    /// <param name="to">Last date.</param>
    public static ImmutableArray<TrayLabel> All(SeasonPlan plan, ShortCodes codes, DateOnly from, DateOnly to) =>
        [
            .. plan
                .Batches.SelectMany(batch => OfBatch(batch, codes.Full(batch)))
                .Where(label => label.FilledOn >= from && label.FilledOn <= to)
                .OrderBy(label => label.FilledOn)
                .ThenBy(label => label.Batch.SetOutOn)
                .ThenBy(label => label.Batch.Order.Id, StringComparer.Ordinal)
                .ThenBy(label => label.Number),
        ];

    private static IEnumerable<TrayLabel> OfBatch(BatchPlan batch, string code) =>
        Enumerable
            .Range(1, batch.Flats)
            .Select(number => new TrayLabel(batch, code, true, number, batch.Flats))
            .Concat(Enumerable.Range(1, batch.Trays).Select(number => new TrayLabel(batch, code, false, number, batch.Trays)));
}
