using System.Text;
using BenchSim.Study.Marks;

namespace BenchSim.Study.Shards;

/// <summary>
/// The last line of a file of counts: the SHA-256 of all before it, so that a file that was cut short or changed is known.
/// </summary>
internal static class LastLine
{
    /// <summary>Bytes of the line, the line ends before and after it too.</summary>
    public const int Length = 1 + (2 * Sha256.HashSizeInBytes) + 1;

    /// <summary>The line that goes with some bytes.</summary>
    public static byte[] Of(ReadOnlySpan<byte> body) => Encoding.ASCII.GetBytes($"\n{Convert.ToHexStringLower(Sha256.HashData(body))}\n");

    /// <summary>What stands before the line; null where there is none, or it is of other bytes.</summary>
    public static ReadOnlyMemory<byte>? Body(ReadOnlyMemory<byte> bytes) =>
        bytes.Length >= Length && bytes.Span[^Length..].SequenceEqual(Of(bytes.Span[..^Length])) ? bytes[..^Length] : null;
}
