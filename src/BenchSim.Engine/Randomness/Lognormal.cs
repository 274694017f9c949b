namespace BenchSim.Engine.Randomness;

/// <summary>The lognormal law with mean 1: a factor that says how much more or less than usual, never below 0.</summary>
public static class Lognormal
{
    /// <summary>
    /// The factor that a lognormal draw of mean 1 is below with chance <paramref name="u"/>, by inverse transform:
    /// exp(s probit(u) - s^2/2) with s from <see cref="Sigma"/>.
    /// </summary>
    /// <param name="u">Chance strictly between 0 and 1. Not looked at when <paramref name="cv"/> is 0.</param>
    /// <param name="cv">Standard deviation over mean, 0 or more; 0 always gives 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance outside 0 to 1, or a negative or endless spread.</exception>
    public static double MeanOne(double u, double cv)
    {
        var sigma = Sigma(cv);
        return sigma == 0 ? 1 : Math.Exp((sigma * Normal.Quantile(u)) - (0.5 * sigma * sigma));
    }

    /// <summary>Standard deviation of the logarithm of a lognormal law: sqrt(ln(1 + cv^2)).</summary>
    /// <param name="cv">Standard deviation over mean of the law itself, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative or endless spread.</exception>
    public static double Sigma(double cv)
    {
        if (!(cv >= 0 && double.IsFinite(cv)))
        {
            throw new ArgumentOutOfRangeException(nameof(cv), cv, "The spread must be a number of 0 or more.");
        }

        return Math.Sqrt(Math.Log(1 + (cv * cv)));
    }
}
