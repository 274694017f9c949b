namespace BenchSim.Engine.Randomness;

/// <summary>Four 32-bit words: a counter, or the block of random bits made from it.</summary>
/// <param name="W0">Word 0.</param>
/// <param name="W1">Word 1.</param>
/// <param name="W2">Word 2.</param>
/// <param name="W3">Word 3.</param>
public readonly record struct PhiloxBlock(uint W0, uint W1, uint W2, uint W3)
{
    /// <summary>First uniform of the block, strictly between 0 and 1: (k + 0.5) / 2^53 from the upper 53 bits of words 0 and 1.</summary>
    public double Uniform0 => ToUniform(W0, W1);

    /// <summary>Second uniform of the block, strictly between 0 and 1: (k + 0.5) / 2^53 from the upper 53 bits of words 2 and 3.</summary>
    public double Uniform1 => ToUniform(W2, W3);

    // A double takes 53 of the 64 bits.
    internal const int SpareBits = 11;
    internal const double Step = 1.0 / (1UL << (64 - SpareBits));

    private static double ToUniform(uint low, uint high)
    {
        var k = (((ulong)high << 32) | low) >> SpareBits;

        // From 2^52 on a double has no halves left, and the greatest k would round up to 1: keep it the double below.
        return Math.Min((k + 0.5) * Step, 1 - Step);
    }
}
