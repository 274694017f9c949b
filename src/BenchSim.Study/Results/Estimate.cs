namespace BenchSim.Study.Results;

/// <summary>
/// A quantity over the seasons: its mean with a 95 % interval, and exact quantiles (the smallest value that at least the stated share of
/// the seasons do not exceed). Tray-days, late plant-days, uses of a relief and hours that take more than 1,024 different values besides 0
/// have quantiles that may lie up to 0.4 % too high (docs/decisions/004-exact-counting.md). All numbers are NaN when no season was counted.
/// </summary>
/// <param name="Mean">Mean over the seasons.</param>
/// <param name="HalfWidth">Half the width of the 95 % Student interval of the mean; 0 when every season agrees; NaN for one season.</param>
/// <param name="P10">One season in ten is at or below this.</param>
/// <param name="P50">Median.</param>
/// <param name="P90">Nine seasons in ten are at or below this.</param>
/// <param name="P95">Nineteen seasons in twenty are at or below this.</param>
/// <param name="Least">Smallest season.</param>
/// <param name="Most">Largest season.</param>
/// <param name="Seasons">Seasons counted.</param>
public readonly record struct Estimate(
    double Mean,
    double HalfWidth,
    double P10,
    double P50,
    double P90,
    double P95,
    double Least,
    double Most,
    int Seasons
);
