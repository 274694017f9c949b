using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>The keys of [invest] in a variant.</summary>
public static class InvestFields
{
    private const string Quarter = "a quarter less and more";

    private static readonly WholeKind s_years = new(1, 60, "year");

    /// <summary>Terms of which nothing is said.</summary>
    public static InvestTerms Nothing { get; } =
        new()
        {
            Capital = double.NaN,
            LifeYears = 0,
            DiscountRate = double.NaN,
        };

    /// <summary>The keys that are one value, in the order of the reference.</summary>
    public static FieldTable<InvestTerms> Table { get; } =
        FieldTable
            .Of("invest", "[invest]", Nothing)
            .Key("capital", Money("money"), terms => terms.Capital, (terms, money) => terms with { Capital = money })
            .Means("What it costs to build or buy, paid at the start.")
            .Required("12000")
            .Key("life_years", s_years, terms => terms.LifeYears, (terms, years) => terms with { LifeYears = years })
            .Means("Years it serves; each is one season.")
            .Required("15")
            .Key(
                "discount_rate",
                new ShareKind(what: "share a year"),
                terms => terms.DiscountRate,
                (terms, rate) => terms with { DiscountRate = rate }
            )
            .Means("What a year of waiting for money costs: the rate of a loan, or what the money would earn elsewhere.")
            .Required("\"6 %\"")
            .Key("plant_on_time", Money("money a plant"), terms => terms.PlantOnTime, (terms, money) => terms with { PlantOnTime = money })
            .Means("What is lost with a wanted plant that is not in the field in time and is not replaced.", Why.Ours)
            .Key("bought_in_share", Kinds.Share, terms => terms.BoughtInShare, (terms, share) => terms with { BoughtInShare = share })
            .Means("Share of the plants not in time that are bought in instead; together with bought_in_price.", Why.Ours)
            .Key(
                "bought_in_price",
                Money("money a plant"),
                terms => terms.BoughtInPrice,
                (terms, money) => terms with { BoughtInPrice = money }
            )
            .Means("Price of a plant bought in; together with bought_in_share.", Why.Ours)
            .Key("upkeep", Money("money a year"), terms => terms.Upkeep, (terms, money) => terms with { Upkeep = money })
            .Means("Repairs, insurance and the like, every year; beyond the fuel, labour and materials of the play.", Why.Ours)
            .Key("residual", Money("money"), terms => terms.Residual, (terms, money) => terms with { Residual = money })
            .Means("What it is still worth at the end of its life.", Why.Ours)
            .Key("basis", Kinds.Text, terms => terms.Basis, (terms, basis) => terms with { Basis = basis })
            .Means("Where these figures come from: a quotation, last year's books, a guess; printed beside the answer.", leftOut: "empty")
            .Table();

    /// <summary>The keys that are a range to try.</summary>
    public static FieldTable<InvestTerms> Ranges { get; } =
        FieldTable
            .Of("invest", "[invest]", Nothing)
            .Range("capital", Money("money"), terms => terms.Capital)
            .Means("Lowest and highest capital to try.", Why.Assumed, Quarter)
            .Range("life_years", new YearsKind(), terms => terms.LifeYears)
            .Means("Shortest and longest life to try, whole years.", Why.Assumed, Quarter + ", to whole years outwards")
            .Range("discount_rate", Kinds.Share, terms => terms.DiscountRate)
            .Means("Lowest and highest discount rate to try.", Why.Assumed, Quarter)
            .Range("plant_on_time", Money("money a plant"), terms => terms.PlantOnTime)
            .Means("Lowest and highest value of a plant on time to try.", Why.Assumed, Quarter)
            .Range("bought_in_share", Kinds.Share, terms => terms.BoughtInShare)
            .Means("Lowest and highest share bought in to try; a quarter more is at most 100 %.", Why.Assumed, Quarter)
            .Range("bought_in_price", Money("money a plant"), terms => terms.BoughtInPrice)
            .Means("Lowest and highest price of a plant bought in to try.", Why.Assumed, Quarter)
            .Range("upkeep", Money("money a year"), terms => terms.Upkeep)
            .Means("Lowest and highest upkeep to try.", Why.Assumed, Quarter)
            .Range("residual", Money("money"), terms => terms.Residual)
            .Means("Lowest and highest worth at the end to try.", Why.Assumed, Quarter)
            .Table();

    private static NumberKind Money(string unit) => new(0, 1_000_000_000, unit);

    private static FieldTableMaker<InvestTerms> Range(
        this FieldTableMaker<InvestTerms> table,
        string key,
        Kind<double> each,
        Func<InvestTerms, double> value
    ) =>
        table.Key(
            key + "_range",
            new RangeKind(key, each, value),
            terms => terms.Ranges.TryGetValue(key, out var range) ? range : null,
            (terms, range) => terms with { Ranges = range is { } ends ? terms.Ranges.SetItem(key, ends) : terms.Ranges.Remove(key) }
        );

    /// <summary>Whole years as a number.</summary>
    private sealed class YearsKind() : Kind<double>(s_years.What, s_years.Unit, s_years.Range)
    {
        public override bool TryRead(IWritten written, out double value)
        {
            var isRead = s_years.TryRead(written, out var years);
            value = years;
            return isRead;
        }

        public override string Show(double value, UnitSystem units) => s_years.Show((int)value, units);
    }
}

/// <summary>The least and the greatest value of an input of [invest] to try.</summary>
/// <param name="key">Key of the input.</param>
/// <param name="each">Kind of each end.</param>
/// <param name="value">The input itself.</param>
public sealed class RangeKind(string key, Kind<double> each, Func<InvestTerms, double> value) : Kind<InvestRange?>("list of two", each.Unit)
{
    /// <summary>Key of the input.</summary>
    public string Key { get; } = key;

    /// <summary>The input itself, which lies within its range.</summary>
    public double ValueOf(InvestTerms terms) => value(terms);

    /// <inheritdoc/>
    public override bool TryRead(IWritten written, out InvestRange? value)
    {
        value = null;
        if (written.Items($"a list such as {Key}_range = [least, greatest]") is not { } ends)
        {
            return false;
        }

        double?[] values = [.. ends.Select(end => each.TryRead(end, out var read) ? read : (double?)null)];
        if (values.Contains(null))
        {
            return false;
        }

        if (values is not [{ } low, { } high])
        {
            written.Refuse("does not hold two values", "write two: the least and the greatest");
        }
        else if (low > high)
        {
            ends[0].Refuse($"begins with {ends[0].Text}, above its end {ends[1].Text}", "write the least first");
        }
        else
        {
            value = new InvestRange(low, high);
        }

        return value is not null;
    }

    /// <inheritdoc/>
    public override string Show(InvestRange? value, UnitSystem units) =>
        value is { } ends ? $"{each.Show(ends.Low, units)} to {each.Show(ends.High, units)}" : "a quarter less and more";
}
