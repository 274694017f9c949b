using BenchSim.Season.Inputs;

namespace BenchSim.Study.Figures;

/// <summary>All spaces of one kind.</summary>
/// <param name="Kind">Mats, benches or tables.</param>
/// <param name="Spaces">Their positions in the scenario.</param>
/// <param name="Places">Their places together, by day.</param>
internal sealed record SpaceGroup(SpaceKind Kind, int[] Spaces, int[] Places);
