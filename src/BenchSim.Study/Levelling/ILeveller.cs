namespace BenchSim.Study.Levelling;

/// <summary>
/// Finds the best choices of a <see cref="LevelProblem"/>. It stands in a project of its own, for its solver is large, and whoever levels
/// hands it in.
/// </summary>
public interface ILeveller
{
    /// <summary>The best choices that can be found with the effort. The same problem and effort give the same choices.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="effort">Effort of each of the two searches, above 0, in a unit of about a second's work.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    LevelSolution Solve(LevelProblem problem, double effort, CancellationToken cancel);
}
