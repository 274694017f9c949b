using System.Collections.Immutable;
using BenchSim.Report.Json;
using BenchSim.Study.Compare;

namespace BenchSim.Answers.Json;

/// <summary>What variants change.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Comparison">The variants against the base.</param>
/// <param name="SowDates">The sow dates of each variant, in the order asked for.</param>
/// <param name="Case">Case report; null where none was written.</param>
internal sealed record CompareDocument(
    int Version,
    string Name,
    JsonComparison Comparison,
    ImmutableArray<JsonSowDates> SowDates,
    string? Case
)
{
    public static CompareDocument Of(CompareResult result, string? caseReport) =>
        new(
            JsonDialect.Version,
            result.Base.Scenario.Name,
            JsonComparison.Of(result),
            [.. result.Variants.Select(variant => JsonSowDates.Of(result, variant))],
            caseReport
        );
}

/// <summary>The sow dates of a variant against those of the base.</summary>
/// <param name="Variant">Name of the variant.</param>
/// <param name="PlannedAnew">Whether its sow dates were worked out anew under what it changes.</param>
/// <param name="Moves">Sowings that it has on another day, in the order of its plan.</param>
internal sealed record JsonSowDates(string Variant, bool PlannedAnew, ImmutableArray<JsonMove> Moves)
{
    public static JsonSowDates Of(CompareResult result, VariantResult variant) =>
        new(variant.Name, variant.Plan.Scenario.IsPlannedAnew, [.. MovedSowing.Between(result.Base, variant.Plan).Select(JsonMove.Of)]);
}
