namespace BenchSim.Cli.Terminal;

/// <summary>Standard output takes no more, as on a full disk. What a command writes to files is written by then.</summary>
/// <param name="failure">What the system said.</param>
internal sealed class OutputFailedException(Exception failure) : Exception($"The answer could not be printed: {failure.Message}", failure);
