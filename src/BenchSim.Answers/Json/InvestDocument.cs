using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Json;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Invest;

namespace BenchSim.Answers.Json;

/// <summary>The money case of a variant. Money gained is positive, money spent negative; intervals are of 95 %.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Variant">Name of the variant.</param>
/// <param name="Seasons">Seasons played of the base and of the variant.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="Lives">Runs of years drawn from those seasons.</param>
/// <param name="Confidence">Confidence of the intervals.</param>
/// <param name="Currency">Currency; may be empty.</param>
/// <param name="Terms">What the variant costs.</param>
/// <param name="BaseFits">Chance that a season of the base fits.</param>
/// <param name="VariantFits">Chance that a season of the variant fits.</param>
/// <param name="Pays">Chance that the variant pays, over the runs.</param>
/// <param name="Parts">What a year saves and costs.</param>
/// <param name="LeftOut">What has no price and is not counted.</param>
/// <param name="YearlyNetBenefit">Net benefit of a year.</param>
/// <param name="NetPresentValue">Net present value over the life.</param>
/// <param name="InternalRate">Internal rate of return.</param>
/// <param name="SimplePayback">Years until the money is back.</param>
/// <param name="DiscountedPayback">Years until the money is back, discounted.</param>
/// <param name="Tornado">The net present value with one input lower or higher, widest swing first.</param>
/// <param name="BreakEven">What would have to be true of one input for it to pay.</param>
/// <param name="Cautions">What the case leaves out.</param>
/// <param name="Folder">Folder of the chart and tables; null where none was written.</param>
internal sealed record InvestDocument(
    int Version,
    string Name,
    string Variant,
    int Seasons,
    string Seed,
    int Lives,
    double Confidence,
    string Currency,
    JsonTerms Terms,
    JsonChance BaseFits,
    JsonChance VariantFits,
    JsonChance Pays,
    ImmutableArray<JsonMoneyPart> Parts,
    ImmutableArray<string> LeftOut,
    JsonMoney YearlyNetBenefit,
    JsonMoney NetPresentValue,
    JsonRate InternalRate,
    JsonPayback SimplePayback,
    JsonPayback DiscountedPayback,
    ImmutableArray<JsonSwing> Tornado,
    ImmutableArray<JsonBreakEven> BreakEven,
    ImmutableArray<string> Cautions,
    string? Folder
)
{
    public static InvestDocument Of(InvestResult result, string? folder) =>
        new(
            Version: JsonDialect.Version,
            Name: result.Base.Scenario.Name,
            Variant: result.Name,
            Seasons: result.Seasons,
            Seed: result.Seed.ToString(CultureInfo.InvariantCulture),
            Lives: result.Lives,
            Confidence: result.Confidence,
            Currency: result.Currency,
            Terms: JsonTerms.Of(result.Terms),
            BaseFits: JsonChance.Of(result.BaseFits),
            VariantFits: JsonChance.Of(result.VariantFits),
            Pays: JsonChance.Of(result.Pays),
            Parts: [.. result.Parts.Select(JsonMoneyPart.Of)],
            LeftOut: result.LeftOut,
            YearlyNetBenefit: JsonMoney.Of(result.YearlyBenefit),
            NetPresentValue: JsonMoney.Of(result.NetPresentValue),
            InternalRate: JsonRate.Of(result.InternalRate),
            SimplePayback: JsonPayback.Of(result.SimplePayback),
            DiscountedPayback: JsonPayback.Of(result.DiscountedPayback),
            Tornado: [.. result.Tornado.Select((swing, at) => JsonSwing.Of(swing, at < result.Deciding))],
            BreakEven: [.. result.BreakEvens.Select(JsonBreakEven.Of)],
            Cautions: [InvestCautions.LeavesOut, InvestCautions.Advice, InvestCautions.Building],
            Folder: folder
        );
}

/// <summary>What a variant costs and what a plant is worth, as its file says.</summary>
/// <param name="Capital">Capital.</param>
/// <param name="LifeYears">Life in years.</param>
/// <param name="DiscountRate">Discount rate a year, 0.06 for 6 %.</param>
/// <param name="PlantOnTime">Value of a plant on time.</param>
/// <param name="BoughtInShare">Share of missing plants that is bought in.</param>
/// <param name="BoughtInPrice">Price of a plant bought in.</param>
/// <param name="PlantWorth">What a plant more in time is worth by these terms.</param>
/// <param name="Upkeep">Upkeep a year.</param>
/// <param name="Residual">Worth at the end.</param>
/// <param name="Basis">Where the terms come from, in the words of the variant; may be empty.</param>
internal sealed record JsonTerms(
    double Capital,
    int LifeYears,
    double DiscountRate,
    double PlantOnTime,
    double BoughtInShare,
    double BoughtInPrice,
    double PlantWorth,
    double Upkeep,
    double Residual,
    string Basis
)
{
    public static JsonTerms Of(InvestTerms terms) =>
        new(
            Capital: terms.Capital,
            LifeYears: terms.LifeYears,
            DiscountRate: terms.DiscountRate,
            PlantOnTime: terms.PlantOnTime,
            BoughtInShare: terms.BoughtInShare,
            BoughtInPrice: terms.BoughtInPrice,
            PlantWorth: terms.PlantWorth,
            Upkeep: terms.Upkeep,
            Residual: terms.Residual,
            Basis: terms.Basis
        );
}

