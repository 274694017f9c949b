namespace BenchSim.Study.Money;

/// <summary>How long an outlay takes to come back.</summary>
public static class Payback
{
    /// <summary>
    /// Years until the sum of the flows is first 0 or more, each year's flow spread evenly over its year; 0 when nothing is laid out; null
    /// when the flows given never bring it back.
    /// </summary>
    /// <param name="rate">Discount rate, fraction a year, above -1; 0 for the simple payback.</param>
    /// <param name="flows">Money received less money paid, now and in each year.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate is -1 or less, or no number.</exception>
    public static double? Years(double rate, ReadOnlySpan<double> flows)
    {
        if (!(rate > -1 && double.IsFinite(rate)))
        {
            throw new ArgumentOutOfRangeException(nameof(rate), rate, "Above -1.");
        }

        double sum = 0;
        double factor = 1;
        for (var year = 0; year < flows.Length; year++)
        {
            var before = sum;
            var flow = flows[year] * factor;
            sum += flow;
            if (sum >= 0)
            {
                return year == 0 ? 0 : year - 1 + (-before / flow);
            }

            factor /= 1 + rate;
        }

        return flows.IsEmpty ? 0 : null;
    }
}
