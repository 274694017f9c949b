namespace BenchSim.Engine.Tests.Golden;

/// <summary>
/// The generator xoshiro256++ (Blackman and Vigna 2019), seeded by four outputs of splitmix64: only here, because the golden models were
/// stated with it.
/// </summary>
internal sealed class Xoshiro
{
    private ulong _s0;
    private ulong _s1;
    private ulong _s2;
    private ulong _s3;

    public Xoshiro(ulong seed)
    {
        _s0 = SplitMix(ref seed);
        _s1 = SplitMix(ref seed);
        _s2 = SplitMix(ref seed);
        _s3 = SplitMix(ref seed);
    }

    public Xoshiro(ulong s0, ulong s1, ulong s2, ulong s3) => (_s0, _s1, _s2, _s3) = (s0, s1, s2, s3);

    public static ulong SplitMix(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    public ulong Next()
    {
        var result = ulong.RotateLeft(_s0 + _s3, 23) + _s0;
        var t = _s1 << 17;
        _s2 ^= _s0;
        _s3 ^= _s1;
        _s1 ^= _s2;
        _s0 ^= _s3;
        _s2 ^= t;
        _s3 = ulong.RotateLeft(_s3, 45);
        return result;
    }

    /// <summary>Above 0, up to and including 1.</summary>
    public double Uniform() => ((Next() >> 11) + 1) * (1.0 / (1UL << 53));

    public double Exponential(double mean) => -Math.Log(Uniform()) * mean;

    /// <summary>A whole number from 1 to n.</summary>
    public int OneTo(int n) => 1 + (int)Math.Floor((Next() >> 11) * (1.0 / (1UL << 53)) * n);

    /// <summary>Marsaglia's polar method; the second value is dropped.</summary>
    public double Normal()
    {
        while (true)
        {
            var x = (2 * Uniform()) - 1;
            var y = (2 * Uniform()) - 1;
            var s = (x * x) + (y * y);
            if (s is > 0 and < 1)
            {
                return x * Math.Sqrt(-2 * Math.Log(s) / s);
            }
        }
    }

    public double Lognormal(double mean, double cv)
    {
        var variance = Math.Log(1 + (cv * cv));
        return Math.Exp(Math.Log(mean) - (variance / 2) + (Math.Sqrt(variance) * Normal()));
    }
}
