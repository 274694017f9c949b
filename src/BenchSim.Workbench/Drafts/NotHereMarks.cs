using System.Collections.Immutable;
using System.Text;
using BenchSim.Answers.Mend;
using BenchSim.Folder;
using BenchSim.Folder.Files;

namespace BenchSim.Workbench.Drafts;

/// <summary>What is not to be had on this farm: the lines of its file in the folder. A line that is not a mark stays as it is.</summary>
internal static class NotHereMarks
{
    private const long LargestFile = 1_000_000;
    private const int LongestMark = 300;

    private static readonly Lock s_gate = new();

    /// <summary>The file; null where there is none that can be read.</summary>
    public static InputFile? File(OpenFolder folder) =>
        BytesOf(folder) is { } bytes ? new InputFile(MendQuestion.NotHereFile, [.. bytes]) : null;

    /// <summary>The marks in the order of the file.</summary>
    public static ImmutableArray<string> Of(OpenFolder folder) =>
        BytesOf(folder) is { } bytes ? [.. Lines(Encoding.UTF8.GetString(bytes)).Select(MarkOf).Where(mark => mark.Length > 0)] : [];

    /// <summary>Marks something as not to be had, or takes the mark away.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="mark">The mark.</param>
    /// <param name="isHere">True to take it away.</param>
    /// <returns>Why it was not done; null when it was.</returns>
    public static NotMade? Set(OpenFolder folder, string mark, bool isHere)
    {
        if (mark.Length is 0 or > LongestMark || mark.Any(char.IsControl) || !string.Equals(MarkOf(mark), mark, StringComparison.Ordinal))
        {
            return new NotMade($"This cannot be written as a line of {MendQuestion.NotHereFile}.", false);
        }

        lock (s_gate)
        {
            var text = BytesOf(folder) is { } bytes ? Encoding.UTF8.GetString(bytes) : "";
            var end = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
            var has = Lines(text).Any(line => string.Equals(MarkOf(line), mark, StringComparison.Ordinal));
            if (has != isHere)
            {
                return null;
            }

            var kept = isHere
                ? string.Concat(Lines(text).Where(line => !string.Equals(MarkOf(line), mark, StringComparison.Ordinal)))
                : text + (text.Length == 0 || text.EndsWith('\n') ? "" : end) + mark + end;
            try
            {
                folder.Write(MendQuestion.NotHereFile, kept);
                return null;
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                return new NotMade($"The disk or the system refused, so this was not done: {failure.Message}", false);
            }
        }
    }

    private static string MarkOf(string line) => line.Split('#')[0].Trim();

    // With their ends, so that what stays stays as it is.
    private static IEnumerable<string> Lines(string text)
    {
        var at = 0;
        while (at < text.Length)
        {
            var end = text.IndexOf('\n', at) is >= 0 and var found ? found + 1 : text.Length;
            yield return text[at..end];
            at = end;
        }
    }

    private static byte[]? BytesOf(OpenFolder folder)
    {
        try
        {
            return PlainFile.Read(folder.PathOf(MendQuestion.NotHereFile), LargestFile, out _);
        }
        catch (IOException)
        {
            return null;
        }
    }
}
