using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Json;
using BenchSim.Study.Dense;

namespace BenchSim.Answers.Json;

/// <summary>Crops sown directly, and sown dense and potted up later.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Seasons">Seasons played of each way.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="Comparisons">Intervals in all; with 95 % confidence they hold at once.</param>
/// <param name="EachConfidence">Confidence of each interval.</param>
/// <param name="Flat">Open flat for sowings that the plan sows directly.</param>
/// <param name="Crops">The crops.</param>
/// <param name="Skipped">Crops that cannot be sown both ways.</param>
/// <param name="Folder">Folder of the chart and tables; null where none was written.</param>
internal sealed record DenseDocument(
    int Version,
    string Name,
    int Seasons,
    string Seed,
    int Comparisons,
    double EachConfidence,
    string Flat,
    ImmutableArray<JsonDenseCrop> Crops,
    ImmutableArray<JsonSkipped> Skipped,
    string? Folder
)
{
    public static DenseDocument Of(DenseResult result, string? folder) =>
        new(
            JsonDialect.Version,
            result.Base.Scenario.Name,
            result.Seasons,
            result.Seed.ToString(CultureInfo.InvariantCulture),
            result.Comparisons,
            result.EachConfidence,
            result.Flat.Id,
            [.. result.Crops.Select(JsonDenseCrop.Of)],
            [.. result.Skipped.Select(skip => new JsonSkipped(skip.CropId, skip.Way, skip.Why))],
            folder
        );
}

/// <summary>A crop, both ways.</summary>
/// <param name="Crop">Crop id.</param>
/// <param name="Sowings">Sowings of it.</param>
/// <param name="Planned">How the plan sows it: "direct", "pot-up" or "both".</param>
/// <param name="SeedsPerFlatLeast">Fewest seeds a flat.</param>
/// <param name="SeedsPerFlatMost">Most seeds a flat.</param>
/// <param name="DirectFits">Chance that a season fits with the crop sown directly.</param>
/// <param name="DenseFits">Chance that a season fits with the crop sown dense.</param>
/// <param name="FitsChange">The chance sown dense against that sown directly.</param>
/// <param name="Measures">The other measures, directly as the base and dense as the variant.</param>
/// <param name="BreakEven">From which density on it pays.</param>
internal sealed record JsonDenseCrop(
    string Crop,
    int Sowings,
    string Planned,
    int SeedsPerFlatLeast,
    int SeedsPerFlatMost,
    JsonChance DirectFits,
    JsonChance DenseFits,
    JsonFitChange FitsChange,
    ImmutableArray<JsonMeasure> Measures,
    JsonDenseBreakEven BreakEven
)
{
    public static JsonDenseCrop Of(DenseCrop crop) =>
        new(
            Crop: crop.Crop.Id,
            Sowings: crop.Direct.Length,
            Planned: crop.IsPlannedDirect switch
            {
                true => "direct",
                false => "pot-up",
                null => "both",
            },
            SeedsPerFlatLeast: crop.SeedsPerFlat.Least,
            SeedsPerFlatMost: crop.SeedsPerFlat.Most,
            DirectFits: JsonChance.Of(crop.Fits.Base),
            DenseFits: JsonChance.Of(crop.Fits.Variant),
            FitsChange: JsonFitChange.Of(crop.Fits),
            Measures: [.. crop.Changes.Select(JsonMeasure.Of)],
            BreakEven: JsonDenseBreakEven.Of(crop.BreakEven)
        );
}

/// <summary>From which density on dense sowing pays, worked out from planned dates and numbers; null where no density does.</summary>
/// <param name="MatSeedsPerFlat">Seeds a flat above which mats are freed.</param>
/// <param name="MatSeedsPerFlatWholeFlats">The same in whole flats.</param>
/// <param name="LabourSeedsPerFlat">Seeds a flat above which it takes no more work.</param>
/// <param name="LabourSeedsPerFlatWholeFlats">The same in whole flats.</param>
/// <param name="DirectMinutes">Minutes of work sown directly.</param>
/// <param name="PottedMinutes">Minutes of potting up, with the moves after it.</param>
internal sealed record JsonDenseBreakEven(
    double? MatSeedsPerFlat,
    int? MatSeedsPerFlatWholeFlats,
    double? LabourSeedsPerFlat,
    int? LabourSeedsPerFlatWholeFlats,
    double DirectMinutes,
    double PottedMinutes
)
{
    public static JsonDenseBreakEven Of(DenseBreakEven even) =>
        new(even.MatSeeds, even.MatSeedsWhole, even.LabourSeeds, even.LabourSeedsWhole, even.DirectMinutes, even.PottedMinutes);
}

/// <summary>A crop that is left out.</summary>
/// <param name="Crop">Crop id.</param>
/// <param name="Way">The way in which it cannot be sown.</param>
/// <param name="Why">Why not.</param>
internal sealed record JsonSkipped(string Crop, string Way, string Why);
