namespace BenchSim.Engine.Randomness;

/// <summary>
/// The counter-based generator Philox4x32 (Salmon, Moraes, Dror and Shaw 2011, "Parallel random numbers: as easy as 1, 2, 3"):
/// a keyed bijection of 128-bit counters. Whoever knows key and counter knows the number; no state is kept and no order matters.
/// </summary>
public static class Philox
{
    private const uint Multiplier0 = 0xD2511F53;
    private const uint Multiplier1 = 0xCD9E8D57;
    private const uint Weyl0 = 0x9E3779B9;
    private const uint Weyl1 = 0xBB67AE85;

    /// <summary>Ten rounds of Philox4x32 of a counter under a key.</summary>
    /// <param name="counter">Counter.</param>
    /// <param name="key">Key.</param>
    public static PhiloxBlock Block(PhiloxBlock counter, PhiloxKey key) => Block(counter, key, 10);

    /// <summary>Philox4x32 of a counter under a key with a chosen number of rounds.</summary>
    /// <param name="counter">Counter.</param>
    /// <param name="key">Key.</param>
    /// <param name="rounds">Rounds, 1 or more; ten is the recommended number.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 round.</exception>
    public static PhiloxBlock Block(PhiloxBlock counter, PhiloxKey key, int rounds)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(rounds, 1);
        var (c0, c1, c2, c3) = counter;
        var (k0, k1) = key;
        for (var round = 0; round < rounds; round++)
        {
            var product0 = (ulong)Multiplier0 * c0;
            var product1 = (ulong)Multiplier1 * c2;
            (c0, c1, c2, c3) = ((uint)(product1 >> 32) ^ c1 ^ k0, (uint)product1, (uint)(product0 >> 32) ^ c3 ^ k1, (uint)product0);
            unchecked
            {
                k0 += Weyl0;
                k1 += Weyl1;
            }
        }

        return new PhiloxBlock(c0, c1, c2, c3);
    }
}
