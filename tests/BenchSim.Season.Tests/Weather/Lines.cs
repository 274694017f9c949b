namespace BenchSim.Season.Tests.Weather;

/// <summary>Compares lists of sentences so that a difference shows the sentences.</summary>
internal static class Lines
{
    public static void Equal(IEnumerable<string> expected, IEnumerable<string> actual) =>
        Assert.Equal(string.Join('\n', expected), string.Join('\n', actual));

    public static void Contain(string expected, IEnumerable<string> actual) =>
        Assert.Contains(actual, line => string.Equals(line, expected, StringComparison.Ordinal));
}
