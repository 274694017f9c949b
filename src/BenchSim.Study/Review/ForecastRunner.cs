using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Study.Review;

/// <summary>Plays a season that is over on from each of its Mondays, as if it were that morning.</summary>
internal static class ForecastRunner
{
    /// <summary>
    /// The Mondays on which a forecast is made: from the first after the first row on to the last before the last batch went out.
    /// </summary>
    /// <param name="plan">The plan, with its log.</param>
    /// <param name="outOn">The day on which each batch went out, by the log; null where it did not.</param>
    public static ImmutableArray<DateOnly> Mondays(SeasonPlan plan, ImmutableArray<DateOnly?> outOn)
    {
        if (plan.Scenario.Log.IsEmpty || outOn.Max() is not { } last)
        {
            return [];
        }

        var first = TableNights.MondayOf(plan.Scenario.Log.Min(row => row.Date)).AddDays(SeasonResult.DaysAWeek);
        last = last < plan.LastDay ? last : plan.LastDay;
        return
        [
            .. Enumerable
                .Range(0, Math.Max(0, ((last.DayNumber - first.DayNumber) / SeasonResult.DaysAWeek) + 1))
                .Select(week => first.AddDays(week * SeasonResult.DaysAWeek))
                .Where(day => day >= plan.FirstDay && day <= last),
        ];
    }

    /// <summary>Plays on from one of them.</summary>
    /// <param name="plan">The plan, with the log and the weather of the whole season.</param>
    /// <param name="day">The day.</param>
    /// <param name="outOn">The day on which each batch went out, by the log; null where it did not.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="cancel">Stops the play.</param>
    public static ForecastWeek Play(
        SeasonPlan plan,
        DateOnly day,
        ImmutableArray<DateOnly?> outOn,
        StudyOptions options,
        CancellationToken cancel
    )
    {
        var then = AsOf.Of(plan, day);
        var first = new SeasonPlayer(then, options.Seed);
        var days = new ParallelSeasons<int[][]>(options, null, cancel).Run(
            () => new int[options.Seasons][],
            () =>
            {
                var (player, result) = (first.Another(), new SeasonResult());
                return (season, seen) =>
                {
                    player.Play(season, PlaceLimits.AsGiven, result);
                    seen[season] = [.. result.Batches.Select(batch => batch.OutMedian)];
                };
            },
            Merge
        );
        return new ForecastWeek(
            day,
            [
                .. outOn
                    .Select((on, batch) => (On: on, Batch: batch))
                    .Where(each => each.On >= day)
                    .Select(each => Case(plan, each.Batch, each.On!.Value, [.. days.Select(season => season[each.Batch])])),
            ]
        );
    }

    // A season is played by one thread.
    private static void Merge(int[][] seen, int[][] other)
    {
        for (var season = 0; season < seen.Length; season++)
        {
            seen[season] ??= other[season];
        }
    }

    private static ForecastCase Case(SeasonPlan plan, int batch, DateOnly outOn, int[] days)
    {
        // One that never goes out comes after all others.
        int[] sorted = [.. days.Select(day => day < 0 ? int.MaxValue : day).Order()];
        return new ForecastCase(batch, At(1), At(5), At(9), outOn);

        DateOnly? At(int ofTen) =>
            sorted[(((sorted.Length * ofTen) + 9) / 10) - 1] is < int.MaxValue and var day ? plan.FirstDay.AddDays(day) : null;
    }
}
