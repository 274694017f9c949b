using System.Globalization;
using System.Text;
using System.Text.Json;
using BenchSim.Study.Counting;
using BenchSim.Study.Shards;

namespace BenchSim.Study.Sweeps;

/// <summary>
/// The result of a task as bytes: a line that says what it is, a line of JSON with its number, of what it was made, and its counts, and a
/// last line with the SHA-256 of all before it (docs/decisions/031-sweeps.md).
/// </summary>
/// <param name="Number">Number of the task, from 1.</param>
/// <param name="Key">What it was made of: the same files, settings and build give the same key.</param>
/// <param name="Build">The build that played it.</param>
/// <param name="Counts">What was counted.</param>
public sealed record TaskFile(int Number, string Key, string Build, SweepCounts Counts)
{
    /// <summary>What every one begins with; the version of the format follows.</summary>
    public const string Mark = "BenchSim task of a sweep, version ";

    private const int MostSpaces = 100_000;
    private static readonly byte[] s_mark = Encoding.ASCII.GetBytes(Mark);
    private static readonly byte[] s_firstLine = [.. s_mark, (byte)'1', (byte)'\n'];

    /// <summary>
    /// Whether bytes begin as a result does, of whatever version, or are what is left of one that was cut short: after a loss of power a
    /// file may be zeros.
    /// </summary>
    public static bool IsOne(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith(s_mark) || s_mark.AsSpan().StartsWith(bytes) || !bytes.ContainsAnyExcept((byte)0);

    /// <summary>The result as bytes. The same result gives the same bytes.</summary>
    public byte[] ToBytes()
    {
        using var bytes = new MemoryStream();
        bytes.Write(s_firstLine);
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            json.WriteNumber("task", Number);
            json.WriteString("key", Key);
            json.WriteString("build", Build);
            json.WriteNumber("seasons", Counts.Seasons);
            json.WriteNumber("fits", Counts.Fits);
            json.WriteNumber("fits_weather_counted", Counts.FitsWeatherCounted);
            Write(json, "plants_in_time", Counts.PlantsInTime);
            Write(json, "late_plant_days", Counts.LatePlantDays);
            json.WriteStartArray("spaces");
            for (var space = 0; space < Counts.ShortSeasons.Length; space++)
            {
                json.WriteStartObject();
                json.WriteNumber("short_seasons", Counts.ShortSeasons[space]);
                json.WriteNumber("worst_short", Counts.WorstShort[space]);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        bytes.Write(LastLine.Of(bytes.GetBuffer().AsSpan(0, (int)bytes.Length)));
        return bytes.ToArray();
    }

    /// <summary>Reads a result. Whatever the bytes are, it answers and does not throw.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <returns>The result; null where it is none, or was cut short or changed.</returns>
    public static TaskFile? Read(ReadOnlyMemory<byte> bytes)
    {
        if (!bytes.Span.StartsWith(s_firstLine) || LastLine.Body(bytes) is not { } body || body.Length < s_firstLine.Length)
        {
            return null;
        }

        try
        {
            using var document = JsonDocument.Parse(body[s_firstLine.Length..]);
            var root = document.RootElement;
            return new TaskFile(Whole(root, "task", int.MaxValue), Text(root, "key"), Text(root, "build"), CountsOf(root));
        }
        catch (Exception wrong)
            when (wrong is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or OverflowException)
        {
            return null;
        }
    }

    private static void Write(Utf8JsonWriter json, string name, Moments moments)
    {
        // As text: many readers of JSON round whole numbers of this size.
        json.WriteStartObject(name);
        json.WriteString("sum", moments.Sum.ToString(CultureInfo.InvariantCulture));
        json.WriteString("squares", moments.Squares.ToString(CultureInfo.InvariantCulture));
        json.WriteNumber("least", moments.Least);
        json.WriteNumber("most", moments.Most);
        json.WriteEndObject();
    }

    private static SweepCounts CountsOf(JsonElement root)
    {
        var seasons = Whole(root, "seasons", int.MaxValue);
        JsonElement[] spaces = [.. root.GetProperty("spaces").EnumerateArray()];
        if (spaces.Length > MostSpaces)
        {
            throw new FormatException();
        }

        var counts = new SweepCounts(spaces.Length)
        {
            Seasons = seasons,
            Fits = Whole(root, "fits", seasons),
            FitsWeatherCounted = Whole(root, "fits_weather_counted", seasons),
            PlantsInTime = MomentsOf(root.GetProperty("plants_in_time"), seasons),
            LatePlantDays = MomentsOf(root.GetProperty("late_plant_days"), seasons),
        };
        for (var space = 0; space < spaces.Length; space++)
        {
            counts.ShortSeasons[space] = Whole(spaces[space], "short_seasons", seasons);
            counts.WorstShort[space] = spaces[space].GetProperty("worst_short").GetInt64() is >= 0 and var worst
                ? worst
                : throw new FormatException();
        }

        return counts;
    }

    // No play counts a sum above the largest times the seasons, nor squares above its squares.
    private static Moments MomentsOf(JsonElement json, int seasons)
    {
        var moments = new Moments(
            seasons,
            UInt128.Parse(Text(json, "sum"), NumberStyles.None, CultureInfo.InvariantCulture),
            UInt128.Parse(Text(json, "squares"), NumberStyles.None, CultureInfo.InvariantCulture),
            json.GetProperty("least").GetInt64(),
            json.GetProperty("most").GetInt64()
        );
        var isPossible =
            moments.Least >= 0
            && moments.Least <= moments.Most
            && moments.Most <= TallyReader.LargestValue
            && moments.Sum <= (UInt128)(ulong)moments.Most * (uint)seasons
            && moments.Squares <= (UInt128)(ulong)moments.Most * (ulong)moments.Most * (uint)seasons;
        return isPossible ? moments : throw new FormatException();
    }

    private static int Whole(JsonElement from, string name, int most) =>
        from.GetProperty(name).GetInt32() is >= 0 and var number && number <= most ? number : throw new FormatException();

    private static string Text(JsonElement from, string name) => from.GetProperty(name).GetString() ?? throw new FormatException();
}
