using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Engine.Randomness;

namespace BenchSim.Study.Trust;

/// <summary>
/// Points of Sobol's sequence, which fill a cube more evenly than random ones. Direction numbers of S. Joe and F. Y. Kuo (2008),
/// "Constructing Sobol sequences with better two-dimensional projections", SIAM J. Sci. Comput. 30, 2635-2654, set D6; scrambled as
/// A. B. Owen (1995), "Randomly permuted (t,m,s)-nets", does: each bit is turned or not by luck that depends on the bits before it.
/// </summary>
public static class SobolPoints
{
    /// <summary>Dimensions there are direction numbers for.</summary>
    public const int MostDimensions = 256;

    /// <summary>Points there are at most.</summary>
    public const int MostPoints = 1 << Bits;

    private const int Bits = 30;
    private static readonly Lazy<ImmutableArray<uint[]>> s_directions = new(Read);

    /// <summary>A coordinate of a point as the sequence has it, in order of its number, not of a Gray code.</summary>
    /// <param name="point">Number of the point, from 0, below <see cref="MostPoints"/>.</param>
    /// <param name="dimension">Dimension, from 0, below <see cref="MostDimensions"/>.</param>
    /// <returns>0 or more and below 1.</returns>
    public static double Plain(int point, int dimension) => Digits(point, dimension) / (double)MostPoints;

    /// <summary>The coordinate scrambled: uniform by itself, and as even as the sequence together with the others.</summary>
    /// <param name="point">Number of the point, from 0, below <see cref="MostPoints"/>.</param>
    /// <param name="dimension">Dimension, from 0, below <see cref="MostDimensions"/>.</param>
    /// <param name="key">The luck of the scrambling.</param>
    /// <returns>A number strictly between 0 and 1.</returns>
    public static double Scrambled(int point, int dimension, PhiloxKey key)
    {
        var (digits, scrambled) = (Digits(point, dimension), 0u);
        for (var bit = Bits - 1; bit >= 0; bit--)
        {
            var before = digits >> (bit + 1);
            var turn = Philox.Block(new PhiloxBlock(before, (uint)bit, (uint)dimension, 0), key).Uniform0 < 0.5 ? 1u : 0u;
            scrambled = (scrambled << 1) | (((digits >> bit) & 1) ^ turn);
        }

        return (scrambled + 0.5) / MostPoints;
    }

    private static uint Digits(int point, int dimension)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(point);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(point, MostPoints);
        ArgumentOutOfRangeException.ThrowIfNegative(dimension);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(dimension, MostDimensions);
        var (directions, digits) = (s_directions.Value[dimension], 0u);

        // The Gray code of the number, as the sequence is usually run through.
        for (var (code, bit) = (point ^ (point >> 1), 0); code != 0; (code, bit) = (code >> 1, bit + 1))
        {
            digits ^= (code & 1) == 0 ? 0 : directions[bit];
        }

        return digits;
    }

    // The first dimension is van der Corput's sequence and stands in no table.
    private static ImmutableArray<uint[]> Read()
    {
        using var stream = typeof(SobolPoints).Assembly.GetManifestResourceStream("joe-kuo-d6.txt")
            ?? throw new InvalidOperationException("The direction numbers are missing from the program.");
        using var reader = new StreamReader(stream);
        var all = ImmutableArray.CreateBuilder<uint[]>(MostDimensions);
        all.Add([.. Enumerable.Range(0, Bits).Select(bit => 1u << (Bits - 1 - bit))]);
        _ = reader.ReadLine();
        while (reader.ReadLine() is { } line)
        {
            uint[] row = [.. line.Split(' ').Select(number => uint.Parse(number, CultureInfo.InvariantCulture))];
            all.Add(Directions((int)row[1], row[2], row[3..]));
        }

        return all.ToImmutable();
    }

    /// <summary>Direction numbers v from the polynomial's degree s and coefficients a, and the first numbers m (Joe and Kuo 2008, eq. 2).</summary>
    private static uint[] Directions(int degree, uint coefficients, uint[] first)
    {
        var directions = new uint[Bits];
        for (var bit = 0; bit < Bits; bit++)
        {
            if (bit < degree)
            {
                directions[bit] = first[bit] << (Bits - 1 - bit);
                continue;
            }

            directions[bit] = directions[bit - degree] ^ (directions[bit - degree] >> degree);
            for (var term = 1; term < degree; term++)
            {
                directions[bit] ^= ((coefficients >> (degree - 1 - term)) & 1) == 0 ? 0 : directions[bit - term];
            }
        }

        return directions;
    }
}
