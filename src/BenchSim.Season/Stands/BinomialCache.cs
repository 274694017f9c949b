namespace BenchSim.Season.Stands;

/// <summary>Quantiles of a binomial law with a fixed number of tries; keeps the table of the last chance, since trays that share a path share it.</summary>
internal sealed class BinomialCache(int tries)
{
    private readonly double[] cumulative = new double[tries + 1];
    private double chance = double.NaN;

    public int Tries => tries;

    public int Quantile(double p, double u)
    {
        if (!p.Equals(chance))
        {
            Binomial.Cumulative(tries, p, cumulative);
            chance = p;
        }

        return Binomial.Quantile(cumulative, u);
    }
}
