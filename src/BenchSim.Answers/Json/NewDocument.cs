using System.Collections.Immutable;

namespace BenchSim.Answers.Json;

/// <summary>A scenario folder that was laid down.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Folder">The folder.</param>
/// <param name="Files">Names of its files.</param>
internal sealed record NewDocument(int Version, string Folder, ImmutableArray<string> Files);
