using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Review;

/// <summary>Sets a season that is over beside the plan that was agreed, and its forecasts beside what came.</summary>
public static class ReviewRunner
{
    /// <summary>Parts of which the review tells its progress: one a Monday, and one for the agreed plan.</summary>
    /// <param name="now">The plan as it is, with its log.</param>
    public static int Parts(SeasonPlan now)
    {
        ArgumentNullException.ThrowIfNull(now);
        return ForecastRunner.Mondays(now, OutOn(now, ReviewedBatch.Of(now, now))).Length + 1;
    }

    /// <summary>Reviews.</summary>
    /// <param name="agreed">The plan that was agreed; the plan as it is where none was.</param>
    /// <param name="now">The plan as it is, with its log, which has rows.</param>
    /// <param name="options">Seasons that are played of the agreed plan and on from each Monday, seed and threads.</param>
    /// <param name="progress">Told how many parts are done; null for nobody.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="ArgumentException">The log has no rows.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SeasonReview Play(
        SeasonPlan agreed,
        SeasonPlan now,
        StudyOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(agreed);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(options);
        if (now.Scenario.Log.IsEmpty)
        {
            throw new ArgumentException("A season is reviewed by its log, which has no rows.", nameof(now));
        }

        var batches = ReviewedBatch.Of(agreed, now);
        var outOn = OutOn(now, batches);
        var played = StudyRunner.Play(agreed, options, null, cancel);
        progress?.Report(1);
        var weeks = ImmutableArray.CreateBuilder<ForecastWeek>();
        foreach (var monday in ForecastRunner.Mondays(now, outOn))
        {
            weeks.Add(ForecastRunner.Play(now, monday, outOn, options, cancel));
            progress?.Report(weeks.Count + 1);
        }

        var fuel = FuelSpent.Of(now, played, WattHours(now, options.Seed, out var lacking), out var unread);
        return new SeasonReview
        {
            Plan = now,
            Agreed = played,
            Batches = batches,
            Kinds = ReviewedKind.Of(batches, LastRow(now)),
            Weeks = weeks.ToImmutable(),
            Minutes = MinutesSpent.Of(now),
            Fuel = fuel,
            FuelRowsUnread = unread,
            DaysLacking = lacking,
        };
    }

    private static DateOnly LastRow(SeasonPlan now) => now.Scenario.Log.Max(row => row.Date);

    private static ImmutableArray<DateOnly?> OutOn(SeasonPlan now, ImmutableArray<ReviewedBatch> batches) =>
        [.. batches.Take(now.Batches.Length).Select(batch => batch.OutOn)];

    // The days up to the last row are the same in every season.
    private static long[] WattHours(SeasonPlan now, ulong seed, out int lacking)
    {
        var after = LastRow(now).AddDays(1);
        var then = AsOf.Known(now, after < now.LastDay ? after : now.LastDay);
        lacking = then.Scenario.Known!.Lacking.Length;
        return [.. PastHeat.WattHours(then, seed).Select(days => days.Sum())];
    }
}
