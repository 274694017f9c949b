using BenchSim.Engine.Randomness;

namespace BenchSim.Benchmarks.Engine;

/// <summary>Draws made before the clock runs, so that both sides of a comparison do nothing but events.</summary>
internal static class Luck
{
    public static double[] Lognormals(int count, double mean, double cv, string name)
    {
        var key = PhiloxKey.Of(1, name);
        return Array.ConvertAll(Numbers(count), i =>
            mean * Lognormal.MeanOne(Philox.Block(new PhiloxBlock((uint)i, 0, 0, 0), key).Uniform0, cv)
        );
    }

    public static int[] OneTo(int most, int count, string name)
    {
        var key = PhiloxKey.Of(1, name);
        return Array.ConvertAll(Numbers(count), i => 1 + (int)(Philox.Block(new PhiloxBlock((uint)i, 0, 0, 0), key).Uniform0 * most));
    }

    private static int[] Numbers(int count) => Enumerable.Range(0, count).ToArray();
}
