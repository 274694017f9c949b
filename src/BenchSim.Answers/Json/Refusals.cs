using System.Collections.Immutable;
using BenchSim.Report.Json;

namespace BenchSim.Answers.Json;

/// <summary>Faults were found; nothing was done.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Faults">Every fault, in order of file, line and column.</param>
internal sealed record FaultsDocument(int Version, ImmutableArray<JsonFault> Faults);

/// <summary>What was asked was refused; nothing was done.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Error">What stands in the way and what would help.</param>
internal sealed record RefusalDocument(int Version, string Error);
