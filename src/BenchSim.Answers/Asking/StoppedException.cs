namespace BenchSim.Answers.Asking;

/// <summary>A play was stopped, and what it has done is kept. The message is for people: how far it came, and how it goes on.</summary>
/// <param name="message">One or more whole sentences.</param>
/// <param name="inner">What stopped it.</param>
public sealed class StoppedException(string message, OperationCanceledException inner)
    : OperationCanceledException(message, inner, inner.CancellationToken);
