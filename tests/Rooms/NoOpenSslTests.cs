using System.Text.RegularExpressions;

namespace Rooms;

/// <summary>
/// The download runs on a Linux that has nothing. The hashes and random bytes of .NET ask for OpenSSL there, and where it is missing the
/// program ends: hashes are taken by BenchSim.Study.Marks.Sha256, and the one use of random bytes is left to other systems.
/// </summary>
public sealed partial class NoOpenSslTests
{
    private const string Secret = "Secret.cs";

    [Fact]
    public void No_source_asks_for_OpenSSL() =>
        Assert.DoesNotContain(
            Directory
                .EnumerateFiles(Support.Repository.File("src"), "*.cs", SearchOption.AllDirectories)
                .Where(file => !file.Split(Path.DirectorySeparatorChar).Contains("obj", StringComparer.Ordinal))
                .Where(file => !string.Equals(Path.GetFileName(file), Secret, StringComparison.Ordinal)),
            file => Asks().IsMatch(File.ReadAllText(file))
        );

    [GeneratedRegex(@"\b(SHA\d+|MD5|HMAC\w*|IncrementalHash|RandomNumberGenerator)\.", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Asks();
}
