using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Folder.Files;
using BenchSim.Report;
using BenchSim.Report.Words;

namespace BenchSim.Answers.Trust;

/// <summary>What an earlier study of the values says of the seasons that fit, to stand beside a run of the same files.</summary>
/// <param name="Values">Values that may be wrong.</param>
/// <param name="Low">5 % of the sets of values bring a share below it.</param>
/// <param name="Middle">Half of them do.</param>
/// <param name="High">5 % of them bring a share above it.</param>
internal sealed record KnownRange(int Values, double Low, double Middle, double High)
{
    /// <summary>The options with which the study was asked, as they are typed.</summary>
    public required string Options { get; init; }

    /// <summary>The range in a sentence.</summary>
    public string Sentence =>
        Values == 0
            ? "All values behind it are yours, so none is taken to be wrong."
            : $"Over the {(Values == 1 ? "range of the one value" : $"ranges of the {Numbers.Whole(Values)} values")} that may be wrong "
                + $"it is {ChanceWords.FineNumber(Low)} to {ChanceWords.Fine(High)}, {ChanceWords.Fine(Middle)} in the middle.";

    /// <summary>Reads the study.</summary>
    /// <param name="file">trust.json, or the folder that holds it.</param>
    /// <param name="inputs">The files of the run: the study must be of the same.</param>
    /// <param name="today">The day from which the run is played; null for whole seasons.</param>
    /// <exception cref="RefusedException">There is no such study, or it is of other files or from another day on.</exception>
    public static KnownRange Read(string file, ImmutableArray<InputFile> inputs, DateOnly? today)
    {
        ArgumentNullException.ThrowIfNull(file);
        return WrittenAnswer.Read(
            Directory.Exists(file) ? Path.Combine(file, TrustFolder.Answer) : file,
            $"{PlainText.Quote(file)} holds no answer of \"trust\" that this version can read; "
                + "name the folder that \"trust --out\" wrote, or its trust.json.",
            root =>
            {
                var fits = root.GetProperty("figures").EnumerateArray().First();
                RefuseOthers(file, WrittenAnswer.Files(root), inputs);
                RefuseOtherDay(file, root.GetProperty("today").GetString(), today is { } day ? Dates.Iso(day) : null);
                return new KnownRange(
                    root.GetProperty("values").GetArrayLength(),
                    Share(fits.GetProperty("low")),
                    Share(fits.GetProperty("middle")),
                    Share(fits.GetProperty("high"))
                )
                {
                    Options =
                        $"--sets {root.GetProperty("sets").GetInt32()} --seasons {root.GetProperty("seasons").GetInt32()} "
                        + $"--seed {ulong.Parse(WrittenAnswer.TextOf(root.GetProperty("seed")), CultureInfo.InvariantCulture)}",
                };
            }
        );
    }

    private static void RefuseOtherDay(string file, string? known, string? now)
    {
        if (!string.Equals(known, now, StringComparison.Ordinal))
        {
            throw new RefusedException(
                $"{PlainText.Quote(file)} is of {(known is null ? "whole seasons" : $"the seasons from {known} on")}, and this run is of "
                    + $"{(now is null ? "whole seasons" : $"those from {now} on")}. Ask \"trust\" for the same days."
            );
        }
    }

    private static void RefuseOthers(string file, ImmutableDictionary<string, string> before, ImmutableArray<InputFile> inputs)
    {
        var now = inputs.ToDictionary(input => input.Name, WrittenAnswer.HashOf, StringComparer.Ordinal);
        string[] other =
        [
            .. before
                .Keys.Union(now.Keys, StringComparer.Ordinal)
                .Where(name => !string.Equals(before.GetValueOrDefault(name), now.GetValueOrDefault(name), StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];
        if (other.Length > 0)
        {
            throw new RefusedException(
                $"{PlainText.Quote(file)} is of other files: {string.Join(", ", other.Select(PlainText.Quote))} "
                    + $"{(other.Length == 1 ? "is" : "are")} not as then. Ask \"trust\" again."
            );
        }
    }

    private static double Share(JsonElement number) =>
        number.GetDouble() is >= 0 and <= 1 and var share ? share : throw new FormatException();
}
