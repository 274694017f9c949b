using System.Globalization;

namespace BenchSim.Report.Writing;

/// <summary>
/// A file that is larger than the disk or the account's limit allows. The runtime makes an <see cref="ArgumentOutOfRangeException"/> of it,
/// as of no other failure of a write.
/// </summary>
public static class FileLimit
{
    /// <summary>What is to be thrown instead.</summary>
    /// <param name="file">The file, as it is told.</param>
    /// <param name="bytes">Bytes it was to have.</param>
    /// <param name="failure">What the runtime threw.</param>
    public static IOException Exceeded(string file, long bytes, ArgumentOutOfRangeException failure) =>
        new(
            $"A file of {bytes.ToString(CultureInfo.InvariantCulture)} bytes is larger than this disk or your account allows: '{file}'",
            failure
        );
}
