using BenchSim.Season.Inputs;

namespace BenchSim.Season.Stands;

/// <summary>
/// The share of its plants that a batch loses between emergence and the field. Losses come in lumps: the share of a batch is drawn from
/// Beta(l n, (1 - l) n), so that plants lost are beta-binomial, with l the mean and n = (1 - r) / r for a correlation r between two plants
/// of a batch (Skellam 1948, J. R. Stat. Soc. B 10, 257; of plant disease: Hughes and Madden 1993, Phytopathology 83, 759).
/// </summary>
public sealed class StandLoss
{
    private const double LeastMean = 1e-6;
    private const double LeastCorrelation = 1e-5;

    private readonly BetaLaw? _law;

    /// <summary>Makes a law.</summary>
    /// <param name="mean">Mean share lost l, 0 to below 1.</param>
    /// <param name="correlation">
    /// Correlation r of the loss of two plants of a batch, 0 to 0.5; at 0, and below 0.00001, each plant is lost by itself.
    /// </param>
    public StandLoss(double mean, double correlation)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(correlation);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(correlation, Crop.MostStandLossCorrelation);
        Mean = mean;
        Sample =
            mean is >= LeastMean and < 1 && correlation >= LeastCorrelation ? (1 - correlation) / correlation : double.PositiveInfinity;
        _law = HasSpread ? BetaLaw.Of(mean, Sample) : null;
    }

    /// <summary>Mean share lost, 0 to below 1.</summary>
    public double Mean { get; }

    /// <summary>Sample size of the beta law n; infinite where every batch loses the same share.</summary>
    public double Sample { get; }

    /// <summary>Whether batches differ in the share they lose.</summary>
    public bool HasSpread => double.IsFinite(Sample);

    /// <summary>The law of a crop.</summary>
    /// <param name="crop">Crop.</param>
    public static StandLoss Of(Crop crop)
    {
        ArgumentNullException.ThrowIfNull(crop);
        return new StandLoss(crop.StandLoss, crop.StandLossCorrelation);
    }

    /// <summary>The share lost that a batch stays below with a given chance, 0 to 1.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double Quantile(double u) => _law?.Quantile(u) ?? Mean;
}
