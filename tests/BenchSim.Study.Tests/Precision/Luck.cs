namespace BenchSim.Study.Tests.Precision;

/// <summary>SplitMix64 (Steele, Lea and Flood 2014): quick to begin anew for each season.</summary>
internal sealed class Luck
{
    private ulong _state;

    /// <summary>Begins anew.</summary>
    public Luck Begin(int study, int season)
    {
        _state = ((ulong)(uint)study << 32) | (uint)season;
        _state = Mix();
        return this;
    }

    /// <summary>A number from 0 up to but not 1.</summary>
    public double Next() => (Mix() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A whole number from 0 up to but not the given one.</summary>
    public long Next(int below) => (long)(Next() * below);

    private ulong Mix()
    {
        var mixed = _state += 0x9E3779B97F4A7C15;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }
}
