namespace BenchSim.Study.Shards;

/// <summary>A file of the scenario that was played, kept in a part as it was read.</summary>
/// <param name="Name">Name relative to the scenario folder, with forward slashes.</param>
/// <param name="Bytes">Its bytes.</param>
public sealed record PartInput(string Name, ReadOnlyMemory<byte> Bytes);
