using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Sizing;

/// <summary>Finds the smallest number of places of a space with which a plan fits often enough.</summary>
public static class SizeRunner
{
    /// <summary>Up to so many numbers of places all of them are played.</summary>
    internal const int MostPlayedWhole = 40;

    /// <summary>Steps of the first look at a longer curve.</summary>
    internal const int FirstSteps = 16;

    /// <summary>Numbers below an answer that are played too, in case fewer places do as well.</summary>
    internal const int Below = 3;

    /// <summary>Thousandths that progress is told in.</summary>
    public const int ProgressParts = SizeProgress.Parts;

    /// <summary>
    /// Plays numbers of places of one space on the same luck, with the planned dates as they are, until the smallest that meets the goal is
    /// found: the whole curve where it is short or asked for, otherwise evenly spaced numbers, then the halves of the first gap between a
    /// miss and a hit, then the next few below. The same input gives the same result to the last bit, whatever the number of threads.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="space">Position of the space in the scenario.</param>
    /// <param name="goal">What has to be met.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="progress">Told thousandths of about the whole, rising; null for nobody.</param>
    /// <param name="cancel">Stops the play within a season or so.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// No such space, a goal or confidence not between 0 and 1, fewer than 1 season, fewer than 0 threads, or a plan of no days.
    /// </exception>
    /// <exception cref="OperationCanceledException">Cancelled before the end.</exception>
    public static SizeResult Find(
        SeasonPlan plan,
        int space,
        SizeGoal goal,
        StudyOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(goal);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfNegative(space);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(space, plan.Scenario.Spaces.Length);
        Confidence.ThrowIfOutside(goal.Share, nameof(goal));
        Confidence.ThrowIfOutside(goal.Confidence, nameof(goal));
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Seasons, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegative(options.Threads, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(plan.Days, 1, nameof(plan));
        SeasonPlayer player = new(plan, options.Seed, new ClimateStore());
        SizeProgress told = new(progress, options.Seasons);
        told.Plan(2 + FirstSteps + Below);
        var ceiling = Ceiling(player, space, options, told, cancel);
        var largest = Math.Max(ceiling.Peak + 1, plan.Scenario.Spaces[space].Places);
        SizeCurve curve = new(player, space, goal, options, told, cancel);
        var isWhole = goal.Every || largest < MostPlayedWhole;
        if (isWhole)
        {
            told.Plan(largest + 1);
            curve.Play(Enumerable.Range(0, largest + 1));
        }
        else
        {
            Search(curve, largest, plan.Scenario.Spaces[space].Places, told);
        }

        var points = curve.Points;
        return new SizeResult
        {
            Plan = plan,
            Space = plan.Scenario.Spaces[space],
            Goal = goal,
            Seasons = options.Seasons,
            Seed = options.Seed,
            Answer = points.FirstOrDefault(point => point.IsMet),
            Curve = points,
            Largest = largest,
            IsWhole = isWhole,
            Unlimited = ceiling.Unlimited.ToPoint(null, goal),
            Everywhere = ceiling.Everywhere.ToPoint(null, goal),
            Waits = ceiling.Waits.ToResults(new Telling(plan.FirstDay, options.Seasons)),
            FewestSeasons = FewestSeasons(goal),
        };
    }

    private static SizeCeiling Ceiling(
        SeasonPlayer player,
        int space,
        StudyOptions options,
        SizeProgress progress,
        CancellationToken cancel
    )
    {
        PlanShape shape = new(player.Plan);
        var limits = PlaceLimits.Without(space);
        return new ParallelSeasons<SizeCeiling>(options, progress.Of(2), cancel).Run(
            () => new SizeCeiling(shape, space),
            () =>
            {
                (var own, var unlimited, var everywhere) = (player.Another(), new SeasonResult(), new SeasonResult());
                return (season, count) =>
                {
                    own.Play(season, limits, unlimited);
                    own.Play(season, PlaceLimits.None, everywhere);
                    count.Add(unlimited, everywhere);
                };
            },
            (sum, other) => sum.Merge(other)
        );
    }

    // More places need not be better at every step, for who goes first changes with them; so the first gap of an evenly spaced look is
    // halved, not that of the whole range, and the answer's nearest smaller numbers are played too.
    private static void Search(SizeCurve curve, int largest, int given, SizeProgress progress)
    {
        progress.Plan(FirstSteps + 2 + Below + (int)Math.Ceiling(Math.Log2(Math.Max(2.0, (double)largest / FirstSteps))));
        curve.Play([.. Enumerable.Range(0, FirstSteps + 1).Select(step => (int)((long)largest * step / FirstSteps)), given]);
        if (!curve.Points.Any(point => point.IsMet))
        {
            LookAroundBest(curve);
        }

        if (curve.Points.FirstOrDefault(point => point.IsMet) is not { Places: { } hit })
        {
            return;
        }

        var miss = curve.Points.LastOrDefault(point => point.Places < hit)?.Places ?? -1;
        while (hit - miss > 1)
        {
            var middle = miss + ((hit - miss) / 2);
            if (curve.At(middle).IsMet)
            {
                hit = middle;
            }
            else
            {
                miss = middle;
            }
        }

        for (var next = hit - 1; next >= Math.Max(0, hit - Below); next--)
        {
            if (curve.At(next).IsMet)
            {
                hit = next;
            }
        }
    }

    // Where too many places are as bad as too few, the hit can lie between two steps: around the best step, if that may be a hit.
    private static void LookAroundBest(SizeCurve curve)
    {
        var points = curve.Points;
        var best = points.MaxBy(point => point.Fits.Share)!;
        var at = points.IndexOf(best);
        var from = points[Math.Max(0, at - 1)].Places ?? 0;
        var to = points[Math.Min(points.Length - 1, at + 1)].Places ?? 0;
        if (curve.CouldMeet(best))
        {
            curve.Play(Enumerable.Range(from, to - from + 1));
        }
    }

    // All of n fit: the lower end of Wilson's interval is n / (n + z^2).
    private static int FewestSeasons(SizeGoal goal)
    {
        var z = Confidence.NormalReach(goal.Confidence);
        return (int)Math.Min(int.MaxValue, Math.Ceiling(z * z * goal.Share / (1 - goal.Share)));
    }
}
