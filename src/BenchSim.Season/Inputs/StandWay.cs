namespace BenchSim.Season.Inputs;

/// <summary>One way to reach a stand.</summary>
/// <param name="What">The way in words: "as planned", "one seed a cell", "two seeds a cell and thin", "an extra tray".</param>
/// <param name="Trays">Trays sown.</param>
/// <param name="SeedsPerCell">Seeds a cell.</param>
/// <param name="Seeds">Seeds in all.</param>
/// <param name="Chance">Chance of the wanted plants.</param>
/// <param name="Cost">Cost of seed, mix and the work of sowing, in the user's money; null when a price is missing.</param>
public sealed record StandWay(string What, int Trays, int SeedsPerCell, long Seeds, double Chance, double? Cost);
