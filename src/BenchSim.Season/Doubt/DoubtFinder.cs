using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Doubt;

/// <summary>Finds the values of a plan that may be wrong, and where each is set.</summary>
internal sealed class DoubtFinder
{
    private readonly SeasonPlan _plan;

    private DoubtFinder(SeasonPlan plan) => _plan = plan;

    /// <summary>The values, in order.</summary>
    public List<DoubtfulValue> Values { get; } = [];

    /// <summary>Where those of crops are set.</summary>
    public List<Setter<Crop>> Crops { get; } = [];

    /// <summary>Where those of houses are set.</summary>
    public List<Setter<House>> Houses { get; } = [];

    /// <summary>Where those of the rules are set.</summary>
    public List<Setter<SiteRules>> Rules { get; } = [];

    /// <summary>The values of a plan.</summary>
    public static DoubtFinder In(SeasonPlan plan)
    {
        var (found, scenario) = (new DoubtFinder(plan), plan.Scenario);
        found.Look(DoubtColumns.Crops, [.. scenario.Crops.Select(crop => new Owner<Crop>(crop.Id, crop.Name, crop))], found.Crops);
        found.Look(DoubtColumns.Houses, [.. scenario.Houses.Select(house => new Owner<House>(house.Id, house.Name, house))], found.Houses);
        found.Look(DoubtColumns.Rules, [new Owner<SiteRules>("", "the site", scenario.Rules)], found.Rules);
        return found;
    }

    private void Look<TRecord>(DoubtColumn<TRecord>[] columns, ImmutableArray<Owner<TRecord>> owners, List<Setter<TRecord>> setters)
    {
        foreach (var column in columns)
        {
            var rows = _plan.Scenario.Ranges.Where(row => string.Equals(row.What, column.Field.Name, StringComparison.Ordinal)).ToArray();
            foreach (var row in rows)
            {
                Add(column, [.. owners.Where(owner => Names(row, owner))], setters, (_, value, offset) => RangeOf(row, value, offset));
            }

            foreach (var owner in owners.Where(owner => !rows.Any(row => Names(row, owner))))
            {
                Add(column, [owner], setters, (trust, value, _) => column.RangeOf(value, trust));
            }
        }

        static bool Names(RangeRow row, Owner<TRecord> owner) => row.Of.IsEmpty || row.Of.Contains(owner.Id, StringComparer.Ordinal);
    }

    private void Add<TRecord>(
        DoubtColumn<TRecord> column,
        ImmutableArray<Owner<TRecord>> owners,
        List<Setter<TRecord>> setters,
        Func<Trust, double, double, ValueRange?> rangeOf
    )
    {
        var parts = ImmutableArray.CreateBuilder<DoubtfulPart>();
        foreach (var owner in owners.Where(owner => column.IsUsed(_plan, owner.Record)))
        {
            var trust = column.TrustOf(owner.Record);
            if (column.Get(owner.Record) is { } value && rangeOf(trust, value, column.Offset(owner.Record)) is { } range)
            {
                setters.Add(new Setter<TRecord>(Values.Count, owner.Id, column, range));
                parts.Add(new DoubtfulPart(owner.Id, owner.Name, trust, value, range, Say));
            }

            string Say(double other) =>
                column.Say(column.With(owner.Record, column.Rounded(other, _plan.Scenario.Units)), _plan.Scenario.Units);
        }

        if (parts.Count > 0)
        {
            Values.Add(new DoubtfulValue(column, parts.ToImmutable()));
        }
    }

    private static ValueRange RangeOf(RangeRow row, double value, double offset) =>
        row.IsRelative
            ? new ValueRange(row.Shape, row.Low * value, row.High * value, value)
            : new ValueRange(row.Shape, row.Low - offset, row.High - offset, value);

    private readonly record struct Owner<TRecord>(string Id, string Name, TRecord Record);
}
