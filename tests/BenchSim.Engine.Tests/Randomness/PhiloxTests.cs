using BenchSim.Engine.Randomness;

namespace BenchSim.Engine.Tests;

public class PhiloxTests
{
    [Fact]
    public void Known_answer_of_the_zero_counter() =>
        // Random123 tests/kat_vectors, D. E. Shaw Research.
        Assert.Equal(new PhiloxBlock(0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8), Philox.Block(default, default));
}
