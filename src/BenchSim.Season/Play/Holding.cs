namespace BenchSim.Season.Play;

/// <summary>Places that a batch took, or left.</summary>
/// <param name="Evening">The first evening on which it counts, 0 the first of the season.</param>
/// <param name="Space">Where.</param>
/// <param name="Places">How many more; below 0, fewer.</param>
internal readonly record struct Holding(int Evening, int Space, int Places);
