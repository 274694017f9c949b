namespace BenchSim.Benchmarks.Engine;

/// <summary>Exponential values in a row, from splitmix64: cheap and the same for both sides of a comparison.</summary>
internal struct ExponentialStream(ulong seed, double mean)
{
    private ulong _state = seed;

    public double Next()
    {
        var z = _state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        z ^= z >> 31;
        return -Math.Log(((z >> 11) + 1) * (1.0 / (1UL << 53))) * mean;
    }
}
