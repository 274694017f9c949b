using BenchSim.Season.Values;

namespace BenchSim.Season.Seed;

/// <summary>Constants of the seed viability equation for a species.</summary>
/// <param name="Species">Botanical name.</param>
/// <param name="KE">K_E.</param>
/// <param name="CW">C_W.</param>
/// <param name="CH">C_H.</param>
/// <param name="CQ">C_Q.</param>
/// <param name="OneTemperature">True when the species was tested at one temperature and the effect of temperature (C_H, C_Q) is that of
/// other species.</param>
/// <param name="Source">Where they come from.</param>
public sealed record ViabilityConstants(string Species, double KE, double CW, double CH, double CQ, bool OneTemperature, Provenance Source)
{
    /// <summary>
    /// Days in which the probit of viability falls by 1: sigma = 10^(K_E - C_W log10 m - C_H t - C_Q t^2) (Ellis and Roberts 1980, Annals
    /// of Botany 45, 13-30).
    /// </summary>
    /// <param name="storage">How the seed is kept.</param>
    /// <exception cref="ArgumentOutOfRangeException">Moisture or temperature is out of range.</exception>
    public double SigmaDays(SeedStorage storage)
    {
        var (moisture, temperature) = storage;
        if (!(moisture is > 0 and < 30))
        {
            throw new ArgumentOutOfRangeException(
                nameof(storage),
                moisture,
                "The moisture of seed must lie between 0 and 30 percent of its fresh weight."
            );
        }

        if (!(temperature is >= -20 and <= 50))
        {
            throw new ArgumentOutOfRangeException(
                nameof(storage),
                temperature,
                "The temperature of seed storage must lie between -20 and 50 C."
            );
        }

        return Math.Pow(10, KE - (CW * Math.Log10(moisture)) - (CH * temperature) - (CQ * temperature * temperature));
    }
}
