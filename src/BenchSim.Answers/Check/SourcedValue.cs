using System.Collections.Immutable;
using BenchSim.Report.Html;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Check;

/// <summary>A value of a crop, tray type or heated house in use, and where it comes from.</summary>
/// <param name="Owner">Name of the crop, tray type or house.</param>
/// <param name="File">File in which the user may write another value.</param>
/// <param name="Column">Column or key of that file.</param>
/// <param name="Value">The value in words; empty where the column holds no single value.</param>
/// <param name="Provenance">Where it comes from.</param>
internal sealed record SourcedValue(string Owner, string File, string Column, string Value, Provenance Provenance)
{
    /// <summary>True when it rests on memory or assumption.</summary>
    public bool IsWeak => Provenance.Trust is Trust.Memory or Trust.Assumption;

    /// <summary>How far it may be trusted, in words.</summary>
    public string TrustWords =>
        Provenance.Trust switch
        {
            Trust.User => "yours",
            Trust.Seen => "seen in the source",
            Trust.Derived => "worked out from the source",
            Trust.Borrowed => "borrowed from a relative",
            Trust.CommonPractice => "common practice",
            Trust.Memory => "from memory",
            _ => "assumption",
        };

    /// <summary>Values of all crops, tray types and heated houses of a scenario, in this order, each in order of column or key.</summary>
    public static ImmutableArray<SourcedValue> Of(Scenario scenario) =>
        [
            .. scenario.Crops.SelectMany(crop =>
                crop.Sources.Select(pair => new SourcedValue(
                    crop.Name,
                    "crops.csv",
                    pair.Key,
                    CropValues.Of(crop, pair.Key, scenario.Units),
                    pair.Value
                ))
            ),
            .. scenario.TrayTypes.SelectMany(tray =>
                tray.Sources.Select(pair => new SourcedValue(tray.Name, "trays.csv", pair.Key, CropValues.Of(tray, pair.Key), pair.Value))
            ),
            .. scenario
                .Houses.Where(house => house.Heat is not null)
                .SelectMany(house =>
                    house.Heat!.Sources.Select(pair => new SourcedValue(
                        house.Name,
                        "site.toml",
                        pair.Key,
                        HouseValues.Of(house.Heat, pair.Key, scenario.Units),
                        pair.Value
                    ))
                ),
        ];
}
