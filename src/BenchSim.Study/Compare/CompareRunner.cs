using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Compare;

/// <summary>Plays a base and its variants on the same luck and counts the differences, season by season.</summary>
public static class CompareRunner
{
    /// <summary>
    /// Plays every season of the base and of each variant with the same seed. All are played to the same last day, the latest that any of
    /// them needs. The same input gives the same result to the last bit, whatever the number of threads.
    /// </summary>
    /// <param name="basePlan">Plan of the base.</param>
    /// <param name="variants">Names and plans of the variants, one or more, on the first day of the base.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="progress">Told how many seasons are done, in rising order; null for nobody.</param>
    /// <param name="cancel">Stops the play within a season or so.</param>
    /// <exception cref="ArgumentException">No variants, or one on another first day.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 season, fewer than 0 threads, or a plan of no days.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before the last season was done.</exception>
    public static CompareResult Play(
        SeasonPlan basePlan,
        IReadOnlyList<(string Name, SeasonPlan Plan)> variants,
        StudyOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(basePlan);
        ArgumentNullException.ThrowIfNull(variants);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Seasons, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegative(options.Threads, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(basePlan.Days, 1, nameof(basePlan));
        if (variants.Count == 0 || variants.Any(variant => variant.Plan.FirstDay != basePlan.FirstDay))
        {
            throw new ArgumentException("One variant or more, on the first day of the base.", nameof(variants));
        }

        var days = variants.Select(variant => variant.Plan.Days).Append(basePlan.Days).Max();
        SeasonPlan[] plans = [.. variants.Select(variant => variant.Plan).Prepend(basePlan).Select(plan => plan with { Days = days })];
        var measures = Figures.Measures.Of(plans, days);
        var tallies = Count(plans, measures, options, progress, cancel);

        var comparisons = variants.Count * (measures.Length + 1);
        var each = Confidence.OfEach(comparisons);
        return new CompareResult
        {
            Base = plans[0],
            Seasons = options.Seasons,
            Seed = options.Seed,
            Confidence = Confidence.Usual,
            Comparisons = comparisons,
            EachConfidence = each,
            Measures = measures,
            Variants =
            [
                .. variants.Select(
                    (variant, at) =>
                        new VariantResult
                        {
                            Name = variant.Name,
                            Plan = plans[at + 1],
                            Fits = tallies[at].Fits(each),
                            Changes = tallies[at].Changes(measures, each),
                        }
                ),
            ],
        };
    }

    private static PairedTally[] Count(
        SeasonPlan[] plans,
        ImmutableArray<Measure> measures,
        StudyOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        // The weather and heat of a season are those of all plans that do not change them.
        var climates = ClimateStore.OfOnePlay();
        SeasonPlayer[] first = [.. plans.Select(plan => new SeasonPlayer(plan, options.Seed, climates))];
        return new ParallelSeasons<PairedTally[]>(options, progress, cancel).Run(
            () => [.. Enumerable.Range(1, plans.Length - 1).Select(_ => new PairedTally(measures.Length))],
            () => Worker(first, measures),
            Merge
        );
    }

    private static Action<int, PairedTally[]> Worker(SeasonPlayer[] first, ImmutableArray<Measure> measures)
    {
        SeasonPlayer[] players = [.. first.Select(player => player.Another())];
        SeasonResult[] results = [.. players.Select(_ => new SeasonResult())];
        MeasuredSeason[] seasons = [.. players.Select(player => new MeasuredSeason(player.Plan))];
        long[][] values = [.. players.Select(_ => new long[measures.Length])];
        return (season, tallies) =>
        {
            for (var at = 0; at < players.Length; at++)
            {
                players[at].Play(season, PlaceLimits.AsGiven, results[at]);
                seasons[at].Read(results[at], measures, values[at]);
            }

            for (var at = 0; at < tallies.Length; at++)
            {
                tallies[at].Add(results[0], values[0], results[at + 1], values[at + 1]);
            }
        };
    }

    private static void Merge(PairedTally[] sum, PairedTally[] other)
    {
        for (var at = 0; at < sum.Length; at++)
        {
            sum[at].Merge(other[at]);
        }
    }
}
