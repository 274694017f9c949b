using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Doubt;

/// <summary>
/// The values of a plan that may be wrong, and the plan with others in their place. Dates, trays and seeds stay those of the values given:
/// the farm sows by what it believes, and grows by what is true.
/// </summary>
public sealed class ValuesInDoubt
{
    private readonly ImmutableArray<Setter<Crop>> _crops;
    private readonly ImmutableArray<Setter<House>> _houses;
    private readonly ImmutableArray<Setter<SiteRules>> _rules;

    private ValuesInDoubt(DoubtFinder finder)
    {
        Values = [.. finder.Values];
        (_crops, _houses, _rules) = ([.. finder.Crops], [.. finder.Houses], [.. finder.Rules]);
    }

    /// <summary>The values, in order: those of crops, of houses, of the site.</summary>
    public ImmutableArray<DoubtfulValue> Values { get; }

    /// <summary>The values of a plan that may be wrong: by a row of ranges.csv, else by where they come from.</summary>
    /// <param name="plan">The plan.</param>
    public static ValuesInDoubt Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new ValuesInDoubt(DoubtFinder.In(plan));
    }

    /// <summary>A plan, that of the values or a variant of it, with other values in the place of those given.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="chances">
    /// For each value a chance strictly between 0 and 1: the value of its range that the true one is below with that chance. Not-a-number
    /// leaves the value as it is given.
    /// </param>
    /// <exception cref="ArgumentException">Not one chance a value.</exception>
    public SeasonPlan With(SeasonPlan plan, double[] chances)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(chances);
        if (chances.Length != Values.Length)
        {
            throw new ArgumentException("One chance a value.", nameof(chances));
        }

        var crops = plan.Scenario.Crops.ToDictionary(crop => crop.Id, crop => TrueCrop(crop, chances), StringComparer.Ordinal);
        var scenario = plan.Scenario;
        return plan with
        {
            Scenario = scenario with
            {
                Crops = [.. scenario.Crops.Select(crop => crops[crop.Id])],
                Houses = [.. scenario.Houses.Select(house => Set(_houses, house, house.Id, chances))],
                Rules = Set(_rules, scenario.Rules, "", chances),
            },
            SownInTimeDays = plan.SownInTimeDays,
            Batches = [.. plan.Batches.Select(batch => With(batch, crops[batch.Order.CropId]))],
        };
    }

    private Crop TrueCrop(Crop crop, double[] chances)
    {
        var set = Set(_crops, crop, crop.Id, chances);
        return ReferenceEquals(set, crop) ? crop : CropOrder.Mended(crop, set);
    }

    private static TRecord Set<TRecord>(ImmutableArray<Setter<TRecord>> setters, TRecord record, string id, double[] chances)
    {
        foreach (var setter in setters)
        {
            if (!double.IsNaN(chances[setter.Value]) && string.Equals(setter.OwnerId, id, StringComparison.Ordinal))
            {
                record = setter.Column.With(record, Drawn(setter.Column, setter.Range.Quantile(chances[setter.Value])));
            }
        }

        return record;
    }

    // Shares to the thousandth, so that sets have the same laws of losses and of seed, which take longer to make than a season to play.
    private static double Drawn(DoubtColumn column, double value) =>
        column.Kind == DoubtKind.Share ? Math.Clamp(Math.Round(value, 3), 0.001, 0.999) : value;

    // A packet whose germination the crop gives has the true one, aged as before.
    private static BatchPlan With(BatchPlan batch, Crop crop)
    {
        var given = batch.Crop.Germination;
        return ReferenceEquals(batch.Crop, crop) ? batch
            : !batch.Order.Germination.Equals(given) || crop.Germination.Equals(given) ? batch with { Crop = crop }
            : batch with { Crop = crop, Germination = Math.Min(1, batch.Germination * crop.Germination / given) };
    }
}

/// <summary>Where a value stands.</summary>
/// <param name="Value">Number of the doubtful value.</param>
/// <param name="OwnerId">Id of the record; empty for the rules.</param>
/// <param name="Column">Column of the record.</param>
/// <param name="Range">What it may truly be.</param>
internal sealed record Setter<TRecord>(int Value, string OwnerId, DoubtColumn<TRecord> Column, ValueRange Range);
