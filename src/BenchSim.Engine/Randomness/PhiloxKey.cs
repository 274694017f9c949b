using System.Text;

namespace BenchSim.Engine.Randomness;

/// <summary>The key of a stream of luck: two 32-bit words.</summary>
/// <param name="K0">Word 0.</param>
/// <param name="K1">Word 1.</param>
public readonly record struct PhiloxKey(uint K0, uint K1)
{
    private const ulong FnvOffset = 0xCBF29CE484222325;
    private const ulong FnvPrime = 0x00000100000001B3;

    /// <summary>
    /// The key of a name: the seed mixed with the 64-bit FNV-1a hash of the UTF-8 bytes of the name, its accents joined to their letters
    /// (<see cref="LatinAccents"/>). Two names with the same hash have the same key under every seed: <see cref="Hash"/> lets a reader
    /// refuse them.
    /// </summary>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="name">Name, any text.</param>
    public static PhiloxKey Of(ulong seed, string name) => Of(seed, Hash(name));

    /// <summary>The key of a name whose hash is known.</summary>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="hash">Hash of the name, from <see cref="Hash"/>.</param>
    public static PhiloxKey Of(ulong seed, ulong hash)
    {
        var mixed = Mix(seed) ^ hash;
        return new PhiloxKey((uint)mixed, (uint)(mixed >> 32));
    }

    /// <summary>64-bit FNV-1a hash (Fowler, Noll and Vo) of the UTF-8 bytes of the name, its accents joined to their letters.</summary>
    /// <param name="name">Name, any text.</param>
    public static ulong Hash(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var hash = FnvOffset;
        foreach (var octet in Encoding.UTF8.GetBytes(LatinAccents.Join(name)))
        {
            hash = unchecked((hash ^ octet) * FnvPrime);
        }

        return hash;
    }

    // The finalizer of splitmix64 (Steele, Lea and Flood 2014), so that seeds 1 and 2 differ in every bit with even odds.
    private static ulong Mix(ulong seed)
    {
        unchecked
        {
            var z = seed + 0x9E3779B97F4A7C15;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
