using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Evidence;

/// <summary>The chance of what was counted of the same cells on a day or more.</summary>
/// <param name="looks">The looks, one or more; of several each is a number.</param>
internal sealed class LookChance(List<CountLook> looks)
{
    // A share judged by eye: one word in twenty is written down of any other number.
    private const double Loose = 0.05;

    private readonly int[] _parts = looks[^1].Count.IsExact ? Parts(looks) : [];
    private readonly (CountRange Count, int Among) _last = (looks[^1].Count, looks[^1].Among);

    /// <summary>
    /// Logarithm of the chance. Of numbers that of a multinomial count, but for the number of its orders (<see cref="Counts.Log"/>); of
    /// words that of any number which they stand for.
    /// </summary>
    /// <param name="by">Chance to be there by each look, none less than the one before.</param>
    public double Log(ReadOnlySpan<double> by) => _parts.Length > 0 ? Counts.Log(_parts, by) : InWords(_last.Count, _last.Among, by[^1]);

    /// <summary>Logarithm of the chance of a count in words.</summary>
    /// <param name="count">The numbers that the words stand for.</param>
    /// <param name="among">Seeds or cells looked at.</param>
    /// <param name="chance">Chance of each to be there.</param>
    public static double InWords(CountRange count, int among, double chance)
    {
        var there = ((1 - CountLook.Wrong) * chance) + (CountLook.Wrong / 2);
        var within = Binomial.AtLeast(among, there, count.Least) - Binomial.AtLeast(among, there, count.Most + 1);
        return Math.Log(((1 - Loose) * Math.Max(within, 0)) + (Loose * (count.Most - count.Least + 1) / (among + 1)));
    }

    // Of the same cells, how many by the first look, how many more by each later one, and the rest.
    private static int[] Parts(List<CountLook> looks) =>
        [
            .. looks.Select((look, at) => look.Count.Least - (at == 0 ? 0 : looks[at - 1].Count.Least)),
            looks[^1].Among - looks[^1].Count.Least,
        ];
}
