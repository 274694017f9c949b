namespace BenchSim.Study.Dense;

/// <summary>A crop that cannot be sown both ways.</summary>
/// <param name="CropId">Crop.</param>
/// <param name="Way">The way that cannot be: "directly" or "dense".</param>
/// <param name="Why">Why, as the faults of a plan say it.</param>
public sealed record DenseSkip(string CropId, string Way, string Why);
