using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Json;
using BenchSim.Study.Compare;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Json;

/// <summary>Variants against a base, in the same seasons.</summary>
/// <param name="Seasons">Seasons played of each.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="Confidence">Confidence that all intervals hold at once.</param>
/// <param name="Comparisons">Intervals in all.</param>
/// <param name="EachConfidence">Confidence of each interval.</param>
/// <param name="Fits">Chance that a season of the base fits.</param>
/// <param name="Variants">The variants.</param>
internal sealed record JsonComparison(
    int Seasons,
    string Seed,
    double Confidence,
    int Comparisons,
    double EachConfidence,
    JsonChance Fits,
    ImmutableArray<JsonVariant> Variants
)
{
    public static JsonComparison Of(CompareResult result) =>
        new(
            result.Seasons,
            result.Seed.ToString(CultureInfo.InvariantCulture),
            result.Confidence,
            result.Comparisons,
            result.EachConfidence,
            JsonChance.Of(result.Variants[0].Fits.Base),
            [.. result.Variants.Select(JsonVariant.Of)]
        );
}

/// <summary>A variant against the base.</summary>
/// <param name="Name">Name of the variant.</param>
/// <param name="Fits">Chance that a season of it fits.</param>
/// <param name="FitsChange">The chance against that of the base.</param>
/// <param name="Measures">The other measures.</param>
internal sealed record JsonVariant(string Name, JsonChance Fits, JsonFitChange FitsChange, ImmutableArray<JsonMeasure> Measures)
{
    public static JsonVariant Of(VariantResult variant) =>
        new(variant.Name, JsonChance.Of(variant.Fits.Variant), JsonFitChange.Of(variant.Fits), [.. variant.Changes.Select(JsonMeasure.Of)]);
}

/// <summary>A measure of two ways, in the same seasons: of a base and a variant, or sown directly and dense.</summary>
/// <param name="Measure">Code of the measure.</param>
/// <param name="Unit">Its unit; a currency, which may be empty, for money.</param>
/// <param name="Base">Mean of the base, or sown directly.</param>
/// <param name="Variant">Mean of the variant, or sown dense.</param>
/// <param name="Difference">Mean of the variant less the base.</param>
/// <param name="Interval">Interval of the difference, allowing for all comparisons made; null for one season.</param>
/// <param name="Real">The interval leaves out 0.</param>
/// <param name="SeasonsDiffering">Seasons in which the two are not the same.</param>
/// <param name="VarianceRatio">
/// How many times smaller the variance of the difference is than in seasons of their own; null when there is none or the difference
/// never varies.
/// </param>
internal sealed record JsonMeasure(
    string Measure,
    string Unit,
    double Base,
    double Variant,
    double Difference,
    JsonInterval? Interval,
    bool Real,
    int SeasonsDiffering,
    double? VarianceRatio
)
{
    public static JsonMeasure Of(MeasureChange change) =>
        new(
            change.Measure.Code,
            change.Measure.Unit,
            change.Base,
            change.Variant,
            change.Difference,
            JsonInterval.Of(change.Low, change.High),
            change.IsReal,
            change.Differing,
            change.VarianceRatio
        );
}
