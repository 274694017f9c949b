namespace BenchSim.Study.Sweeps;

/// <summary>What one task of a sweep plays. All numbers count from 0.</summary>
/// <param name="Folder">Which scenario folder.</param>
/// <param name="Plan">Which of the plans of that folder: the plan itself or a variant.</param>
/// <param name="Set">Which set of values; 0 for the values as given.</param>
/// <param name="Block">Which block of seasons.</param>
public readonly record struct SweepCell(int Folder, int Plan, int Set, int Block);