/// <summary>A part of what a year saves and costs.</summary>
/// <param name="Part">What it is.</param>
/// <param name="Unit">Unit of the quantity.</param>
/// <param name="Quantity">How much more or less of it.</param>
/// <param name="Priced">Whether it has a price.</param>
/// <param name="Benefit">What that is worth.</param>
internal sealed record JsonMoneyPart(string Part, string Unit, JsonMean Quantity, bool Priced, JsonMean Benefit)
{
    public static JsonMoneyPart Of(MoneyPart part) =>
        new(
            part.Name,
            part.Unit,
            new JsonMean(part.Quantity, part.QuantityHalfWidth),
            part.IsPriced,
            new JsonMean(part.Benefit, part.BenefitHalfWidth)
        );
}

/// <summary>An amount of money.</summary>
/// <param name="Mean">Mean.</param>
/// <param name="Interval">Its interval; null for one season.</param>
/// <param name="P10">Tenth percentile.</param>
/// <param name="P50">Median.</param>
/// <param name="P90">Ninetieth percentile.</param>
internal sealed record JsonMoney(double Mean, JsonInterval? Interval, double? P10, double? P50, double? P90)
{
    public static JsonMoney Of(MoneySpread spread) =>
        new(spread.Mean, JsonInterval.Of(spread.Low, spread.High), spread.P10, spread.P50, spread.P90);
}

/// <summary>An internal rate of return; null where there is none.</summary>
/// <param name="OfAverageYear">With every year as the mean of the seasons.</param>
/// <param name="Interval">Its interval; null for one season.</param>
/// <param name="P10">Tenth percentile over the runs.</param>
/// <param name="P50">Median over the runs.</param>
/// <param name="P90">Ninetieth percentile over the runs.</param>
/// <param name="LivesWithout">Runs that have none.</param>
/// <param name="LivesWithSeveral">Runs that have several; of these the greatest counts.</param>
internal sealed record JsonRate(
    double? OfAverageYear,
    JsonInterval? Interval,
    double? P10,
    double? P50,
    double? P90,
    int LivesWithout,
    int LivesWithSeveral
)
{
    public static JsonRate Of(RateSpread spread) =>
        new(
            spread.OfAverageYear,
            JsonInterval.Of(spread.Low, spread.High),
            spread.P10,
            spread.P50,
            spread.P90,
            spread.LivesWithout,
            spread.LivesWithSeveral
        );
}

/// <summary>Years until the money is back; null where it never is.</summary>
/// <param name="OfAverageYear">With every year as the mean of the seasons.</param>
/// <param name="Interval">Its interval; null for one season.</param>
/// <param name="P10">Tenth percentile over the runs.</param>
/// <param name="P50">Median over the runs.</param>
/// <param name="P90">Ninetieth percentile over the runs.</param>
internal sealed record JsonPayback(double? OfAverageYear, JsonInterval? Interval, double? P10, double? P50, double? P90)
{
    public static JsonPayback Of(PaybackSpread spread) =>
        new(spread.OfAverageYear, JsonInterval.Of(spread.Low, spread.High), spread.P10, spread.P50, spread.P90);
}

/// <summary>The net present value with one input lower or higher.</summary>
/// <param name="Input">The input.</param>
/// <param name="Value">Its value as given.</param>
/// <param name="Lower">A lower value.</param>
/// <param name="Higher">A higher value.</param>
/// <param name="RangeGiven">Whether the variant gives these two.</param>
/// <param name="NetAtLower">Net present value at the lower value.</param>
/// <param name="NetAtHigher">Net present value at the higher value.</param>
/// <param name="Swing">The difference of the two.</param>
/// <param name="Decides">Whether the case hangs on it.</param>
internal sealed record JsonSwing(
    string Input,
    double Value,
    double Lower,
    double Higher,
    bool RangeGiven,
    JsonMean NetAtLower,
    JsonMean NetAtHigher,
    double Swing,
    bool Decides
)
{
    public static JsonSwing Of(Swing swing, bool decides) =>
        new(
            InvestNames.Of(swing.Input),
            swing.Value,
            swing.Low,
            swing.High,
            swing.IsGiven,
            new JsonMean(swing.AtLow, swing.AtLowHalfWidth),
            new JsonMean(swing.AtHigh, swing.AtHighHalfWidth),
            swing.Size,
            decides
        );
}

/// <summary>What would have to be true of one input, all else as given, for the variant to pay.</summary>
/// <param name="Input">The input.</param>
/// <param name="Value">Its value as given.</param>
/// <param name="MustBe">"at least" or "at most".</param>
/// <param name="At">The value at which it breaks even; null where none does.</param>
/// <param name="Interval">Its interval; null for one season.</param>
/// <param name="Possible">Whether any value does.</param>
internal sealed record JsonBreakEven(string Input, double Value, string MustBe, double? At, JsonInterval? Interval, bool Possible)
{
    public static JsonBreakEven Of(BreakEven each) =>
        new(
            InvestNames.Of(each.Input),
            each.Value,
            each.IsFloor ? "at least" : "at most",
            each.At,
            JsonInterval.Of(each.Low, each.High),
            !each.IsHopeless
        );
}
