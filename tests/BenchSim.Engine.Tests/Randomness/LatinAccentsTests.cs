using BenchSim.Engine.Randomness;

namespace BenchSim.Engine.Tests.Randomness;

// Expected: normal form C of the same texts by Python's unicodedata.
public class LatinAccentsTests
{
    [Theory]
    [InlineData("cafe\u0301", "caf\u00e9")]
    [InlineData("Mo\u0308hre", "M\u00f6hre")]
    [InlineData("man\u0303ana", "ma\u00f1ana")]
    [InlineData("c\u0327a", "\u00e7a")]
    [InlineData("r\u030Ceka", "\u0159eka")]
    [InlineData("o\u031B\u0301", "\u1edb")]
    [InlineData("A\u030A", "\u00c5")]
    [InlineData("u\u0308\u0304", "\u01d6")]
    [InlineData("q\u0301", "q\u0301")]
    [InlineData("\u0301a", "\u0301a")]
    [InlineData("plain", "plain")]
    [InlineData("caf\u00e9", "caf\u00e9")]
    [InlineData("", "")]
    public void Letters_and_accents_become_one_letter(string typed, string expected) => Assert.Equal(expected, LatinAccents.Join(typed));
}
