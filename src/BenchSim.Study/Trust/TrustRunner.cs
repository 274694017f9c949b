using System.Collections.Immutable;
using BenchSim.Season.Doubt;
using BenchSim.Season.Inputs;
using BenchSim.Study.Counting;

namespace BenchSim.Study.Trust;

/// <summary>Asks what hangs on the values of a plan that may be wrong.</summary>
public static class TrustRunner
{
    /// <summary>
    /// Moves each value alone, then all of them together, then group by group, on the same seasons. The same plan and options give the
    /// same result to the last bit, whatever the number of threads.
    /// </summary>
    /// <param name="plan">The plan; its dates, trays and seeds stay.</param>
    /// <param name="variant">A variant of it that is to be chosen or not; null for none.</param>
    /// <param name="options">How much is played.</param>
    /// <param name="progress">Told how many of the sets of <see cref="SetsOf"/> are done, in rising order; null for nobody.</param>
    /// <param name="cancel">Stops the play.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer sets or seasons than there must be.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before the last set was done.</exception>
    public static TrustResult Play(
        SeasonPlan plan,
        (string Name, SeasonPlan Plan)? variant,
        TrustOptions options,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Sets, TrustOptions.LeastSets, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Seasons, TrustOptions.LeastSeasons, nameof(options));
        var doubts = ValuesInDoubt.Of(plan);
        var measures = TrustMeasure.All(plan);
        var choice = variant is { } other ? new ChoiceStudy(plan, other) : null;
        var player = new SetPlayer(doubts, [.. measures, .. choice?.Measures ?? []], options, progress, cancel);
        var asGiven = AsGiven(doubts);
        var given = player.Play(plan, [asGiven], options.Seasons);
        var alone = player.Play(plan, [asGiven], options.GivenSeasons);
        var result = new TrustResult
        {
            GivenFits = Chances.Of((int)Math.Round(alone.Means(TrustResult.FitsAt)[0] * options.GivenSeasons), options.GivenSeasons),
            Plan = plan,
            Options = options,
            Values = [],
            Ranges = [.. measures.Select((measure, at) => TrustRange.Of(measure, given.Means(at)[0], [.. given.Means(at)], default))],
            Groups = [],
            SeasonsPlayed = player.Seasons,
        };
        if (doubts.Values.IsEmpty)
        {
            return result;
        }

        var values = Screen(plan, doubts, player, options);
        int[] order = [.. TrustResult.Ordered(values).Select(value => value.Number)];
        var sets = ValueSets.Of(options.Sets, order, options.Seed);
        var outcomes = player.Play(plan, sets, options.Seasons);
        double[][] means = [.. Enumerable.Range(0, measures.Length).Select(measure => outcomes.Means(measure))];
        var shares = new ShareStudy(sets, options.Seed);
        return result with
        {
            Values = [.. values.Select(value => value with { Shares = shares.Of(value, values, means) })],
            Ranges =
            [
                .. measures.Select((measure, at) => TrustRange.Of(measure, given.Means(at)[0], means[at], TwoWidths.Of(outcomes, at))),
            ],
            Groups = GroupStudy.Of(plan, doubts, player, options, sets, outcomes),
            Choice = choice?.Of(doubts, player, shares, alone, outcomes),
            SeasonsPlayed = player.Seasons,
        };
    }

    /// <summary>Sets that are played in all, the values as given among them.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="variant">A variant that is played too; null for none.</param>
    /// <param name="options">How much is played.</param>
    public static int SetsOf(SeasonPlan plan, (string Name, SeasonPlan Plan)? variant, TrustOptions options)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        var values = ValuesInDoubt.Of(plan).Values;
        if (values.IsEmpty)
        {
            return 2;
        }

        var groups = values.Select(value => value.Column.Group).Distinct().Count();
        var ofChoice = variant is { } other ? new ChoiceStudy(plan, other).SetsOf(options.Sets) : 0;
        return 3 + (2 * values.Length) + options.Sets + (groups * options.GroupSets) + ofChoice;
    }

    /// <summary>The set in which every value is as it is given.</summary>
    internal static double[] AsGiven(ValuesInDoubt doubts) => [.. Enumerable.Repeat(double.NaN, doubts.Values.Length)];

    // Each value at either end of its range, the others as given: elementary effects about the values given (Morris 1991, Technometrics
    // 33, 161-174).
    private static ImmutableArray<TrustValue> Screen(SeasonPlan plan, ValuesInDoubt doubts, SetPlayer player, TrustOptions options)
    {
        var asGiven = AsGiven(doubts);
        var outcomes = player.Play(
            plan,
            [asGiven, .. doubts.Values.SelectMany((_, value) => new[] { Moved(value, 0.05), Moved(value, 0.95) })],
            options.FewerSeasons
        );
        double[][] means = [.. Enumerable.Range(0, outcomes.Measures).Select(measure => outcomes.Means(measure))];
        return [.. doubts.Values.Select((value, at) => new TrustValue(at, value, Of(0), Of(1 + (2 * at)), Of(2 + (2 * at)), []))];

        ImmutableArray<double> Of(int set) => [.. means.Select(measure => measure[set])];

        double[] Moved(int value, double chance)
        {
            double[] set = [.. asGiven];
            set[value] = chance;
            return set;
        }
    }
}
