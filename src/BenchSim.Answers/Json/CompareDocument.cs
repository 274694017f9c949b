using BenchSim.Report.Json;
using BenchSim.Study.Compare;

namespace BenchSim.Answers.Json;

/// <summary>What variants change.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Comparison">The variants against the base.</param>
/// <param name="Case">Case report; null where none was written.</param>
internal sealed record CompareDocument(int Version, string Name, JsonComparison Comparison, string? Case)
{
    public static CompareDocument Of(CompareResult result, string? caseReport) =>
        new(JsonDialect.Version, result.Base.Scenario.Name, JsonComparison.Of(result), caseReport);
}
