using BenchSim.Season.Values;

namespace BenchSim.Season.Seed;

/// <summary>The viability constants a crop uses.</summary>
/// <param name="CropId">Crop id.</param>
/// <param name="Constants">Constants.</param>
/// <param name="Source">Their source for this crop: the species' own, or borrowed from a named relative.</param>
public sealed record CropViability(string CropId, ViabilityConstants Constants, Provenance Source);
