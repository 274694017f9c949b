using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Json;
using BenchSim.Report.Words;
using BenchSim.Study.Sizing;

namespace BenchSim.Answers.Json;

/// <summary>How large a space has to be.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Variant">Variant that was played; null for the folder as it is.</param>
/// <param name="Space">Id of the space.</param>
/// <param name="PlacesNow">Its places as it is.</param>
/// <param name="Goal">Share of seasons in which the plan must fit.</param>
/// <param name="Confidence">Confidence of the interval that must lie above the goal.</param>
/// <param name="Seasons">Seasons played of each number of places.</param>
/// <param name="SeasonsInAll">Seasons played in all.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="Places">Fewest places that are enough; null where no number is.</param>
/// <param name="EveryNumberPlayed">Whether every number of places was played, not only those that the search needs.</param>
/// <param name="Largest">Most places that were looked at.</param>
/// <param name="Curve">The numbers of places that were played, fewest first.</param>
/// <param name="Unlimited">Without limit on this space.</param>
/// <param name="EverySpaceUnlimited">Without limit on any space.</param>
/// <param name="Sentences">The findings in words.</param>
/// <param name="Folder">Folder of the curve; null where none was written.</param>
internal sealed record SizeDocument(
    int Version,
    string Name,
    string? Variant,
    string Space,
    int PlacesNow,
    double Goal,
    double Confidence,
    int Seasons,
    long SeasonsInAll,
    string Seed,
    int? Places,
    bool EveryNumberPlayed,
    int Largest,
    ImmutableArray<JsonSize> Curve,
    JsonSize Unlimited,
    JsonSize EverySpaceUnlimited,
    ImmutableArray<string> Sentences,
    string? Folder
)
{
    public static SizeDocument Of(SizeResult result, string? variant, string? folder) =>
        new(
            Version: JsonDialect.Version,
            Name: result.Plan.Scenario.Name,
            Variant: variant,
            Space: result.Space.Id,
            PlacesNow: result.Space.Places,
            Goal: result.Goal.Share,
            Confidence: result.Goal.Confidence,
            Seasons: result.Seasons,
            SeasonsInAll: result.SeasonsInAll,
            Seed: result.Seed.ToString(CultureInfo.InvariantCulture),
            Places: result.Answer?.Places,
            EveryNumberPlayed: result.IsWhole,
            Largest: result.Largest,
            Curve: [.. result.Curve.Select(JsonSize.Of)],
            Unlimited: JsonSize.Of(result.Unlimited),
            EverySpaceUnlimited: JsonSize.Of(result.Everywhere),
            Sentences: SizeSentences.Of(result).Add(SizeSentences.Effort(result)),
            Folder: folder
        );
}

/// <summary>A number of places, played.</summary>
/// <param name="Places">Places; null for no limit.</param>
/// <param name="Fits">Chance that a season fits.</param>
/// <param name="PlantsInTime">Plants out in time in a season, mean.</param>
/// <param name="LatePlantDays">Late plant-days of a season.</param>
/// <param name="MeetsGoal">Whether the interval of the chance lies above the goal.</param>
internal sealed record JsonSize(int? Places, JsonChance Fits, double PlantsInTime, JsonMean LatePlantDays, bool MeetsGoal)
{
    public static JsonSize Of(SizePoint point) =>
        new(point.Places, JsonChance.Of(point.Fits), point.PlantsInTime, new JsonMean(point.LatePlantDays, point.HalfWidth), point.IsMet);
}
