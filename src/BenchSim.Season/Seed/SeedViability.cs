using BenchSim.Engine.Randomness;

namespace BenchSim.Season.Seed;

/// <summary>How the germination of a seed lot falls with age (docs/model.md section 4): probit(v) = Ki - p / sigma.</summary>
public static class SeedViability
{
    /// <summary>Seeds in a germination test when nothing else is said: four hundred, the usual laboratory sample.</summary>
    public const int DefaultSample = 400;

    /// <summary>
    /// A tested fraction kept off 0 and 1, where there is no probit: at least 0.25 / n and at most 1 - 0.25 / n. A test of n seeds cannot
    /// tell such a lot from a perfect one.
    /// </summary>
    /// <param name="tested">Tested fraction, 0 to 1.</param>
    /// <param name="sample">Seeds tested n, 1 or more.</param>
    public static double Clip(double tested, int sample = DefaultSample)
    {
        if (!(tested is >= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(tested), tested, "A germination fraction must lie between 0 and 1.");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(sample, 1);
        return Math.Clamp(tested, 0.25 / sample, 1 - (0.25 / sample));
    }

    /// <summary>Fraction that still germinates after some days of storage.</summary>
    /// <param name="tested">Tested fraction, 0 to 1.</param>
    /// <param name="sample">Seeds tested, 1 or more.</param>
    /// <param name="days">Days from the test, 0 or more.</param>
    /// <param name="sigmaDays">Sigma from <see cref="ViabilityConstants.SigmaDays"/>, days, above 0.</param>
    public static double Aged(double tested, int sample, double days, double sigmaDays)
    {
        if (!(days >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(days), days, "Seed cannot be sown before its test.");
        }

        if (!(sigmaDays > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(sigmaDays), sigmaDays, "Sigma must be above 0.");
        }

        return Normal.Cumulative(Normal.Quantile(Clip(tested, sample)) - (days / sigmaDays));
    }

    /// <summary>Fraction that still germinates at sowing.</summary>
    /// <param name="tested">Tested fraction, 0 to 1.</param>
    /// <param name="sample">Seeds tested, 1 or more.</param>
    /// <param name="testedOn">Date of the test.</param>
    /// <param name="sownOn">Planned sow date, not before the test.</param>
    /// <param name="constants">Constants of the species.</param>
    /// <param name="storage">How the seed is kept in between.</param>
    public static double AtSowing(
        double tested,
        int sample,
        DateOnly testedOn,
        DateOnly sownOn,
        ViabilityConstants constants,
        SeedStorage storage
    )
    {
        ArgumentNullException.ThrowIfNull(constants);
        return Aged(tested, sample, sownOn.DayNumber - testedOn.DayNumber, constants.SigmaDays(storage));
    }
}
