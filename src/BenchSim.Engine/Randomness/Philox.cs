using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

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
    private const int UsualRounds = 10;

    /// <summary>Ten rounds of Philox4x32 of a counter under a key.</summary>
    /// <param name="counter">Counter.</param>
    /// <param name="key">Key.</param>
    public static PhiloxBlock Block(PhiloxBlock counter, PhiloxKey key) => Block(counter, key, UsualRounds);

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

    /// <summary>
    /// The two uniforms of each block of a row of counters that count up in their first word, several blocks a step where the processor
    /// can.
    /// </summary>
    /// <param name="first">First counter.</param>
    /// <param name="key">Key.</param>
    /// <param name="uniforms0">Filled with <see cref="PhiloxBlock.Uniform0"/> of each block.</param>
    /// <param name="uniforms1">Filled with <see cref="PhiloxBlock.Uniform1"/> of each block; as long.</param>
    /// <exception cref="ArgumentException">The spans are not of one length.</exception>
    public static void Uniforms(PhiloxBlock first, PhiloxKey key, Span<double> uniforms0, Span<double> uniforms1)
    {
        if (uniforms1.Length != uniforms0.Length)
        {
            throw new ArgumentException("The two spans must be of one length.", nameof(uniforms1));
        }

        var at = 0;
        if (Avx2.IsSupported)
        {
            for (; at <= uniforms0.Length - Vector256<ulong>.Count; at += Vector256<ulong>.Count)
            {
                var (w0, w1, w2, w3) = FourBlocks(first with { W0 = unchecked(first.W0 + (uint)at) }, key);
                ToUniforms(w0, w1).CopyTo(uniforms0[at..]);
                ToUniforms(w2, w3).CopyTo(uniforms1[at..]);
            }
        }

        for (; at < uniforms0.Length; at++)
        {
            var block = Block(first with { W0 = unchecked(first.W0 + (uint)at) }, key);
            (uniforms0[at], uniforms1[at]) = (block.Uniform0, block.Uniform1);
        }
    }

    // A word to a lane of 64 bits, of which multiplying reads the lower half alone: what stands in the upper is left there.
    private static (Vector256<ulong> W0, Vector256<ulong> W1, Vector256<ulong> W2, Vector256<ulong> W3) FourBlocks(
        PhiloxBlock first,
        PhiloxKey key
    )
    {
        var (multiplier0, multiplier1) = (Vector256.Create((ulong)Multiplier0).AsUInt32(), Vector256.Create((ulong)Multiplier1).AsUInt32());
        var c0 = (Vector256.Create(first.W0) + Vector256.Create(0u, 0, 1, 0, 2, 0, 3, 0)).AsUInt64();
        var (c1, c2, c3) = (Vector256.Create((ulong)first.W1), Vector256.Create((ulong)first.W2), Vector256.Create((ulong)first.W3));
        var (k0, k1) = key;
        for (var round = 0; round < UsualRounds; round++)
        {
            var product0 = Avx2.Multiply(multiplier0, c0.AsUInt32());
            var product1 = Avx2.Multiply(multiplier1, c2.AsUInt32());
            (c0, c1, c2, c3) = (
                (product1 >>> 32) ^ c1 ^ Vector256.Create((ulong)k0),
                product1,
                (product0 >>> 32) ^ c3 ^ Vector256.Create((ulong)k1),
                product0
            );
            unchecked
            {
                k0 += Weyl0;
                k1 += Weyl1;
            }
        }

        return (c0, c1, c2, c3);
    }

    private static Vector256<double> ToUniforms(Vector256<ulong> low, Vector256<ulong> high)
    {
        var k = ((high << 32) | (low & Vector256.Create((ulong)uint.MaxValue))) >>> PhiloxBlock.SpareBits;
        var uniforms = (Vector256.ConvertToDouble(k) + Vector256.Create(0.5)) * Vector256.Create(PhiloxBlock.Step);
        return Vector256.MinNative(uniforms, Vector256.Create(1 - PhiloxBlock.Step));
    }
}
