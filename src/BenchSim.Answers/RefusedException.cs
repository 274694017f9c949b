namespace BenchSim.Answers;

/// <summary>What was asked cannot be done. The message is for people: what stands in the way and what would help.</summary>
/// <param name="message">One or more whole sentences.</param>
public sealed class RefusedException(string message) : Exception(message);
