using System.Collections.Immutable;
using System.Text;

namespace BenchSim.Study.Shards;

/// <summary>
/// A part of a run as bytes: a line that says what it is, a line of JSON that says which (<see cref="PartHeader"/>), the files that were
/// played, the counts, and a last line with the SHA-256 of all before it (docs/decisions/010-parts-of-a-run.md).
/// </summary>
/// <param name="Header">What it says of itself.</param>
/// <param name="Inputs">The files that were played, in order of name.</param>
/// <param name="Counts">What was counted.</param>
public sealed record RunPart(PartHeader Header, ImmutableArray<PartInput> Inputs, ReadOnlyMemory<byte> Counts)
{
    /// <summary>What every part begins with; the version of the format follows.</summary>
    public const string Mark = "BenchSim part of a run, version ";

    private const int Version = 2;
    private const int LongestFirstLine = 60;

    /// <summary>True when bytes begin like a part, of whatever version.</summary>
    public static bool IsPart(ReadOnlySpan<byte> bytes) => bytes.StartsWith(Encoding.ASCII.GetBytes(Mark));

    /// <summary>The part as bytes. The same part gives the same bytes.</summary>
    public byte[] ToBytes()
    {
        using var bytes = new MemoryStream();
        bytes.Write(Encoding.ASCII.GetBytes($"{Mark}{Version}\n"));
        bytes.Write(PartHeaderJson.Write(Header, Inputs, Counts.Length));
        bytes.WriteByte((byte)'\n');
        foreach (var input in Inputs)
        {
            bytes.Write(input.Bytes.Span);
        }

        bytes.Write(Counts.Span);
        bytes.Write(LastLine.Of(bytes.GetBuffer().AsSpan(0, (int)bytes.Length)));
        return bytes.ToArray();
    }

    /// <summary>
    /// The same part, with the files of another where they are the same, so that a thousand parts do not hold them a thousand times.
    /// </summary>
    /// <param name="other">The other part.</param>
    public RunPart SharingInputsWith(RunPart other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var isSame =
            Inputs.Length == other.Inputs.Length
            && Inputs
                .Zip(other.Inputs)
                .All(pair =>
                    string.Equals(pair.First.Name, pair.Second.Name, StringComparison.Ordinal)
                    && pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span)
                );

        // The counts are copied, or they would keep the bytes of the whole file.
        return isSame ? this with { Inputs = other.Inputs, Counts = Counts.ToArray() } : this;
    }

    /// <summary>Reads a part. Whatever the bytes are, it answers and does not throw.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="problem">What is wrong with them; <see cref="PartProblem.None"/> when a part was read.</param>
    /// <returns>The part; null with a problem.</returns>
    public static RunPart? Read(ReadOnlyMemory<byte> bytes, out PartProblem problem)
    {
        if (!IsPart(bytes.Span))
        {
            problem = PartProblem.NotAPart;
            return null;
        }

        var endOfFirst = bytes.Span[..Math.Min(bytes.Length, LongestFirstLine)].IndexOf((byte)'\n');
        problem = PartProblem.Damaged;
        if (endOfFirst < 0 || LastLine.Body(bytes) is not { } body || body.Length <= endOfFirst)
        {
            return null;
        }

        var version = Encoding.ASCII.GetString(bytes.Span[Mark.Length..endOfFirst]);
        if (version != $"{Version}")
        {
            problem = PartProblem.OtherVersion;
            return null;
        }

        var part = ReadBody(body[(endOfFirst + 1)..]);
        if (part is not null)
        {
            problem = PartProblem.None;
        }

        return part;
    }

    private static RunPart? ReadBody(ReadOnlyMemory<byte> body)
    {
        var endOfHeader = body.Span.IndexOf((byte)'\n');
        if (endOfHeader < 0 || PartHeaderJson.Read(body[..endOfHeader]) is not { } described)
        {
            return null;
        }

        var rest = body[(endOfHeader + 1)..];
        if (described.Inputs.Sum(input => input.Length) + described.Counts != rest.Length)
        {
            return null;
        }

        var inputs = ImmutableArray.CreateBuilder<PartInput>();
        foreach ((var name, var length) in described.Inputs)
        {
            inputs.Add(new PartInput(name, rest[..(int)length]));
            rest = rest[(int)length..];
        }

        return new RunPart(described.Header, inputs.DrainToImmutable(), rest);
    }
}
