using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Invest;

/// <summary>Plays a base and one variant on the same luck and works out the variant's money case.</summary>
public static class InvestRunner
{
    /// <summary>
    /// Plays every season of both with the same seed and to the same last day. The same input gives the same result to the last bit,
    /// whatever the number of threads.
    /// </summary>
    /// <param name="basePlan">Plan of the base.</param>
    /// <param name="variant">Name and plan of the variant, with its terms, on the first day of the base.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="progress">Told how many seasons are done, in rising order; null for nobody.</param>
    /// <param name="cancel">Stops the work within a season or so.</param>
    /// <exception cref="ArgumentException">The variant has no terms, or another first day.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 season, fewer than 0 threads, or a plan of no days.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before the work was done.</exception>
    public static InvestResult Play(
        SeasonPlan basePlan,
        (string Name, SeasonPlan Plan) variant,
        StudyOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(basePlan);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Seasons, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegative(options.Threads, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(basePlan.Days, 1, nameof(basePlan));
        if (variant.Plan?.Scenario.Invest is null || variant.Plan.FirstDay != basePlan.FirstDay)
        {
            throw new ArgumentException("A variant with terms, on the first day of the base.", nameof(variant));
        }

        var days = Math.Max(basePlan.Days, variant.Plan.Days);
        SeasonPlan[] plans = [basePlan with { Days = days }, variant.Plan with { Days = days }];
        var seasons = Count(plans, options, progress, cancel);
        return new InvestCase(plans[0], variant.Name, plans[1], seasons, options.Seed).ToResult(cancel);
    }

    private static MoneySeasons Count(SeasonPlan[] plans, StudyOptions options, IProgress<int>? progress, CancellationToken cancel)
    {
        var parts = SeasonPart.Of(plans);
        var seasons = new MoneySeasons(parts, options.Seasons);
        var climates = ClimateStore.OfOnePlay();
        SeasonPlayer[] first = [.. plans.Select(plan => new SeasonPlayer(plan, options.Seed, climates))];
        SeasonMoney[] readers = [.. plans.Select(plan => new SeasonMoney(plan, parts))];
        return new ParallelSeasons<MoneySeasons>(options, progress, cancel).Run(
            () => seasons,
            () => Worker(first, readers, parts.Length),
            (_, _) => { }
        );
    }

    private static Action<int, MoneySeasons> Worker(SeasonPlayer[] first, SeasonMoney[] readers, int parts)
    {
        SeasonPlayer[] players = [.. first.Select(player => player.Another())];
        SeasonResult[] results = [.. players.Select(_ => new SeasonResult())];
        long[][] quantities = [.. players.Select(_ => new long[parts])];
        long[][] costs = [.. players.Select(_ => new long[parts])];
        return (season, seasons) =>
        {
            for (var at = 0; at < players.Length; at++)
            {
                players[at].Play(season, PlaceLimits.AsGiven, results[at]);
                readers[at].Read(results[at], quantities[at], costs[at]);
            }

            for (var part = 0; part < parts; part++)
            {
                seasons.Set(season, part, quantities[1][part] - quantities[0][part], costs[1][part] - costs[0][part]);
            }

            seasons.SetFits(season, results[0].Fits, results[1].Fits);
        };
    }
}
