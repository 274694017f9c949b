using System.Buffers.Binary;
using System.Numerics;

namespace BenchSim.Study.Marks;

/// <summary>
/// SHA-256 (FIPS 180-4), by which files, parts and builds are known again. Written here because that of .NET asks for OpenSSL on Linux,
/// which a machine without anything does not have, and the program then ends. It guards no secret
/// that could be guessed.
/// </summary>
public static class Sha256
{
    /// <summary>Bytes of a hash.</summary>
    public const int HashSizeInBytes = 32;

    private const int BlockBytes = 64;
    private const int LengthBytes = 8;

    // The first 32 bits of the fractional parts of the cube roots of the first 64 primes.
    private static readonly uint[] s_rounds =
    [
        0x428a2f98,
        0x71374491,
        0xb5c0fbcf,
        0xe9b5dba5,
        0x3956c25b,
        0x59f111f1,
        0x923f82a4,
        0xab1c5ed5,
        0xd807aa98,
        0x12835b01,
        0x243185be,
        0x550c7dc3,
        0x72be5d74,
        0x80deb1fe,
        0x9bdc06a7,
        0xc19bf174,
        0xe49b69c1,
        0xefbe4786,
        0x0fc19dc6,
        0x240ca1cc,
        0x2de92c6f,
        0x4a7484aa,
        0x5cb0a9dc,
        0x76f988da,
        0x983e5152,
        0xa831c66d,
        0xb00327c8,
        0xbf597fc7,
        0xc6e00bf3,
        0xd5a79147,
        0x06ca6351,
        0x14292967,
        0x27b70a85,
        0x2e1b2138,
        0x4d2c6dfc,
        0x53380d13,
        0x650a7354,
        0x766a0abb,
        0x81c2c92e,
        0x92722c85,
        0xa2bfe8a1,
        0xa81a664b,
        0xc24b8b70,
        0xc76c51a3,
        0xd192e819,
        0xd6990624,
        0xf40e3585,
        0x106aa070,
        0x19a4c116,
        0x1e376c08,
        0x2748774c,
        0x34b0bcb5,
        0x391c0cb3,
        0x4ed8aa4a,
        0x5b9cca4f,
        0x682e6ff3,
        0x748f82ee,
        0x78a5636f,
        0x84c87814,
        0x8cc70208,
        0x90befffa,
        0xa4506ceb,
        0xbef9a3f7,
        0xc67178f2,
    ];

    /// <summary>The hash of some bytes.</summary>
    /// <param name="bytes">The bytes.</param>
    public static byte[] HashData(ReadOnlySpan<byte> bytes)
    {
        // The first 32 bits of the fractional parts of the square roots of the first 8 primes.
        Span<uint> state = [0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19];
        var rest = bytes;
        for (; rest.Length >= BlockBytes; rest = rest[BlockBytes..])
        {
            Mix(state, rest[..BlockBytes]);
        }

        // The end: a one, zeros, and the length in bits, in one block or two.
        Span<byte> end = stackalloc byte[2 * BlockBytes];
        end.Clear();
        rest.CopyTo(end);
        end[rest.Length] = 0x80;
        var last = rest.Length + 1 + LengthBytes <= BlockBytes ? BlockBytes : 2 * BlockBytes;
        BinaryPrimitives.WriteUInt64BigEndian(end[(last - LengthBytes)..], (ulong)bytes.Length * 8);
        Mix(state, end[..BlockBytes]);
        if (last > BlockBytes)
        {
            Mix(state, end[BlockBytes..]);
        }

        var hash = new byte[HashSizeInBytes];
        for (var at = 0; at < state.Length; at++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(hash.AsSpan(at * sizeof(uint)), state[at]);
        }

        return hash;
    }

    private static void Mix(Span<uint> state, ReadOnlySpan<byte> block)
    {
        Span<uint> words = stackalloc uint[s_rounds.Length];
        for (var at = 0; at < words.Length; at++)
        {
            words[at] =
                at < 16
                    ? BinaryPrimitives.ReadUInt32BigEndian(block[(at * sizeof(uint))..])
                    : words[at - 16] + Small(words[at - 15], 7, 18, 3) + words[at - 7] + Small(words[at - 2], 17, 19, 10);
        }

        var (a, b, c, d, e, f, g, h) = (state[0], state[1], state[2], state[3], state[4], state[5], state[6], state[7]);
        for (var at = 0; at < words.Length; at++)
        {
            var first = h + Large(e, 6, 11, 25) + ((e & f) ^ (~e & g)) + s_rounds[at] + words[at];
            var second = Large(a, 2, 13, 22) + ((a & b) ^ (a & c) ^ (b & c));
            (h, g, f, e, d, c, b, a) = (g, f, e, d + first, c, b, a, first + second);
        }

        state[0] += a;
        state[1] += b;
        state[2] += c;
        state[3] += d;
        state[4] += e;
        state[5] += f;
        state[6] += g;
        state[7] += h;
    }

    private static uint Large(uint word, int one, int two, int three) =>
        BitOperations.RotateRight(word, one) ^ BitOperations.RotateRight(word, two) ^ BitOperations.RotateRight(word, three);

    private static uint Small(uint word, int one, int two, int shift) =>
        BitOperations.RotateRight(word, one) ^ BitOperations.RotateRight(word, two) ^ (word >> shift);
}
