using BenchSim.Engine.Randomness;

namespace BenchSim.Study.Trust;

/// <summary>
/// Sets of chances at which values are taken from their ranges: Sobol points in as many dimensions as there are direction numbers, those
/// that matter most first; a Latin hypercube (McKay, Beckman and Conover 1979) in the rest.
/// </summary>
public static class ValueSets
{
    private const string Named = "value sets";

    /// <summary>The sets.</summary>
    /// <param name="sets">Number of sets, 1 or more; a power of 2 fills the ranges best.</param>
    /// <param name="order">The values in the order in which they are given dimensions: each number from 0 once.</param>
    /// <param name="seed">Seed of the scrambling.</param>
    /// <returns>A chance strictly between 0 and 1 for each set and value.</returns>
    public static double[][] Of(int sets, IReadOnlyList<int> order, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sets, 1);
        ArgumentNullException.ThrowIfNull(order);
        var key = PhiloxKey.Of(seed, Named);
        double[][] all = [.. Enumerable.Range(0, sets).Select(_ => new double[order.Count])];
        for (var at = 0; at < order.Count; at++)
        {
            var shuffled = at < SobolPoints.MostDimensions ? [] : Strata(sets, at, key);
            for (var set = 0; set < sets; set++)
            {
                all[set][order[at]] = shuffled.Length == 0 ? SobolPoints.Scrambled(set, at, key) : shuffled[set];
            }
        }

        return all;
    }

    /// <summary>The same sets by chance alone, one draw in each of as many equal parts as there are sets: to lay against the first.</summary>
    /// <param name="sets">Number of sets, 1 or more.</param>
    /// <param name="values">Number of values.</param>
    /// <param name="seed">Seed of the draws.</param>
    public static double[][] Others(int sets, int values, ulong seed)
    {
        var key = PhiloxKey.Of(seed, "other value sets");
        double[][] strata = [.. Enumerable.Range(0, values).Select(value => Strata(sets, value, key))];
        return [.. Enumerable.Range(0, sets).Select(set => Array.ConvertAll(strata, of => of[set]))];
    }

    // One draw in each stratum, the strata in the order of a random key.
    private static double[] Strata(int sets, int value, PhiloxKey key)
    {
        var draws = Array.ConvertAll([.. Enumerable.Range(0, sets)], set =>
            Philox.Block(new PhiloxBlock((uint)set, (uint)value, 1, 1), key)
        );
        int[] order = [.. Enumerable.Range(0, sets).OrderBy(set => draws[set].Uniform0).ThenBy(set => set)];
        var chances = new double[sets];
        for (var stratum = 0; stratum < sets; stratum++)
        {
            chances[order[stratum]] = (stratum + draws[order[stratum]].Uniform1) / sets;
        }

        return chances;
    }
}
