namespace BenchSim.Study.Money;

/// <summary>What money that comes later is worth now.</summary>
public static class PresentValue
{
    /// <summary>Net present value: the sum over years t of flow(t) / (1 + rate)^t, where t = 0 is now.</summary>
    /// <param name="rate">Discount rate, fraction a year, above -1.</param>
    /// <param name="flows">Money received less money paid, now and at the end of each year.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is -1 or less, or no number.</exception>
    public static double Net(double rate, ReadOnlySpan<double> flows)
    {
        ThrowIfNoRate(rate);

        // Horner's rule in 1 / (1 + rate), last year first.
        var factor = 1 / (1 + rate);
        double value = 0;
        for (var year = flows.Length - 1; year >= 0; year--)
        {
            value = (value * factor) + flows[year];
        }

        return value;
    }

    /// <summary>Present value of 1 at the end of each year: (1 - (1 + rate)^-years) / rate; the years themselves at no interest.</summary>
    /// <param name="rate">Discount rate, fraction a year, above -1.</param>
    /// <param name="years">Years, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is -1 or less, or the years are negative.</exception>
    public static double Annuity(double rate, int years)
    {
        ThrowIfNoRate(rate);
        ArgumentOutOfRangeException.ThrowIfNegative(years);

        // Summed, not by the formula: it would lose its digits at rates near 0.
        var factor = 1 / (1 + rate);
        double sum = 0;
        for (var year = 0; year < years; year++)
        {
            sum = (sum + 1) * factor;
        }

        return sum;
    }

    private static void ThrowIfNoRate(double rate)
    {
        if (!(rate > -1 && double.IsFinite(rate)))
        {
            throw new ArgumentOutOfRangeException(nameof(rate), rate, "Above -1.");
        }
    }
}
