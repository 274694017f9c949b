using BenchSim.Season.Stands;
using MathNet.Numerics;

namespace BenchSim.Season.Planning;

/// <summary>
/// The chance of the stand of a batch that is potted up: enough seedlings must come to fill the trays, the trays must have the cells for them, and enough of
/// what is potted must reach the field.
/// </summary>
public static class PotUpStand
{
    // A number of potted plants that adds less than this to the chance is left out.
    private const double Negligible = 1e-15;

    /// <summary>
    /// Chance that at least the wanted plants reach the field, averaged over the packet's law: seedlings are binomial of the seeds, as many of them are potted
    /// as the trays have cells, and the plants are binomial of what is potted.
    /// </summary>
    /// <param name="packet">Law of the packet's germination.</param>
    /// <param name="seeds">Seeds sown, 0 or more; beyond 2,147,483,647 a seed more changes nothing.</param>
    /// <param name="seedlingOf">Chance that a seed brings a seedling that can be potted, given the packet's germination.</param>
    /// <param name="cells">Cells of the trays that are filled, 0 or more.</param>
    /// <param name="kept">Share of potted plants that reaches the field, above 0, at most 1.</param>
    /// <param name="wanted">Plants wanted, 1 or more.</param>
    public static double Chance(PacketGermination packet, long seeds, Func<double, double> seedlingOf, long cells, double kept, int wanted)
    {
        ArgumentNullException.ThrowIfNull(packet);
        ArgumentNullException.ThrowIfNull(seedlingOf);
        var sown = (int)Math.Min(seeds, int.MaxValue);
        var most = (int)Math.Min(cells, sown);
        if (wanted > most)
        {
            return 0;
        }

        var gains = Gains(most, kept, wanted);
        return Stand.Averaged(packet, germination => Reached(gains, sown, seedlingOf(germination), wanted));
    }

    // By how much the chance of the wanted plants grows with each potted plant from the wanted number on: the chance that just this plant is the last of the
    // wanted ones, C(m - 1, w - 1) k^w (1 - k)^(m - w).
    private static List<double> Gains(int most, double kept, int wanted)
    {
        if (kept >= 1)
        {
            return [1];
        }

        var gains = new List<double>();
        for (var potted = wanted; potted <= most; potted++)
        {
            var gain = Math.Exp(
                SpecialFunctions.BinomialLn(potted - 1, wanted - 1) + (wanted * Math.Log(kept)) + ((potted - wanted) * Math.Log(1 - kept))
            );
            if (gain < Negligible && potted > wanted / kept)
            {
                break;
            }

            gains.Add(gain);
        }

        return gains;
    }

    // Sum over the numbers potted of what the last plant adds, times the chance that so many seedlings come: outward from the likeliest number among them, each
    // chance from its neighbour's.
    private static double Reached(List<double> gains, int seeds, double chance, int wanted)
    {
        if (chance is <= 0 or >= 1)
        {
            return chance >= 1 ? gains.Sum() : 0;
        }

        var start = (int)Math.Clamp(seeds * chance, wanted, wanted + gains.Count - 1);
        var atLeast = Binomial.AtLeast(seeds, chance, start);
        var exactly = Math.Exp(
            SpecialFunctions.BinomialLn(seeds, start) + (start * Math.Log(chance)) + ((seeds - start) * Math.Log(1 - chance))
        );
        var odds = chance / (1 - chance);
        var sum = 0.0;
        var (reach, one) = (atLeast, exactly);
        for (var plants = start; plants < wanted + gains.Count; plants++)
        {
            sum += gains[plants - wanted] * Math.Max(0, reach);
            reach -= one;
            one *= odds * (seeds - plants) / (plants + 1);
        }

        (reach, one) = (atLeast, exactly);
        for (var plants = start - 1; plants >= wanted; plants--)
        {
            one *= (plants + 1) / (odds * (seeds - plants));
            reach += one;
            sum += gains[plants - wanted] * Math.Min(1, reach);
        }

        return sum;
    }
}
