namespace BenchSim.Study.Dense;

/// <summary>What one density of sowing would take, by planned dates and numbers.</summary>
/// <param name="SeedsPerFlat">Seeds a flat.</param>
/// <param name="Flats">Flats of all batches of the crop.</param>
/// <param name="Seeds">Seeds in them.</param>
/// <param name="MatTrayDays">Tray-days on the mats.</param>
/// <param name="DirectMatTrayDays">The same sown directly.</param>
/// <param name="Minutes">Minutes of work.</param>
/// <param name="DirectMinutes">The same sown directly.</param>
public readonly record struct DensityPoint(
    int SeedsPerFlat,
    long Flats,
    long Seeds,
    double MatTrayDays,
    double DirectMatTrayDays,
    double Minutes,
    double DirectMinutes
);
