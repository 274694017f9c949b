using System.Security.Cryptography;
using System.Text;
using BenchSim.Study.Marks;

namespace BenchSim.Study.Tests.Marks;

/// <summary>SHA-256 against the examples of its standard, and against that of .NET.</summary>
public sealed class Sha256Tests
{
    // FIPS 180-2, appendix B, and the empty message of NIST's test vectors.
    [Theory]
    [InlineData("", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855")]
    [InlineData("abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")]
    [InlineData(
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"
    )]
    public void The_examples_of_the_standard(string text, string hash) =>
        Assert.Equal(hash, Convert.ToHexStringLower(Sha256.HashData(Encoding.ASCII.GetBytes(text))));

    [Fact]
    public void A_million_letters() =>
        Assert.Equal(
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0",
            Convert.ToHexStringLower(Sha256.HashData(Encoding.ASCII.GetBytes(new string('a', 1_000_000))))
        );

    // Every length around the ends of one, two and three blocks.
    [Fact]
    public void As_that_of_the_library_at_every_length()
    {
        var bytes = new byte[200];
        new Random(1).NextBytes(bytes);
        for (var length = 0; length <= bytes.Length; length++)
        {
            Assert.Equal(SHA256.HashData(bytes.AsSpan(0, length)), Sha256.HashData(bytes.AsSpan(0, length)));
        }
    }
}
