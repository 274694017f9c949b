using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>Prices in the user's money; null where not given, and then no cost that needs it is shown.</summary>
public sealed record Prices
{
    /// <summary>An hour of work.</summary>
    public double? LabourHour { get; init; }

    /// <summary>A litre of potting mix, loose.</summary>
    public double? MixLitre { get; init; }

    /// <summary>A thousand seeds, where the plan gives no price of its own.</summary>
    public double? ThousandSeeds { get; init; }

    /// <summary>Currency sign or code shown before amounts; may be empty.</summary>
    public string Currency { get; init; } = "";
}

/// <summary>The keys of [prices].</summary>
public static class PriceFields
{
    private const string NotWorkedOut = "its cost is not worked out";
    private const int LongestCurrency = 10;

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<Prices> Table { get; } =
        FieldTable
            .Of("prices", "[prices]", new Prices())
            .Key("currency", new CurrencyKind(), prices => prices.Currency, (prices, sign) => prices with { Currency = sign })
            .Means($"Sign or code shown before amounts of money; at most {LongestCurrency} characters.", leftOut: "none")
            .Key(
                "labour_hour",
                Price("money an hour"),
                prices => prices.LabourHour,
                (prices, price) => prices with { LabourHour = price },
                (prices, _) => Shown(prices.LabourHour, prices)
            )
            .Means("An hour of work.", leftOut: NotWorkedOut)
            .Key(
                "mix_litre",
                Price("money a litre"),
                prices => prices.MixLitre,
                (prices, price) => prices with { MixLitre = price },
                (prices, _) => Shown(prices.MixLitre, prices)
            )
            .Means("A litre of potting mix, loose.", leftOut: NotWorkedOut)
            .Key(
                "thousand_seeds",
                Price("money"),
                prices => prices.ThousandSeeds,
                (prices, price) => prices with { ThousandSeeds = price },
                (prices, _) => Shown(prices.ThousandSeeds, prices)
            )
            .Means("A thousand seeds, where the plan gives no price of its own.", leftOut: NotWorkedOut)
            .Table();

    private static OptionalKind<double> Price(string unit) => Kinds.MoneyFor(unit).OrNone("not given");

    // A code is set apart from its number, a sign is not.
    private static string Shown(double? price, Prices prices) =>
        price is { } amount
            ? FormattableString.Invariant(
                $"{prices.Currency}{(prices.Currency.Length > 0 && char.IsLetter(prices.Currency[^1]) ? " " : "")}{amount:#,##0.00######}"
            )
            : "not given";

    private sealed class CurrencyKind() : Kind<string>("text")
    {
        public override bool MayBeEmpty => true;

        public override bool TryRead(IWritten written, out string value)
        {
            value = written.Name() ?? "";
            if (value.Length <= LongestCurrency)
            {
                return value.Length > 0;
            }

            written.Refuse(
                $"is {written.Quoted}, which has {value.Length} characters",
                $"write a sign or a code of at most {LongestCurrency} characters"
            );
            return false;
        }

        public override string Show(string value, UnitSystem units) => value.Length == 0 ? "not given" : value;
    }
}
