using System.Collections.Immutable;
using BenchSim.Season.Fields;

namespace BenchSim.Season.Inputs;

/// <summary>A key or column whose value differs between two scenarios.</summary>
/// <param name="Part">The part of the scenario it is of.</param>
/// <param name="Field">The key or column.</param>
/// <param name="Owner">Name of the house, space, batch, crop or tray type it is of; empty for the site as a whole.</param>
/// <param name="Before">The value before, in words.</param>
/// <param name="After">The value after, in words.</param>
public sealed record SettingChange(ScenarioPart Part, Field Field, string Owner, string Before, string After);

/// <summary>
/// A part of a scenario that has a table of fields: the site as a whole, or each of its houses, spaces, batches, crops and tray types.
/// </summary>
public abstract class ScenarioPart
{
    private protected ScenarioPart(string one, string many) => (One, Many) = (one, many);

    /// <summary>Every part of a scenario.</summary>
    public static ImmutableArray<ScenarioPart> All { get; } =
    [
        Each("house", "houses", scenario => scenario.Houses, HouseFields.Table, house => house.Id, house => house.Name),
        Each(
            "house",
            "houses",
            scenario => scenario.Houses.Select(house => (house.Id, house.Name, HeatKeys.InUse(house))),
            HeatFields.Table
        ),
        Each("space", "spaces", scenario => scenario.Spaces, SpaceFields.Table, space => space.Id, space => space.Name),
        Each(
            "space",
            "spaces",
            scenario => scenario.Spaces.Select(space => (space.Id, space.Name, space.Power ?? PowerFields.Nothing)),
            PowerFields.Table
        ),
        Each("batch", "batches", scenario => scenario.Batches.Select(order => (order.Id, order.Id, new PlanLine(order))), PlanFields.Table),
        Each("mishap", "mishaps", scenario => scenario.Mishaps, MishapFields.Table, mishap => mishap.Id, mishap => mishap.Name),
        Site(scenario => scenario.Rules, RuleFields.Table),
        Site(scenario => scenario.Rules, ReliefFields.Table),
        Site(scenario => scenario.Rules.Minutes, WorkMinuteFields.Table),
        Site(scenario => scenario.Rules.Seconds, WorkSecondFields.Table),
        Site(scenario => scenario.Rules.SeedStorage ?? SeedFields.NotSaid, SeedFields.Table),
        Site(scenario => scenario.Rules.Mix, MixFields.Table),
        Site(scenario => scenario.Rules.Prices, PriceFields.Table),
        Each("crop", "crops", scenario => scenario.Crops, CropFields.Table, crop => crop.Id, crop => crop.Name),
        Each("tray type", "tray types", scenario => scenario.TrayTypes, TrayFields.Table, tray => tray.Id, tray => tray.Name),
        Site(scenario => scenario.Weather.Written, WeatherFields.Table),
        Site(scenario => scenario.Window, ScenarioFields.Season),
        Site(scenario => scenario, ScenarioFields.Site),
        Site(scenario => scenario.Play, ScenarioFields.Play),
    ];

    /// <summary>What one of them is called: "house"; empty for the site as a whole.</summary>
    public string One { get; }

    /// <summary>What several of them are called.</summary>
    public string Many { get; }

    /// <summary>The fields.</summary>
    public abstract FieldTable Table { get; }

    /// <summary>Every key and column whose value differs between two scenarios, among what both have.</summary>
    public static IEnumerable<SettingChange> Changes(Scenario before, Scenario after) => All.SelectMany(part => part.Of(before, after));

    private protected abstract IEnumerable<SettingChange> Of(Scenario before, Scenario after);

    private static ScenarioPart<TRecord> Site<TRecord>(Func<Scenario, TRecord> get, FieldTable<TRecord> table) =>
        new("", "", scenario => [("", "", get(scenario))], table);

    private static ScenarioPart<TRecord> Each<TRecord>(
        string one,
        string many,
        Func<Scenario, IEnumerable<(string Id, string Name, TRecord Record)>> get,
        FieldTable<TRecord> table
    ) => new(one, many, get, table);

    private static ScenarioPart<TRecord> Each<TRecord>(
        string one,
        string many,
        Func<Scenario, ImmutableArray<TRecord>> get,
        FieldTable<TRecord> table,
        Func<TRecord, string> id,
        Func<TRecord, string> name
    ) => new(one, many, scenario => get(scenario).Select(record => (id(record), name(record), record)), table);
}

/// <summary>A part of a scenario with the type of its records.</summary>
internal sealed class ScenarioPart<TRecord>(
    string one,
    string many,
    Func<Scenario, IEnumerable<(string Id, string Name, TRecord Record)>> get,
    FieldTable<TRecord> table
) : ScenarioPart(one, many)
{
    public override FieldTable Table => table;

    private protected override IEnumerable<SettingChange> Of(Scenario before, Scenario after)
    {
        var old = get(before).ToDictionary(item => item.Id, item => item.Record, StringComparer.Ordinal);
        foreach (var (id, name, record) in get(after))
        {
            if (!old.TryGetValue(id, out var was))
            {
                continue;
            }

            foreach (var field in table.Values.Where(field => !field.IsSame(was, record)))
            {
                yield return new SettingChange(this, field, name, field.Show(was, before.Units), field.Show(record, after.Units));
            }
        }
    }
}
