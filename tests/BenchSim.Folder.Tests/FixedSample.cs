using CsCheck;

namespace BenchSim.Folder.Tests;

/// <summary>Tries a property on samples from a fixed seed, so that every run tries the same ones.</summary>
internal static class FixedSample
{
    private const uint Stream = 7;
    private const ulong Seed = 20270118;

    public static void Holds<T>(Gen<T> samples, int count, Func<T, bool> property)
    {
        var luck = new PCG(Stream, Seed);
        for (var index = 0; index < count; index++)
        {
            var sample = samples.Generate(luck, null, out _);
            Assert.True(property(sample), $"sample {index}: {Check.Print(sample)}");
        }
    }
}
