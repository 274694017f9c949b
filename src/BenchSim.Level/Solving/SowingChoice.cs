namespace BenchSim.Level.Solving;

/// <summary>One day on which a batch may be sown, as levelling sees it.</summary>
/// <param name="Shift">Days from the planned sow date, below 0 for earlier; 0 exactly once in a batch.</param>
/// <param name="Load">What the batch takes then, by group and day, whole numbers of 0 or more in the unit of <see cref="LevelProblem.Room"/>.</param>
internal sealed record SowingChoice(int Shift, long[][] Load);
