using System.Collections.Immutable;
using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Folder.Files;
using BenchSim.Report.Json;
using BenchSim.Study.Marks;

namespace BenchSim.Answers.Opening;

/// <summary>Reads answers that an earlier call of this program wrote as JSON.</summary>
internal static class WrittenAnswer
{
    /// <summary>Reads one.</summary>
    /// <param name="path">Its file.</param>
    /// <param name="refusal">What to say where it is none that this version can read.</param>
    /// <param name="of">
    /// Takes what is wanted out of it; where something is missing or of another kind it may throw what JSON throws.
    /// </param>
    /// <exception cref="RefusedException">There is none that can be read.</exception>
    public static T Read<T>(string path, string refusal, Func<JsonElement, T> of)
    {
        try
        {
            using var document = JsonDocument.Parse(File.ReadAllBytes(path));
            return document.RootElement.GetProperty("version").GetInt32() == JsonDialect.Version
                ? of(document.RootElement)
                : throw new FormatException();
        }
        catch (Exception failure)
            when (failure
                    is IOException
                        or UnauthorizedAccessException
                        or JsonException
                        or InvalidOperationException
                        or KeyNotFoundException
                        or FormatException
                        or OverflowException
            )
        {
            throw new RefusedException(refusal);
        }
    }

    /// <summary>The files it was made of, with their hashes.</summary>
    /// <param name="root">The answer.</param>
    public static ImmutableDictionary<string, string> Files(JsonElement root) =>
        root.GetProperty("inputs")
            .EnumerateArray()
            .GroupBy(input => TextOf(input.GetProperty("name")), StringComparer.Ordinal)
            .ToImmutableDictionary(input => input.Key, input => TextOf(input.First().GetProperty("sha256")), StringComparer.Ordinal);

    /// <summary>The hash of a file, as answers have it.</summary>
    public static string HashOf(InputFile file) => Convert.ToHexStringLower(Sha256.HashData(file.Bytes.AsSpan()));

    /// <summary>A text that must be there.</summary>
    public static string TextOf(JsonElement text) => text.GetString() ?? throw new FormatException();
}
