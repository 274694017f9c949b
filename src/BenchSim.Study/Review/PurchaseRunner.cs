using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Study.Mending;

namespace BenchSim.Study.Review;

/// <summary>
/// Judges a purchase after a season: the season as it was cannot be gone through otherwise, so the agreed plan is played with and without
/// it, in the weather that was and with seed and growth drawn, on the same luck.
/// </summary>
public static class PurchaseRunner
{
    // Fit and plants late, with the purchase on top and alone.
    private const int Intervals = 4;

    /// <summary>
    /// The search for what costs nothing, on the agreed plan and by the weather of any year, as it could have been before the season.
    /// </summary>
    /// <param name="agreed">The agreed plan.</param>
    /// <param name="changes">Makes the changes that may be made; those that are bought or of the order are left out.</param>
    /// <param name="planner">Makes plans of them.</param>
    /// <param name="options">How to look.</param>
    /// <param name="progress">Told parts of <see cref="MendRunner.ProgressParts"/>; null for nobody.</param>
    /// <param name="cancel">Stops the work.</param>
    public static MendResult Free(
        SeasonPlan agreed,
        Func<IReadOnlyList<MendChange>> changes,
        IMendPlanner planner,
        MendOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    ) =>
        MendRunner.Find(
            agreed,
            () => [.. changes().Where(change => !change.IsBought && !change.IsOfTheOrder)],
            planner,
            options,
            progress,
            cancel
        );

    /// <summary>Plays the plans.</summary>
    /// <param name="name">Name of the purchase.</param>
    /// <param name="sought">What costs nothing.</param>
    /// <param name="bought">The agreed plan with that and the purchase.</param>
    /// <param name="alone">The agreed plan with the purchase and nothing else.</param>
    /// <param name="seen">The weather that was observed.</param>
    /// <param name="last">The last day of the season that is over.</param>
    /// <param name="cancel">Stops the play.</param>
    /// <exception cref="ArgumentException">The purchase has other batches than the agreed plan.</exception>
    public static PurchaseJudged Judge(
        string name,
        MendResult sought,
        SeasonPlan bought,
        SeasonPlan alone,
        SeenWeather seen,
        DateOnly last,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(sought);
        ArgumentNullException.ThrowIfNull(bought);
        ArgumentNullException.ThrowIfNull(alone);
        ArgumentNullException.ThrowIfNull(seen);
        var agreed = sought.Plan;
        if (!HasSowingsOf(bought, agreed) || !HasSowingsOf(alone, agreed))
        {
            throw new ArgumentException("A purchase leaves the sowings as they are.", nameof(bought));
        }

        var free = sought.Steps.IsEmpty ? agreed : sought.Steps[^1].Plan;
        var days = new[] { agreed, free, bought, alone }.Max(plan => plan.Days);
        var known = Known(agreed, seen, last, out var observed);
        var plays = new MendPlays(sought.Options, cancel);
        var seasons = sought.Options.Seasons;
        var (asAgreed, asFree) = (In(agreed), In(free));
        var top = new MendTrial(plays, asFree, [In(bought)], Intervals, seasons);
        var first = new MendTrial(plays, asAgreed, [In(alone)], Intervals, seasons);
        return new PurchaseJudged
        {
            Name = name,
            Sought = sought,
            Seasons = seasons,
            Observed = observed,
            Agreed = first.Figures(0),
            Free = top.Figures(0),
            Bought = top.Figures(1),
            Gain = top.Gain(1),
            Alone = first.Gain(1),
        };

        SeasonPlan In(SeasonPlan plan) => plan with { Days = days, Scenario = plan.Scenario with { Known = known ?? plan.Scenario.Known } };
    }

    /// <summary>Whether two plans have the same sowings, in the same order, wherever they finish and stand in the files.</summary>
    public static bool HasSowingsOf(SeasonPlan plan, SeasonPlan other)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(other);
        return plan.Batches.Select(Sowing).SequenceEqual(other.Batches.Select(Sowing));

        static BatchOrder Sowing(BatchPlan batch) => batch.Order with { Place = default, Finish = [] };
    }

    // Days that nobody observed have normal weather; where none was, a season of normal days alone would be no season.
    private static KnownDays? Known(SeasonPlan agreed, SeenWeather seen, DateOnly last, out int observed)
    {
        var after = last.AddDays(1);
        var day = after < agreed.LastDay ? after : agreed.LastDay;
        var known = SeenDays.Of(agreed.Scenario with { Seen = seen with { Forecast = [] } }, day);
        observed = day > agreed.FirstDay ? day.DayNumber - agreed.FirstDay.DayNumber - known.Lacking.Length : 0;
        return observed > 0 ? known : null;
    }
}
