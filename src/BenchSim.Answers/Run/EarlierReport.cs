using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Report.Words;

namespace BenchSim.Answers.Run;

/// <summary>What an earlier report said, to be set beside a new answer.</summary>
internal sealed record EarlierReport
{
    private const string File = "result.json";

    /// <summary>Its folder, as the user named it.</summary>
    public required string Folder { get; init; }

    /// <summary>The day for which it was made; null for a play of the whole season.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>Variant that was played; null for the folder as it was.</summary>
    public string? Variant { get; init; }

    /// <summary>Seasons played.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck, as text.</summary>
    public required string Seed { get; init; }

    /// <summary>Share of seasons that fitted, 0 to 1.</summary>
    public required double Fits { get; init; }

    /// <summary>Plants that missed their date, late or never out, mean of a season.</summary>
    public required double Late { get; init; }

    /// <summary>The same, batch by batch.</summary>
    public required ImmutableArray<(string Batch, double Late)> Batches { get; init; }

    /// <summary>The files that were run, with their hashes.</summary>
    public required ImmutableDictionary<string, string> Files { get; init; }

    /// <summary>Reads the report.</summary>
    /// <param name="folder">Its folder.</param>
    /// <exception cref="RefusedException">There is no report that can be read.</exception>
    public static EarlierReport Read(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return WrittenAnswer.Read(
            Path.Combine(folder, File),
            $"{PlainText.Quote(folder)} holds no report of a run that this version can read; "
                + "name the folder that an earlier run wrote, with its result.json.",
            root => Of(folder, root)
        );
    }

    private static EarlierReport Of(string folder, JsonElement root)
    {
        var scenario = root.GetProperty("scenario");
        return new EarlierReport
        {
            Folder = folder,
            Today =
                scenario.TryGetProperty("today", out var today) && today.GetString() is { } day
                    ? DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture)
                    : null,
            Variant = scenario.GetProperty("variant").GetString(),
            Seasons = root.GetProperty("seasons").GetInt32(),
            Seed = WrittenAnswer.TextOf(root.GetProperty("seed")),
            Fits = NumberOf(root.GetProperty("fits").GetProperty("share")),
            Late = LateOf(root),
            Batches =
            [
                .. root.GetProperty("batches")
                    .EnumerateArray()
                    .Select(batch => (WrittenAnswer.TextOf(batch.GetProperty("id")), LateOf(batch))),
            ],
            Files = WrittenAnswer.Files(root),
        };
    }

    private static double LateOf(JsonElement of) =>
        of.GetProperty("plants_wanted").GetInt32() - NumberOf(of.GetProperty("plants_in_time").GetProperty("mean"));

    private static double NumberOf(JsonElement number) =>
        number.GetDouble() is var value && double.IsFinite(value) ? value : throw new FormatException();
}
