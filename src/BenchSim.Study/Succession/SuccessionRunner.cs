using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Succession;

/// <summary>Plays schedules of successions for one line of a plan, each on the same luck.</summary>
public static class SuccessionRunner
{
    /// <summary>
    /// Plays every schedule. All are played to the same last day, the latest that any needs, so that what never goes out is charged alike.
    /// The same input gives the same result to the last bit, whatever the number of threads.
    /// </summary>
    /// <param name="plan">The plan as it is.</param>
    /// <param name="line">The line to try.</param>
    /// <param name="schedules">Schedules, one or more.</param>
    /// <param name="supply">How long one set-out supplies.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="progress">Told how many seasons of all schedules are done, in rising order; null for nobody.</param>
    /// <param name="cancel">Stops the play within a season or so.</param>
    /// <exception cref="ArgumentException">No schedules.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before the last season was done.</exception>
    public static SuccessionResult Play(
        SeasonPlan plan,
        SuccessionLine line,
        IReadOnlyList<Schedule> schedules,
        SupplyRule supply,
        StudyOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(schedules);
        ArgumentNullException.ThrowIfNull(supply);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Seasons, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegative(options.Threads, nameof(options));
        if (schedules.Count == 0)
        {
            throw new ArgumentException("One schedule or more.", nameof(schedules));
        }

        (SeasonPlan? Plan, string WhyNot)[] plans = [.. schedules.Select(schedule => PlanOf(plan, line, schedule))];
        var days = plans.Max(each => each.Plan?.Days ?? 0);
        var results = ImmutableArray.CreateBuilder<ScheduleResult>(plans.Length);
        var done = 0;
        for (var at = 0; at < plans.Length; at++)
        {
            if (plans[at].Plan is not { } own)
            {
                results.Add(new ScheduleResult(schedules[at], null, plans[at].WhyNot));
                continue;
            }

            var tally = Count(
                own with
                {
                    Days = days,
                },
                line,
                schedules[at],
                supply,
                options,
                progress is null ? null : new Later(progress, done),
                cancel
            );
            results.Add(new ScheduleResult(schedules[at], tally.ToFigures(own, options.Seasons), ""));
            done += options.Seasons;
        }

        return new SuccessionResult
        {
            Plan = plan,
            Line = line,
            Supply = supply,
            Seasons = options.Seasons,
            Seed = options.Seed,
            Schedules = results.MoveToImmutable(),
        };
    }

    private static (SeasonPlan? Plan, string WhyNot) PlanOf(SeasonPlan plan, SuccessionLine line, Schedule schedule)
    {
        var last = line.Succession(schedule.Every, schedule.Times - 1);
        if ((last.SetOut ?? last.Sow) > plan.Scenario.Window.Closes)
        {
            return (null, "its last date is after the season closes");
        }

        var made = VariantPlanner.Make(plan, line.Of(plan.Scenario, schedule.Every, schedule.Times));
        return made.Plan is { } own ? (own, "") : (null, made.Faults[0].What);
    }

    private static SuccessionTally Count(
        SeasonPlan plan,
        SuccessionLine line,
        Schedule schedule,
        SupplyRule supply,
        StudyOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        HashSet<string> ids = [.. Enumerable.Range(0, schedule.Times).Select(index => line.Succession(schedule.Every, index).Id)];
        int[] successions = [.. Enumerable.Range(0, plan.Batches.Length).Where(at => ids.Contains(plan.Batches[at].Order.Id))];
        SeasonPlayer first = new(plan, options.Seed);
        return new ParallelSeasons<SuccessionTally>(options, progress, cancel).Run(
            () => new SuccessionTally(supply, successions, plan.Days),
            () =>
            {
                var player = first.Another();
                var season = new SeasonResult();
                return (number, tally) =>
                {
                    player.Play(number, PlaceLimits.AsGiven, season);
                    tally.Add(season, RoomySeason.NotPlayed);
                };
            },
            (sum, other) => sum.Merge(other)
        );
    }

    private sealed class Later(IProgress<int> progress, int before) : IProgress<int>
    {
        public void Report(int value) => progress.Report(before + value);
    }
}
