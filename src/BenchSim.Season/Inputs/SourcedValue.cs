using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Heat;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>A value of a crop, tray type or heated house in use, and where it comes from.</summary>
/// <param name="Owner">Name of the crop, tray type or house.</param>
/// <param name="File">File in which the user may write another value.</param>
/// <param name="Column">Column or key of that file; "heat_content" for that of a fuel.</param>
/// <param name="Value">The value in words; empty where it is told with another key.</param>
/// <param name="Provenance">Where it comes from.</param>
public sealed record SourcedValue(string Owner, string File, string Column, string Value, Provenance Provenance)
{
    /// <summary>True when it rests on memory or assumption.</summary>
    public bool IsWeak => Provenance.Trust is Trust.Memory or Trust.Assumption;

    /// <summary>How far it may be trusted, in words.</summary>
    public string TrustWords => Provenance.Words;

    /// <summary>Values of all crops, tray types and heated houses of a scenario, in this order, each in order of column or key.</summary>
    public static ImmutableArray<SourcedValue> Of(Scenario scenario) =>
        [
            .. scenario.Crops.SelectMany(crop => crop.Sources.Select(pair => Of(crop.Name, CropFields.Table, crop, pair, scenario.Units))),
            .. scenario.TrayTypes.SelectMany(tray =>
                tray.Sources.Select(pair => Of(tray.Name, TrayFields.Table, tray, pair, scenario.Units))
            ),
            .. scenario.Houses.Where(house => house.Body is not null).SelectMany(house => Of(house, house.Body!, scenario.Units)),
        ];

    private static SourcedValue Of<TRecord>(
        string owner,
        FieldTable<TRecord> table,
        TRecord record,
        KeyValuePair<string, Provenance> source,
        UnitSystem units
    ) => new(owner, table.Section, source.Key, table.Find(source.Key)?.Show(record, units) ?? "", source.Value);

    // The shape stands for the whole shell, and the lengths behind it are told with it.
    private static IEnumerable<SourcedValue> Of(House house, HouseBody body, UnitSystem units)
    {
        const string site = "site.toml";
        var keys = HeatKeys.InUse(house);
        foreach (var (key, source) in body.Sources)
        {
            var field = HeatFields.Table.Find(key);
            var value =
                key is "shape" ? HeatFields.Words(body.Shell, units)
                : HeatFields.IsDimension(key) ? ""
                : field?.Show(keys, units) ?? "";
            yield return new SourcedValue(house.Name, site, key, value, source);
        }

        if (house.Heat?.Fuel is { } fuel)
        {
            var content = FormattableString.Invariant($"{fuel.MegajoulesPerUnit:#,##0.###} MJ per {fuel.Unit} of {fuel.Name}");
            yield return new SourcedValue(house.Name, site, "heat_content", content, fuel.ContentSource);
        }
    }
}
