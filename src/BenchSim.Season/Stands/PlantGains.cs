using MathNet.Numerics;

namespace BenchSim.Season.Stands;

/// <summary>
/// By how much each plant more, from the wanted number on, raises the chance that the wanted plants outlive the losses of their batch: the
/// chance that just this plant is the last of the wanted ones. Of m plants it is C(m - 1, w - 1) k^w (1 - k)^(m - w), k the share kept; of
/// a batch whose losses are Beta(a, b) the mean of that, C(m - 1, w - 1) B(b + w, a + m - w) / B(b, a). So the chance of w plants out of an
/// uncertain number M is the sum over m of the gain of m times P(M >= m), with no error from the spread of the losses.
/// </summary>
internal sealed class PlantGains(StandLoss loss, int wanted)
{
    // Plants beyond this many more than wanted are taken to add nothing; only a batch of millions has them.
    private const int MostKept = 1 << 22;

    // A number of plants that is less likely than this is left out, and with it what lies further out.
    private const double Negligible = 1e-13;

    // So many standard deviations from the mean, and plants beyond, all are.
    private const int Deviations = 12;

    private double[] _gains = [];

    // Sums of the gains up to and with each.
    private double[] _sums = [];

    public StandLoss Loss => loss;

    public int Wanted => wanted;

    /// <summary>Chance of the wanted plants.</summary>
    /// <param name="seeds">Seeds or cells, each of which brings a plant or none.</param>
    /// <param name="chance">Chance that one does, before the losses, 0 to 1.</param>
    /// <param name="most">Plants that there is room for; what comes beyond is lost.</param>
    public double Reached(int seeds, double chance, int most)
    {
        most = (int)Math.Min(Math.Min(seeds, most), (long)wanted + MostKept - 1);
        if (most < wanted || chance <= 0)
        {
            return 0;
        }

        if (chance >= 1)
        {
            return SumTo(most);
        }

        // Outward from the likeliest number of plants, each chance from its neighbour's.
        var start = (int)Math.Clamp(seeds * chance, wanted, most);
        var exactly = Math.Exp(
            SpecialFunctions.BinomialLn(seeds, start) + (start * Math.Log(chance)) + ((seeds - start) * Math.Log(1 - chance))
        );
        return From(start, seeds, chance, most, (Binomial.AtLeast(seeds, chance, start), exactly));
    }

    private double From(int start, int seeds, double chance, int most, (double AtLeast, double Exactly) begin)
    {
        var far = start + (Deviations * Math.Sqrt(seeds * chance * (1 - chance))) + Deviations;
        most = (int)Math.Min(most, far);
        Extend(most);
        ReadOnlySpan<double> gains = _gains;
        var odds = chance / (1 - chance);
        var sum = 0.0;
        var (reach, one) = begin;
        for (var plants = start; plants <= most && reach > Negligible; plants++)
        {
            sum += gains[plants - wanted] * reach;
            reach -= one;
            one *= odds * (seeds - plants) / (plants + 1);
        }

        (reach, one) = begin;
        for (var plants = start - 1; plants >= wanted; plants--)
        {
            one *= (plants + 1) / (odds * (seeds - plants));
            if (one < Negligible)
            {
                return sum + _sums[plants - wanted];
            }

            reach += one;
            sum += gains[plants - wanted] * reach;
        }

        return sum;
    }

    private double SumTo(int plants)
    {
        Extend(plants);
        return _sums[plants - wanted];
    }

    // Outward from the likeliest number, by the ratio of neighbours, so that none is lost for being too small to start from.
    private void Extend(int plants)
    {
        if (plants - wanted < _gains.Length)
        {
            return;
        }

        var length = (int)Math.Min(MostKept, Math.Max(64, 2L * (plants - wanted + 1)));
        (_gains, _sums) = (new double[length], new double[length]);
        var mode = Mode(length);
        _gains[mode] = Math.Exp(LogGain(mode));
        for (var index = mode; index + 1 < length && _gains[index] > 0; index++)
        {
            _gains[index + 1] = _gains[index] * Ratio(index);
        }

        for (var index = mode; index > 0 && _gains[index] > 0; index--)
        {
            _gains[index - 1] = _gains[index] / Ratio(index - 1);
        }

        var sum = 0.0;
        for (var index = 0; index < length; index++)
        {
            sum += _gains[index];
            _sums[index] = Math.Min(1, sum);
        }
    }

    // How the gain of one lost plant more, counting the plants lost from 0, stands to the one before it.
    private double Ratio(int lost) =>
        ((double)wanted + lost)
        / (lost + 1)
        * (loss.HasSpread ? ((loss.Mean * loss.Sample) + lost) / (loss.Sample + wanted + lost) : loss.Mean);

    // Gains grow as long as the ratio is above 1.
    private int Mode(int length)
    {
        var kept = 1 - loss.Mean;
        var likeliest = loss.HasSpread ? (wanted - 1) * loss.Sample / ((kept * loss.Sample) + 1) : (wanted - 1) / kept;
        return (int)Math.Clamp(likeliest - wanted, 0, length - 1);
    }

    private double LogGain(int lost)
    {
        if (loss.Mean <= 0)
        {
            return lost == 0 ? 0 : double.NegativeInfinity;
        }

        var ways = SpecialFunctions.BinomialLn(wanted + lost - 1, wanted - 1);
        var (a, b) = (loss.Mean * loss.Sample, (1 - loss.Mean) * loss.Sample);
        return ways
            + (
                loss.HasSpread
                    ? SpecialFunctions.BetaLn(b + wanted, a + lost) - SpecialFunctions.BetaLn(b, a)
                    : (wanted * Math.Log(1 - loss.Mean)) + (lost * Math.Log(loss.Mean))
            );
    }
}
