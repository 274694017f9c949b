using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;
using BenchSim.Study.Billing;
using BenchSim.Study.Coming;

namespace BenchSim.Report.Morning;

/// <summary>What the page of a day is made from, worked out once.</summary>
public sealed record TodaySheet
{
    /// <summary>The plan.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>What stands where.</summary>
    public required BenchLedger Ledger { get; init; }

    /// <summary>What the next days bring.</summary>
    public required ComingDays Coming { get; init; }

    /// <summary>The jobs, numbered from 1 in the order of the page, so that they can be answered in one line.</summary>
    public required ImmutableArray<NumberedJob> Jobs { get; init; }

    /// <summary>What to do on a cold night.</summary>
    public required ColdCard Cold { get; init; }

    /// <summary>What would come of it if a heater stopped tonight; empty where tonight's low is not forecast.</summary>
    public required ImmutableArray<HeaterOut> HeaterOut { get; init; }

    /// <summary>Short codes of the batches, as they stand on the labels.</summary>
    public required ShortCodes Codes { get; init; }

    /// <summary>The last day to sow each batch again; null where there is none, or it is not asked for.</summary>
    public required ImmutableArray<DateOnly?> LastSowings { get; init; }

    /// <summary>The bill so far by the rule that was agreed; null where none was.</summary>
    public BillSoFar? Bill { get; init; }

    /// <summary>Works it out.</summary>
    /// <param name="plan">The plan as it was read.</param>
    /// <param name="today">The day.</param>
    /// <param name="ledger">Ledger up to the day.</param>
    /// <param name="due">What is due and has no row.</param>
    /// <param name="coming">What the next days bring.</param>
    public static TodaySheet Of(SeasonPlan plan, DateOnly today, BenchLedger ledger, ImmutableArray<DueJob> due, ComingDays coming)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(ledger);
        ArgumentNullException.ThrowIfNull(coming);
        var cold = ColdCard.Of(plan, ledger, today);
        return new TodaySheet
        {
            Plan = plan,
            Today = today,
            Ledger = ledger,
            Coming = coming,
            Jobs = NumberedJob.Of(coming.Jobs, due),
            Cold = cold,
            HeaterOut = cold.Lows[0] is { } low
                ? Season.Logbook.HeaterOut.Of(plan, ledger, low + cold.Own.CorrectionK - ColdNight.InHandK)
                : [],
            Codes = ShortCodes.Of(plan),
            LastSowings = Season.Planning.LastSowings.Of(plan, index => IsUnderWay(plan, ledger, index)),
        };
    }

    /// <summary>Whether something of a batch stands, or is still to be sown.</summary>
    /// <param name="index">Position of the batch.</param>
    public bool IsUnderWay(int index) => IsUnderWay(Plan, Ledger, index);

    /// <summary>The growers, in order of name.</summary>
    public ImmutableArray<string> Growers =>
        [.. Plan.Batches.Select(batch => batch.Order.Grower).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    private static bool IsUnderWay(SeasonPlan plan, BenchLedger ledger, int index) =>
        !ledger.Batches[index].Piles.IsEmpty || DueWork.Unsown(plan.Batches[index], ledger.Batches[index]) > 0;
}
