namespace BenchSim.Level.Solving;

/// <summary>The best choices found.</summary>
/// <param name="Chosen">Position of the choice of each batch.</param>
/// <param name="OverBound">What is beyond the room can be no less than this, whatever is chosen.</param>
/// <param name="ShiftBound">Days of shift can be no fewer than this with as little beyond the room as <paramref name="Chosen"/> leaves.</param>
/// <param name="IsOverProved">True when it is proved that no choice leaves less beyond the room.</param>
/// <param name="IsShiftProved">True when it is proved that none with as little beyond the room shifts fewer days.</param>
internal sealed record LevelSolution(int[] Chosen, long OverBound, int ShiftBound, bool IsOverProved, bool IsShiftProved);
