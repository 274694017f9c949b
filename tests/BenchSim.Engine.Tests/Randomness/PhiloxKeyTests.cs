using BenchSim.Engine.Randomness;

namespace BenchSim.Engine.Tests.Randomness;

public class PhiloxKeyTests
{
    // FNV-1a, 64 bits: the test vectors of draft-eastlake-fnv, appendix C.
    [Theory]
    [InlineData("", 0xcbf29ce484222325)]
    [InlineData("a", 0xaf63dc4c8601ec8c)]
    [InlineData("foobar", 0x85944171f73967e8)]
    public void Hash_of_known_texts(string text, ulong expected) => Assert.Equal(expected, PhiloxKey.Hash(text));

    // The accented letter as one code point, and as a letter and an accent, are one name.
    [Fact]
    public void Two_spellings_of_one_text_are_one_name()
    {
        Assert.Equal(PhiloxKey.Hash("caf\u00e9"), PhiloxKey.Hash("cafe\u0301"));
        Assert.NotEqual(PhiloxKey.Hash("cafe"), PhiloxKey.Hash("caf\u00e9"));
    }

    // splitmix64 from state 1234567 gives 6457827717110365317 first (rosettacode.org/wiki/Pseudo-random_numbers/Splitmix64).
    [Fact]
    public void The_key_is_the_mixed_seed_and_the_hash()
    {
        var key = PhiloxKey.Of(1234567, "a");
        var expected = 6457827717110365317UL ^ 0xaf63dc4c8601ec8c;
        Assert.Equal(new PhiloxKey((uint)expected, (uint)(expected >> 32)), key);
    }

    [Fact]
    public void Another_seed_or_another_name_is_another_key()
    {
        var keys = new HashSet<PhiloxKey>();
        for (ulong seed = 0; seed < 100; seed++)
        {
            for (var name = 0; name < 100; name++)
            {
                Assert.True(keys.Add(PhiloxKey.Of(seed, $"batch {name}")));
            }
        }
    }
}
