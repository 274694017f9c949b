using BenchSim.Season.Inputs;

namespace BenchSim.Study.Dense;

/// <summary>What is to be sown how densely.</summary>
/// <param name="CropId">The one crop to look at; null for every crop that stands on a heat mat.</param>
/// <param name="Flat">Open flat for batches that the plan sows directly.</param>
/// <param name="SeedsPerFlat">Seeds a flat, 1 or more; null for what the plan or the flat says.</param>
public sealed record DenseSettings(string? CropId, TrayType Flat, int? SeedsPerFlat);
