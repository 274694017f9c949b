namespace BenchSim.Study.Learning;

/// <summary>What batches teach of a value of their crop.</summary>
/// <param name="Old">The value in force.</param>
/// <param name="New">The value by what was seen.</param>
/// <param name="Low">It is below this with a chance of 5 %.</param>
/// <param name="High">It is above this with a chance of 5 %.</param>
/// <param name="Seen">Batches, or seeds and plants, behind it.</param>
public readonly record struct Learned(double Old, double New, double Low, double High, int Seen);
