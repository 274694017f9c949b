using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Json;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Json;

/// <summary>What more room in each space would save, and who waits for whom.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Seasons">Seasons played of each trial.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="FirstDay">First day of the play, from which weeks count.</param>
/// <param name="Bottlenecks">What more room would save.</param>
/// <param name="Waits">Who waits for whom, as the plan is.</param>
/// <param name="Waiting">How to read who waits, in words.</param>
internal sealed record BottlenecksDocument(
    int Version,
    string Name,
    int Seasons,
    string Seed,
    DateOnly FirstDay,
    JsonBottlenecks Bottlenecks,
    ImmutableArray<JsonWait> Waits,
    string Waiting
)
{
    public static BottlenecksDocument Of(BottleneckResult result) =>
        new(
            JsonDialect.Version,
            result.Plan.Scenario.Name,
            result.Seasons,
            result.Seed.ToString(CultureInfo.InvariantCulture),
            result.Plan.FirstDay,
            JsonBottlenecks.Of(result),
            [.. result.Waits.Select(JsonWait.Of)],
            WaitSentences.Reading(result.Waits, result.Plan)
        );
}
