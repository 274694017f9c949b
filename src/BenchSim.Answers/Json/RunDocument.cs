using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Json;
using BenchSim.Study.Precision;

namespace BenchSim.Answers.Json;

/// <summary>The answer of a run; result.json in the report folder has the rest.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Variant">Variant that was played; null for the folder as it is.</param>
/// <param name="Seasons">Seasons played.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="Fits">Chance that a season fits, days held by weather alone excepted.</param>
/// <param name="FitsWeatherCounted">Chance that a season fits, every late day counted.</param>
/// <param name="Require">The share of seasons that had to fit; null where none was asked for.</param>
/// <param name="Precision">How the number of seasons was found; null where it was given.</param>
/// <param name="Verdict">The answer in words.</param>
/// <param name="Bottlenecks">What more room would save, in sentences; null where it was not asked for.</param>
/// <param name="Warnings">Things to know about the plan that are no faults.</param>
/// <param name="Report">Report folder; null where none was written.</param>
/// <param name="Case">Case report; null where none was written.</param>
/// <param name="Since">What has changed since an earlier report; null where none was named.</param>
/// <param name="Trust">How far the values behind it may move the share; null where that was not asked.</param>
internal sealed record RunDocument(
    int Version,
    string Name,
    string? Variant,
    int Seasons,
    string Seed,
    JsonChance Fits,
    JsonChance FitsWeatherCounted,
    JsonRequirement? Require,
    JsonPrecision? Precision,
    JsonVerdict Verdict,
    ImmutableArray<string>? Bottlenecks,
    ImmutableArray<JsonFault> Warnings,
    string? Report,
    string? Case,
    JsonSince? Since,
    JsonKnownRange? Trust
);

/// <summary>How far the values behind it may move the share of seasons that fit.</summary>
/// <param name="Values">Values that may be wrong.</param>
/// <param name="Low">5 % of the sets of values bring a share below it.</param>
/// <param name="Middle">Half of them do.</param>
/// <param name="High">5 % of them bring a share above it.</param>
internal sealed record JsonKnownRange(int Values, double Low, double Middle, double High);

/// <summary>A share of seasons that had to fit.</summary>
/// <param name="Share">The share, 0 to 1.</param>
/// <param name="Met">Whether as many fit.</param>
internal sealed record JsonRequirement(double Share, bool Met);

/// <summary>How the number of seasons was found.</summary>
/// <param name="FitsHalfWidth">Half width that was asked for of the interval of the chance that a season fits; null for none.</param>
/// <param name="LatePlantDaysHalfWidth">Half width that was asked for of the interval of the mean late plant-days; null for none.</param>
/// <param name="Least">Fewest seasons to play.</param>
/// <param name="Most">Most seasons to play.</param>
/// <param name="Reached">Whether the intervals became as narrow as asked.</param>
/// <param name="Looks">The numbers of seasons at which the intervals were looked at.</param>
/// <param name="Words">Why the play stopped where it did.</param>
internal sealed record JsonPrecision(
    double? FitsHalfWidth,
    double? LatePlantDaysHalfWidth,
    int Least,
    int Most,
    bool Reached,
    ImmutableArray<JsonLook> Looks,
    string Words
)
{
    public static JsonPrecision Of(PrecisionResult result) =>
        new(
            result.Goal.Chance,
            result.Goal.LatePlantDays,
            result.Goal.Least,
            result.Goal.Most,
            result.IsReached,
            [.. result.Looks.Select(look => new JsonLook(JsonChance.Of(look.Fits), JsonEstimate.Of(look.LatePlantDays)))],
            PrecisionWords.WhyItStopped(result)
        );
}

/// <summary>A look at the intervals.</summary>
/// <param name="Fits">Chance that a season fits.</param>
/// <param name="LatePlantDays">Late plant-days.</param>
internal sealed record JsonLook(JsonChance Fits, JsonEstimate LatePlantDays);

/// <summary>A part of a run that was played.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Part">Number of the part, from 1.</param>
/// <param name="Parts">Parts in all.</param>
/// <param name="FirstSeason">Its first season, from 1.</param>
/// <param name="LastSeason">Its last season.</param>
/// <param name="Seasons">Seasons of the run.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="File">File of the part.</param>
internal sealed record PartDocument(
    int Version,
    int Part,
    int Parts,
    int FirstSeason,
    int LastSeason,
    int Seasons,
    string Seed,
    string File
);

/// <summary>The story of one batch in one season.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Batch">Id of the batch.</param>
/// <param name="Season">Season, from 1.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="Story">The story, a line an entry.</param>
internal sealed record StoryDocument(int Version, string Batch, int Season, string Seed, ImmutableArray<string> Story);
