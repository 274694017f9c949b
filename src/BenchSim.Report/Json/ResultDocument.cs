using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Serialization;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Json;

/// <summary>
/// result.json in a report folder: all of the answer. Lists by day have one entry a day of the play, the first day first.
/// </summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Scenario">What was played.</param>
/// <param name="Seasons">Seasons played.</param>
/// <param name="Seed">Seed of all luck: a whole number as text, for it may be larger than those that every reader holds exactly.</param>
/// <param name="Verdict">The answer in words.</param>
/// <param name="Fits">Chance that a season fits, days held by weather alone excepted.</param>
/// <param name="FitsWeatherCounted">Chance that a season fits, every late day counted.</param>
/// <param name="SownTooLate">Chance that some batch is sown too late or not in full.</param>
/// <param name="OverHeldForPlace">Chance that some tray stands too long for lack of a place.</param>
/// <param name="TooFewInTime">Chance that fewer plants than the service goal are in time, days held by weather alone excepted.</param>
/// <param name="Causes">Why seasons do not fit.</param>
/// <param name="PlantsWanted">Plants wanted in the field.</param>
/// <param name="PlantsInTime">Wanted plants out in time.</param>
/// <param name="PlantsLate">Wanted plants out, but late.</param>
/// <param name="PlantsShort">Wanted plants never out.</param>
/// <param name="LatePlantDays">For each wanted plant its days late, summed.</param>
/// <param name="OverHeld">Trays that stood too long past due.</param>
/// <param name="Discarded">Trays and flats thrown out.</param>
/// <param name="StillStanding">Trays and flats standing on the last day.</param>
/// <param name="Reliefs">Ways of making room in force, in order.</param>
/// <param name="Mishaps">Mishaps in the order of the site.</param>
/// <param name="PlantsLostToMishaps">
/// Plants by which mishaps lessened those of the trays that went to the field; of flats nothing is counted.
/// </param>
/// <param name="Spaces">Spaces in the order of the site.</param>
/// <param name="Groups">All spaces of a kind together.</param>
/// <param name="Waits">Who waits for whom, as far as the plan can bring it.</param>
/// <param name="Bottlenecks">What more room would save; null where it was not asked for.</param>
/// <param name="Batches">Batches in the order of the plan.</param>
/// <param name="Growers">Growers in order of name.</param>
/// <param name="Houses">Houses in the order of the site.</param>
/// <param name="Mats">Heat mats whose watts are given.</param>
/// <param name="Work">The season's work.</param>
/// <param name="Warnings">Things to know about the plan that are no faults.</param>
/// <param name="Inputs">Files in the folder "inputs".</param>
internal sealed record ResultDocument(
    int Version,
    JsonScenario Scenario,
    int Seasons,
    string Seed,
    JsonVerdict Verdict,
    JsonChance Fits,
    JsonChance FitsWeatherCounted,
    JsonChance SownTooLate,
    JsonChance OverHeldForPlace,
    JsonChance TooFewInTime,
    ImmutableArray<JsonCause> Causes,
    int PlantsWanted,
    JsonEstimate PlantsInTime,
    JsonEstimate PlantsLate,
    JsonEstimate PlantsShort,
    JsonEstimate LatePlantDays,
    JsonEstimate OverHeld,
    JsonEstimate Discarded,
    JsonEstimate StillStanding,
    ImmutableArray<JsonRelief> Reliefs,
    ImmutableArray<JsonMishap> Mishaps,
    JsonEstimate PlantsLostToMishaps,
    ImmutableArray<JsonSpace> Spaces,
    ImmutableArray<JsonGroup> Groups,
    ImmutableArray<JsonWait> Waits,
    JsonBottlenecks? Bottlenecks,
    ImmutableArray<JsonBatch> Batches,
    ImmutableArray<JsonGrower> Growers,
    ImmutableArray<JsonHouse> Houses,
    ImmutableArray<JsonMats> Mats,
    JsonWork Work,
    ImmutableArray<JsonFault> Warnings,
    ImmutableArray<JsonInput> Inputs
)
{
    /// <summary>The document as UTF-8.</summary>
    public static byte[] Write(StudyResult result, IReadOnlyList<ReportInput> inputs) =>
        JsonDialect.Write(Of(result, inputs), ResultContext.Dialect.ResultDocument);

    private static ResultDocument Of(StudyResult result, IReadOnlyList<ReportInput> inputs) =>
        new(
            Version: JsonDialect.Version,
            Scenario: JsonScenario.Of(result.Plan, result.Variant),
            Seasons: result.Seasons,
            Seed: result.Seed.ToString(CultureInfo.InvariantCulture),
            Verdict: JsonVerdict.Of(Words.Verdict.Of(result)),
            Fits: JsonChance.Of(result.Fits),
            FitsWeatherCounted: JsonChance.Of(result.FitsWeatherCounted),
            SownTooLate: JsonChance.Of(result.SownTooLate),
            OverHeldForPlace: JsonChance.Of(result.OverHeldForPlace),
            TooFewInTime: JsonChance.Of(result.TooFewInTime),
            Causes: [.. result.Causes.Select(pair => new JsonCause(Trade.Code(pair.Key), pair.Value))],
            PlantsWanted: result.PlantsWanted,
            PlantsInTime: JsonEstimate.Of(result.PlantsInTime),
            PlantsLate: JsonEstimate.Of(result.PlantsLate),
            PlantsShort: JsonEstimate.Of(result.PlantsShort),
            LatePlantDays: JsonEstimate.Of(result.LatePlantDays),
            OverHeld: JsonEstimate.Of(result.OverHeld),
            Discarded: JsonEstimate.Of(result.Discarded),
            StillStanding: JsonEstimate.Of(result.StillStanding),
            Reliefs:
            [
                .. result.Plan.Scenario.Rules.Reliefs.Zip(result.ReliefUses, (relief, uses) =>
                    new JsonRelief(ReliefFields.Word[relief], JsonEstimate.Of(uses))
                ),
            ],
            Mishaps: JsonMishap.Of(result),
            PlantsLostToMishaps: JsonEstimate.Of(result.PlantsLostToMishaps),
            Spaces: [.. result.Spaces.Select(JsonSpace.Of)],
            Groups: [.. result.Groups.Select(JsonGroup.Of)],
            Waits: [.. result.Waits.Select(JsonWait.Of)],
            Bottlenecks: result.Bottlenecks is { } bottlenecks ? JsonBottlenecks.Of(bottlenecks) : null,
            Batches: [.. result.Batches.Select(JsonBatch.Of)],
            Growers: [.. result.Growers.Zip(GrowerCost.Of(result), JsonGrower.Of)],
            Houses: [.. result.Houses.Select(house => JsonHouse.Of(house, result.Plan.Scenario))],
            Mats: [.. result.MatPower.Select(JsonMats.Of)],
            Work: JsonWork.Of(result.Work),
            Warnings: JsonFault.Of(result.Plan.Warnings),
            Inputs: [.. inputs.Select(JsonInput.Of)]
        );
}

/// <summary>Writes result.json without looking types up while the program runs.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(ResultDocument))]
internal sealed partial class ResultContext : JsonSerializerContext
{
    public static ResultContext Dialect { get; } = new(JsonDialect.Options());
}
