using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Dense;

/// <summary>Plays each crop that stands on a heat mat both ways, sown directly and sown dense and potted up, on the same luck.</summary>
public static class DenseRunner
{
    private static readonly ImmutableArray<Measure> s_measures =
    [
        Measures.MatTrayDays,
        Measures.MatPeak,
        Measures.BenchTrayDays,
        Measures.Flats,
        Measures.Trays,
        Measures.LabourHours,
        Measures.MixLitres,
        Measures.Seeds,
        Measures.PlantsLate,
        Measures.LatePlantDays,
    ];

    /// <summary>
    /// Plays every season of every way with the same seed, all else as the plan has it and all to one last day. The same input gives the
    /// same result to the last bit, whatever the number of threads.
    /// </summary>
    /// <param name="basePlan">The plan as it stands.</param>
    /// <param name="settings">Which crop, which flat, how dense.</param>
    /// <param name="options">Seasons, seed and threads.</param>
    /// <param name="progress">Told how many seasons are done, in rising order; null for nobody.</param>
    /// <param name="cancel">Stops the play within a season or so.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 season, fewer than 0 threads, or a plan of no days.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before the last season was done.</exception>
    public static DenseResult Play(
        SeasonPlan basePlan,
        DenseSettings settings,
        StudyOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(basePlan);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Seasons, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegative(options.Threads, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(basePlan.Days, 1, nameof(basePlan));
        var ways = new DenseWays(basePlan, settings);
        var skipped = ImmutableArray.CreateBuilder<DenseSkip>();
        var pairs = new List<Pair>();
        foreach (var crop in ways.MatCrops)
        {
            cancel.ThrowIfCancellationRequested();
            var direct = ways.Plan(crop, isDirect: true, out var skip);
            var dense = skip is null ? ways.Plan(crop, isDirect: false, out skip) : null;
            if (direct is not null && dense is not null)
            {
                pairs.Add(new Pair(crop, direct, dense));
            }
            else
            {
                skipped.Add(skip!);
            }
        }

        return ToResult(basePlan, settings, options, [.. pairs], Count(pairs, options, progress, cancel), skipped.ToImmutable());
    }

    private static PairedTally[] Count(List<Pair> pairs, StudyOptions options, IProgress<int>? progress, CancellationToken cancel)
    {
        if (pairs.Count == 0)
        {
            return [];
        }

        // The plan as it stands is one way of most crops: it is played once a season for all of them.
        var days = pairs.Max(pair => Math.Max(pair.Direct.Days, pair.Dense.Days));
        SeasonPlan[] plans =
        [
            .. pairs.SelectMany(pair => new[] { pair.Direct, pair.Dense }).Distinct(ReferenceEqualityComparer.Instance).Cast<SeasonPlan>(),
        ];
        var climates = ClimateStore.OfOnePlay();
        SeasonPlayer[] first = [.. plans.Select(plan => new SeasonPlayer(plan with { Days = days }, options.Seed, climates))];
        (int Direct, int Dense)[] at = [.. pairs.Select(pair => (Find(plans, pair.Direct), Find(plans, pair.Dense)))];
        var measures = s_measures.Length;
        return new ParallelSeasons<PairedTally[]>(options, progress, cancel).Run(
            () => [.. pairs.Select(_ => new PairedTally(measures))],
            () =>
            {
                SeasonPlayer[] players = [.. first.Select(player => player.Another())];
                SeasonResult[] results = [.. players.Select(_ => new SeasonResult())];
                MeasuredSeason[] directs = [.. pairs.Select(pair => new MeasuredSeason(pair.Direct, pair.Crop))];
                MeasuredSeason[] denses = [.. pairs.Select(pair => new MeasuredSeason(pair.Dense, pair.Crop))];
                (var left, var right) = (new long[measures], new long[measures]);
                return (season, tallies) =>
                {
                    for (var player = 0; player < players.Length; player++)
                    {
                        players[player].Play(season, PlaceLimits.AsGiven, results[player]);
                    }

                    for (var crop = 0; crop < tallies.Length; crop++)
                    {
                        directs[crop].Read(results[at[crop].Direct], s_measures, left);
                        denses[crop].Read(results[at[crop].Dense], s_measures, right);
                        tallies[crop].Add(results[at[crop].Direct], left, results[at[crop].Dense], right);
                    }
                };
            },
            (sum, other) =>
            {
                for (var crop = 0; crop < sum.Length; crop++)
                {
                    sum[crop].Merge(other[crop]);
                }
            }
        );
    }

    private static int Find(SeasonPlan[] plans, SeasonPlan plan) => Array.FindIndex(plans, each => ReferenceEquals(each, plan));

    private static DenseResult ToResult(
        SeasonPlan basePlan,
        DenseSettings settings,
        StudyOptions options,
        ImmutableArray<Pair> pairs,
        PairedTally[] tallies,
        ImmutableArray<DenseSkip> skipped
    )
    {
        var comparisons = pairs.Length * (s_measures.Length + 1);
        var each = Confidence.OfEach(comparisons);
        return new DenseResult
        {
            Base = basePlan,
            Flat = settings.Flat,
            Seasons = options.Seasons,
            Seed = options.Seed,
            Comparisons = comparisons,
            EachConfidence = each,
            Skipped = skipped,
            Crops = [.. pairs.Select((pair, at) => ToCrop(basePlan, pair, tallies[at], each))],
        };
    }

    private static DenseCrop ToCrop(SeasonPlan basePlan, Pair pair, PairedTally tally, double confidence)
    {
        var direct = Batches(pair.Direct);
        var dense = Batches(pair.Dense);
        BatchPlan[] asItStands = [.. Batches(basePlan)];
        var curve = new DensityCurve(basePlan.Scenario.Rules, direct, dense);
        return new DenseCrop
        {
            Crop = direct[0].Crop,
            IsPlannedDirect =
                Array.TrueForAll(asItStands, batch => batch.Flat is null) ? true
                : Array.TrueForAll(asItStands, batch => batch.Flat is not null) ? false
                : null,
            Direct = direct,
            Dense = dense,
            SeedsPerFlat = (dense.Min(batch => batch.Order.SeedsPerFlat), dense.Max(batch => batch.Order.SeedsPerFlat)),
            Fits = tally.Fits(confidence),
            Changes = tally.Changes(s_measures, confidence),
            BreakEven = curve.BreakEven(),
            Curve = curve.Points(),
        };

        ImmutableArray<BatchPlan> Batches(SeasonPlan plan) => [.. DenseWays.StillToSow(plan, pair.Crop)];
    }

    private sealed record Pair(string Crop, SeasonPlan Direct, SeasonPlan Dense);
}
