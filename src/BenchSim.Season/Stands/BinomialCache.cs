namespace BenchSim.Season.Stands;

/// <summary>
/// Quantiles of a binomial law with a fixed number of tries; keeps the table of the last chance, since trays that share a path share it.
/// </summary>
internal sealed class BinomialCache(int tries)
{
    private readonly double[] _cumulative = new double[tries + 1];
    private double _chance = double.NaN;

    public int Quantile(double p, double u)
    {
        if (!p.Equals(_chance))
        {
            Binomial.Cumulative(tries, p, _cumulative);
            _chance = p;
        }

        return Binomial.Quantile(_cumulative, u);
    }
}
