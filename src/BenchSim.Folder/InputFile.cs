using System.Collections.Immutable;

namespace BenchSim.Folder;

/// <summary>A file of a scenario folder.</summary>
/// <param name="Name">Name relative to the folder, with forward slashes.</param>
/// <param name="Bytes">Its bytes, as read.</param>
public sealed record InputFile(string Name, ImmutableArray<byte> Bytes);
