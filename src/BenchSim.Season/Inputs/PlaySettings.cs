namespace BenchSim.Season.Inputs;

/// <summary>How often the season is played, and with which luck.</summary>
/// <param name="Seasons">Seasons to play, 1 or more.</param>
/// <param name="Seed">Seed of all luck.</param>
public sealed record PlaySettings(int Seasons = 1000, ulong Seed = 1);
