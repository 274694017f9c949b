namespace BenchSim.Cli;

/// <summary>The command cannot do what was asked. The message is for people: what stands in the way and what would help.</summary>
internal sealed class RefusedException(string message) : Exception(message);
