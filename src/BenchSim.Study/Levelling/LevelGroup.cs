using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Levelling;

/// <summary>Spaces that some crop may use, and the trays that may stand nowhere else.</summary>
/// <param name="Kind">Mats, benches or tables.</param>
/// <param name="Spaces">Their positions in the scenario, in rising order.</param>
/// <param name="IsWholeKind">True when they are all of the site's spaces of the kind.</param>
/// <param name="Places">Their places together, by day.</param>
public sealed record LevelGroup(SpaceKind Kind, ImmutableArray<int> Spaces, bool IsWholeKind, ImmutableArray<int> Places);
