using BenchSim.Engine.Randomness;

namespace Published.Engine;

/// <summary>Random numbers of one replication of a check, in sequence. The seed is fixed, so a check gives the
/// same answer every time.</summary>
internal sealed class Draws(string name, int replication)
{
    private readonly PhiloxKey _key = PhiloxKey.Of(20240501, name);
    private uint _block;
    private double _kept = double.NaN;

    /// <summary>Strictly between 0 and 1.</summary>
    public double Uniform()
    {
        if (!double.IsNaN(_kept))
        {
            var second = _kept;
            _kept = double.NaN;
            return second;
        }

        var block = Philox.Block(new PhiloxBlock(_block++, (uint)replication, 0, 0), _key);
        _kept = block.Uniform1;
        return block.Uniform0;
    }

    public double Exponential(double mean) => -Math.Log(Uniform()) * mean;

    /// <summary>Sum of exponentials with the mean asked for.</summary>
    public double Erlang(int phases, double mean)
    {
        double sum = 0;
        for (var i = 0; i < phases; i++)
        {
            sum += Exponential(mean / phases);
        }

        return sum;
    }

    /// <summary>Two exponentials in parallel with balanced means: mean 1 and a squared coefficient of variation above 1.</summary>
    public double HyperExponential(double squaredVariation)
    {
        var first = 0.5 * (1 + Math.Sqrt((squaredVariation - 1) / (squaredVariation + 1)));
        var chance = Uniform() < first ? first : 1 - first;
        return Exponential(1 / (2 * chance));
    }
}
