using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Coming;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Billing;

/// <summary>Plays seasons and divides what the growers share.</summary>
public static class BillRunner
{
    /// <summary>Plays seasons, and divides each by every rule.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="options">Seasons, seed and threads. The answer does not depend on the threads.</param>
    /// <param name="progress">Told how many seasons are done; null for nobody.</param>
    /// <param name="cancel">Stops the play.</param>
    /// <exception cref="OperationCanceledException">Cancelled before the last season was done.</exception>
    public static BillForecast Play(SeasonPlan plan, StudyOptions options, IProgress<int>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        var things = new SharedThings(plan);
        var first = new SeasonPlayer(plan, options.Seed);
        var tally = new ParallelSeasons<Tally>(options, progress, cancel).Run(
            () => new Tally(things.Growers.Length, plan.Batches.Length, options.Seasons),
            () =>
            {
                var (player, result, witness) = (first.Another(), new SeasonResult(), new BillWitness(things, plan.Days));
                return (season, tally) =>
                {
                    player.Play(season, PlaceLimits.AsGiven, result, witness);
                    tally.Add(plan, season, result, [.. witness.Read(result)]);
                };
            },
            (sum, other) => sum.Merge(other)
        );
        return tally.Told(plan, things, options);
    }

    /// <summary>
    /// What is to be paid for the days before a day, by the log and the weather observed: it is the same in every season.
    /// </summary>
    /// <param name="plan">The plan, with its past where the season is under way.</param>
    /// <param name="today">The day; its own is not counted.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="seed">Seed of all luck.</param>
    public static BillSoFar SoFar(SeasonPlan plan, DateOnly today, BillRule rule, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var things = new SharedThings(plan);
        var witness = new BillWitness(things, today.DayNumber - plan.FirstDay.DayNumber);
        var result = new SeasonResult();
        new SeasonPlayer(plan, seed).Play(0, PlaceLimits.AsGiven, result, witness);
        return new BillSoFar(rule, things.Unit, things.Growers, [.. Bill.Divide(rule, witness.Read(result), things.Growers.Length)]);
    }

    // In whole thousandths, so that sums do not depend on their order.
    private sealed class Tally(int growers, int batches, int seasons)
    {
        private readonly long[][] _amounts = [.. BillRules.All.Select(_ => new long[growers])];
        private readonly long[] _totals = new long[seasons];
        private readonly long[] _trayDays = new long[growers];
        private readonly int[] _late = new int[batches];

        public void Add(SeasonPlan plan, int season, SeasonResult result, BillWeek[][] things)
        {
            for (var rule = 0; rule < _amounts.Length; rule++)
            {
                var divided = Bill.Divide(BillRules.All[rule], things, growers);
                for (var grower = 0; grower < growers; grower++)
                {
                    _amounts[rule][grower] += SeasonEnergy.Rounded(divided[grower]);
                }
            }

            _totals[season] = SeasonEnergy.Rounded(things.Sum(weeks => weeks.Sum(week => week.Cost)));
            for (var grower = 0; grower < growers; grower++)
            {
                _trayDays[grower] += Rows.Sum(result.TrayDays[grower]);
            }

            for (var batch = 0; batch < batches; batch++)
            {
                _late[batch] += LateBatch.Of(plan, plan.Batches[batch], result.Batches[batch]) is null ? 0 : 1;
            }
        }

        public void Merge(Tally other)
        {
            for (var rule = 0; rule < _amounts.Length; rule++)
            {
                Sum(_amounts[rule], other._amounts[rule]);
            }

            Sum(_totals, other._totals);
            Sum(_trayDays, other._trayDays);
            for (var batch = 0; batch < batches; batch++)
            {
                _late[batch] += other._late[batch];
            }
        }

        public BillForecast Told(SeasonPlan plan, SharedThings things, StudyOptions options)
        {
            long[] sorted = [.. _totals.Order()];
            return new BillForecast
            {
                Things = things,
                Seasons = seasons,
                Seed = options.Seed,
                Mean = Mean(_totals.Sum()),
                P10 = sorted[((seasons + 9) / 10) - 1] / SeasonEnergy.Thousandths,
                P90 = sorted[(((9L * seasons) + 9) / 10) - 1] / SeasonEnergy.Thousandths,
                Growers =
                [
                    .. Enumerable
                        .Range(0, growers)
                        .Select(grower => Told(plan, things.Growers[grower], grower))
                        .OrderBy(told => told.Grower, StringComparer.Ordinal),
                ],
            };
        }

        private BilledGrower Told(SeasonPlan plan, string name, int grower)
        {
            ImmutableArray<int> own =
            [
                .. Enumerable.Range(0, batches).Where(at => string.Equals(plan.Batches[at].Order.Grower, name, StringComparison.Ordinal)),
            ];
            return new BilledGrower
            {
                Grower = name,
                Amounts = [.. _amounts.Select(amounts => Mean(amounts[grower]))],
                TrayDays = (double)_trayDays[grower] / seasons,
                Batches = own.Length,
                LikelyLate = own.Count(batch => Likelihoods.Of(_late[batch], seasons) >= Likelihood.Likely),
                DaysInHand = own.Min(batch => plan.Batches[batch].DaysInHand),
            };
        }

        private double Mean(long thousandths) => thousandths / SeasonEnergy.Thousandths / seasons;

        private static void Sum(long[] sums, long[] others)
        {
            for (var at = 0; at < sums.Length; at++)
            {
                sums[at] += others[at];
            }
        }
    }
}
