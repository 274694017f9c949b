using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>How potting mix is bought and how it settles in the cells.</summary>
public sealed record PottingMix
{
    /// <summary>Loose mix of a compressed bale of 3.8 cubic feet, cubic feet: between the 6 and 7 of the trade. From memory.</summary>
    public const double BaleCubicFeet = 6.5;

    /// <summary>Share of its loose volume that mix loses as it is firmed and watered in, 0 to below 1.</summary>
    public double Settling { get; init; } = 0.15;

    /// <summary>What it is bought in: bale, bag or tote.</summary>
    public string SoldIn { get; init; } = "bale";

    /// <summary>Loose mix that one of them gives once it is broken up, litres.</summary>
    public double YieldLitres { get; init; } = BaleCubicFeet * Volumes.LitresACubicFoot;

    /// <summary>Loose mix that fills a volume, litres: volume / (1 - <see cref="Settling"/>).</summary>
    /// <param name="filledLitres">Volume of the cells, litres.</param>
    public double Loose(double filledLitres) => filledLitres / (1 - Settling);
}

/// <summary>The keys of [mix].</summary>
public static class MixFields
{
    private const double LeastLitres = 1;
    private const double MostLitres = 5000;

    private static readonly ImmutableArray<(string Word, string Value)> s_units = [("bale", "bale"), ("bag", "bag"), ("tote", "tote")];

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<PottingMix> Table { get; } =
        FieldTable
            .Of("mix", "[mix]", new PottingMix())
            .Key("settling", new ShareKind(belowAll: true), mix => mix.Settling, (mix, share) => mix with { Settling = share })
            .Means(
                "Share of its loose volume that potting mix loses as it is firmed and watered in; so much more is bought and paid for.",
                "from memory: 10 % to 15 %"
            )
            .Key("sold_in", new ChoiceKind<string>(s_units), mix => mix.SoldIn, (mix, unit) => mix with { SoldIn = unit })
            .Means("What you buy mix in.", Why.Practice)
            .Key(
                "loose_yield",
                new MeasuredKind(
                    Quantity.Volume,
                    LeastLitres,
                    MostLitres,
                    "volume",
                    "litres, ft3 or yd3; a bare number is in litres or ft3"
                ),
                mix => mix.YieldLitres,
                (mix, litres) => mix with { YieldLitres = litres }
            )
            .Means(
                "Loose mix that one bale, bag or tote gives once it is broken up.",
                "from memory: 6 to 7 ft3 from a compressed bale of 3.8 ft3"
            )
            .Table();
}
