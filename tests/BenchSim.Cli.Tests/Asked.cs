using BenchSim.Answers.Asking;

namespace BenchSim.Cli.Tests;

/// <summary>What a test asks a question with, to hold what a command prints against its answer.</summary>
internal static class Asked
{
    public static PlayWatch Unwatched { get; } = new(CancellationToken.None);
}
