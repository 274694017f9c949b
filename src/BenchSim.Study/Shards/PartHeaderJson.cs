using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;

namespace BenchSim.Study.Shards;

/// <summary>The header of a part as one line of JSON in plain ASCII.</summary>
internal static class PartHeaderJson
{
    private const int MostSeasons = 1_000_000;

    /// <summary>What a header says.</summary>
    /// <param name="Header">Of the run.</param>
    /// <param name="Inputs">Names of the files that follow, and their lengths in bytes.</param>
    /// <param name="Counts">Length of the counts after them, bytes.</param>
    /// <param name="Seasons">First and last season, from 1: those of the share, or the part lies.</param>
    internal sealed record Described(
        PartHeader Header,
        ImmutableArray<(string Name, long Length)> Inputs,
        long Counts,
        (int First, int Last) Seasons
    );

    public static byte[] Write(PartHeader header, ImmutableArray<PartInput> inputs, int counts)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer))
        {
            (var first, var last) = Numbered(header);
            json.WriteStartObject();
            json.WriteNumber("part", header.Share.Number);
            json.WriteNumber("parts", header.Share.Of);
            json.WriteNumber("first_season", first);
            json.WriteNumber("last_season", last);
            json.WriteNumber("seasons", header.Seasons);

            // As text: many readers of JSON round whole numbers of this size.
            json.WriteString("seed", header.Seed.ToString(CultureInfo.InvariantCulture));
            json.WriteString("folder", header.Folder);
            json.WriteString("build", header.Build);
            json.WriteStartArray("inputs");
            foreach (var input in inputs)
            {
                json.WriteStartObject();
                json.WriteString("name", input.Name);
                json.WriteNumber("bytes", input.Bytes.Length);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("unread");
            foreach (var name in header.Unread)
            {
                json.WriteStringValue(name);
            }

            json.WriteEndArray();
            json.WriteNumber("counts_bytes", counts);
            json.WriteEndObject();
        }

        return buffer.ToArray();
    }

    /// <summary>Reads a header; null when it is none, or says what cannot be.</summary>
    public static Described? Read(ReadOnlyMemory<byte> line)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            var described = Read(document.RootElement);
            return IsPossible(described) ? described : null;
        }
        catch (Exception wrong)
            when (wrong is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or OverflowException)
        {
            return null;
        }
    }

    private static Described Read(JsonElement root) =>
        new(
            new PartHeader
            {
                Share = new Share(root.GetProperty("part").GetInt32(), root.GetProperty("parts").GetInt32()),
                Seasons = root.GetProperty("seasons").GetInt32(),
                Seed = ulong.Parse(Text(root, "seed"), NumberStyles.None, CultureInfo.InvariantCulture),
                Folder = Text(root, "folder"),
                Build = Text(root, "build"),
                Unread = [.. root.GetProperty("unread").EnumerateArray().Select(name => name.GetString() ?? "")],
            },
            [
                .. root.GetProperty("inputs")
                    .EnumerateArray()
                    .Select(input => (Text(input, "name"), (long)input.GetProperty("bytes").GetInt32())),
            ],
            root.GetProperty("counts_bytes").GetInt32(),
            (root.GetProperty("first_season").GetInt32(), root.GetProperty("last_season").GetInt32())
        );

    private static (int First, int Last) Numbered(PartHeader header)
    {
        (var first, var count) = header.Share.SeasonsOf(header.Seasons);
        return (first + 1, first + count);
    }

    private static string Text(JsonElement from, string name) => from.GetProperty(name).GetString() ?? "";

    private static bool IsPossible(Described described)
    {
        var header = described.Header;
        return header.Share.IsPossible
            && header.Share.Of <= header.Seasons
            && header.Seasons <= MostSeasons
            && described.Seasons == Numbered(header)
            && IsPlainName(header.Folder)
            && described.Counts >= 0
            && described.Inputs.All(input => input.Length >= 0 && IsRelative(input.Name))
            && described.Inputs.DistinctBy(input => input.Name, StringComparer.Ordinal).Count() == described.Inputs.Length;
    }

    // A report folder is named after it: it must not lead anywhere else.
    private static bool IsPlainName(string name) => name.Length > 0 && name is not ("." or "..") && name.AsSpan().IndexOfAny("/\\:\0") < 0;

    private static bool IsRelative(string name) => name.Length > 0 && name.Split('/').All(IsPlainName);
}
