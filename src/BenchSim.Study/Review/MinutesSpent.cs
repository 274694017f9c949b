using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Review;

/// <summary>Work that somebody timed, by what was done.</summary>
/// <param name="What">What was done.</param>
/// <param name="Rows">Rows of that.</param>
/// <param name="Timed">Rows with minutes.</param>
/// <param name="Minutes">Their minutes.</param>
/// <param name="ByTheRules">
/// What [work_minutes] and [work_seconds] of the site say for the same trays, minutes; null where they say nothing of such work.
/// </param>
public sealed record MinutesSpent(LogKind What, int Rows, int Timed, double Minutes, double? ByTheRules)
{
    /// <summary>What was timed, in order of the work.</summary>
    /// <param name="plan">The plan, with its log.</param>
    internal static ImmutableArray<MinutesSpent> Of(SeasonPlan plan)
    {
        var batches = plan.Batches.ToDictionary(batch => batch.Order.Id, StringComparer.Ordinal);
        return
        [
            .. plan
                .Scenario.Log.GroupBy(row => row.What)
                .Where(group => group.Any(row => row.Minutes is not null))
                .OrderBy(group => group.Key)
                .Select(group =>
                {
                    LogEntry[] timed = [.. group.Where(row => row.Minutes is not null)];
                    double?[] rules = [.. timed.Select(row => ByRules(plan.Scenario.Rules, batches, row))];
                    return new MinutesSpent(
                        group.Key,
                        group.Count(),
                        timed.Length,
                        timed.Sum(row => row.Minutes!.Value),
                        rules.Any(each => each is null) ? null : rules.Sum()
                    );
                }),
        ];
    }

    private static double? ByRules(SiteRules rules, Dictionary<string, BatchPlan> batches, LogEntry row)
    {
        const double SecondsAMinute = 60;
        if (row.BatchId is not { } id || !batches.TryGetValue(id, out var batch))
        {
            return null;
        }

        var (pieces, minutes) = ((row.Trays ?? 0) + (row.Flats ?? 0), rules.Minutes);
        return row.What switch
        {
            LogKind.Sown => pieces
                * (
                    minutes.Sow
                    + (
                        rules.Seconds.Sowing(
                            batch.Flat ?? batch.Tray,
                            batch.Flat is null ? batch.Order.SeedsPerCell : batch.Order.SeedsPerFlat
                        ) / SecondsAMinute
                    )
                ),
            LogKind.PottedUp => (row.Trays ?? 0) * (minutes.PotUp + (rules.Seconds.PottingUp(batch.Tray) / SecondsAMinute)),
            LogKind.Moved => pieces * minutes.Move,
            LogKind.SetOut or LogKind.HandedOver => pieces * minutes.SetOut,
            LogKind.CarriedIn => pieces * minutes.CarryIn,
            _ => null,
        };
    }
}
