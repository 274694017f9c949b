using System.Collections.Immutable;
using BenchSim.Season.Doubt;
using BenchSim.Season.Inputs;
using BenchSim.Study.Invest;

namespace BenchSim.Study.Trust;

/// <summary>Works out what values do to the choice of a variant, by plants in time and, where it has terms, by money.</summary>
internal sealed class ChoiceStudy
{
    private const int Most = 5;

    private readonly SeasonPlan _plan;
    private readonly (string Name, SeasonPlan Plan) _variant;
    private readonly YearMoney? _money;
    private readonly bool _isAsLong;

    /// <summary>Prepares it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="variant">The variant.</param>
    public ChoiceStudy(SeasonPlan plan, (string Name, SeasonPlan Plan) variant)
    {
        // Both to the same last day, or the one that ends sooner would burn less.
        var days = Math.Max(plan.Days, variant.Plan.Days);
        _isAsLong = plan.Days == days;
        _plan = plan with { Days = days };
        _variant = variant with { Plan = variant.Plan with { Days = days } };
        _money = variant.Plan.Scenario.Invest is null ? null : new YearMoney(_plan, _variant.Plan);
    }

    /// <summary>What must be read off the seasons besides; none where the variant has no terms.</summary>
    public ImmutableArray<TrustMeasure> Measures =>
        _money is { } money ? [new TrustMeasure("money", "money of a year") { ReaderOf = money.ReaderOf }] : [];

    /// <summary>Sets that are played for it, besides those of the plan.</summary>
    /// <param name="sets">Sets of the sample.</param>
    public int SetsOf(int sets) => (_isAsLong ? 1 : 2) * (1 + sets);

    /// <summary>The choice between the plan as it is and the variant.</summary>
    /// <param name="doubts">The values.</param>
    /// <param name="player">Plays sets.</param>
    /// <param name="shares">The sample of sets.</param>
    /// <param name="given">What the plan brings at the values given.</param>
    /// <param name="outcomes">What it brings over the sample.</param>
    public TrustChoice Of(ValuesInDoubt doubts, SetPlayer player, ShareStudy shares, SetOutcomes given, SetOutcomes outcomes)
    {
        double[][] asGiven = [TrustRunner.AsGiven(doubts)];
        if (!_isAsLong)
        {
            given = player.Play(_plan, asGiven, given.Seasons);
            outcomes = player.Play(_plan, shares.Sets, outcomes.Seasons);
        }

        var withGiven = player.Play(_variant.Plan, asGiven, given.Seasons);
        var with = player.Play(_variant.Plan, shares.Sets, outcomes.Seasons);
        return new TrustChoice(
            _variant.Name,
            Figures(TrustResult.InTimeAt, 0),
            _money is { } money ? Figures(given.Measures - 1, money.CostAYear) : null
        );

        ChoiceFigures Figures(int measure, double cost)
        {
            double[] gains = [.. with.Means(measure).Zip(outcomes.Means(measure), (more, less) => more - less - cost)];
            return new ChoiceFigures(
                withGiven.Means(measure)[0] - given.Means(measure)[0] - cost,
                gains.Average(),
                Knowing.Changes(gains),
                Knowing.OfAll(gains),
                [.. Worth(doubts, shares, gains).Where(each => each.Gain.IsAboveNothing).Take(Most)]
            );
        }
    }

    // Chance alone gives each of many values some worth: those that move the gain are looked at, and the worth must stand a resampling.
    private static IEnumerable<(DoubtfulValue Value, ShareEstimate Gain)> Worth(ValuesInDoubt doubts, ShareStudy shares, double[] gains) =>
        doubts
            .Values.Select((value, at) => (Value: value, Part: shares.PartsOf(at)))
            .OrderByDescending(each => FirstShares.Of(each.Part, gains, shares.Parts, shares.All))
            .Take(2 * Most)
            .Select(each => (each.Value, Gain: shares.Resampled.Of(drawn => Knowing.OfOne(each.Part, gains, shares.Parts, drawn))))
            .OrderByDescending(each => each.Gain.Share);
}
