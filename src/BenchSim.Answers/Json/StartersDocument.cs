using System.Collections.Immutable;

namespace BenchSim.Answers.Json;

/// <summary>The starters that a folder can be laid down from.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Farms">The starters.</param>
/// <param name="Climates">The climates each comes in.</param>
internal sealed record StartersDocument(int Version, ImmutableArray<StarterDocument> Farms, ImmutableArray<StarterDocument> Climates);

/// <summary>A starter, or a climate.</summary>
/// <param name="Name">Word that asks for it.</param>
/// <param name="About">What it is.</param>
internal sealed record StarterDocument(string Name, string About);
