using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Learn;
using BenchSim.Folder.Files;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Showing;

/// <summary>A line of crops.csv that changes: what stands there, and what would. Empty for a line that is new.</summary>
internal sealed record ChangedLine(string Before, string After);

/// <summary>What crops.csv would gain by what a log teaches.</summary>
/// <param name="Cannot">Why it cannot be put there; null where it can.</param>
/// <param name="IsThere">Whether it stands there already.</param>
/// <param name="Lines">The lines that change.</param>
internal sealed record TaughtDocument(string? Cannot, bool IsThere, ImmutableArray<ChangedLine> Lines)
{
    /// <summary>That of an answer of the files.</summary>
    public static TaughtDocument Of(LearnAnswer answer, Desk desk)
    {
        if ((desk.ReadOnly ?? desk.InWorkbook(FileNames.Crops)) is { } why)
        {
            return new TaughtDocument(why, false, []);
        }

        try
        {
            var taught = answer.Crops();
            return new TaughtDocument(
                null,
                !taught.IsChanged && !taught.Crops.IsEmpty,
                taught.IsChanged ? Changed(desk.State.Files.Of(FileNames.Crops) ?? "", taught.Text!) : []
            );
        }
        catch (FaultsFoundException found)
        {
            return new TaughtDocument(found.Sentence, false, []);
        }
        catch (RefusedException refused)
        {
            return new TaughtDocument(refused.Message, false, []);
        }
    }

    // Rows keep their places, and new ones come last.
    private static ImmutableArray<ChangedLine> Changed(string before, string after)
    {
        var (old, anew) = (Split(before), Split(after));
        return
        [
            .. Enumerable
                .Range(0, Math.Max(old.Length, anew.Length))
                .Select(at => new ChangedLine(old.ElementAtOrDefault(at) ?? "", anew.ElementAtOrDefault(at) ?? ""))
                .Where(line => !string.Equals(line.Before, line.After, StringComparison.Ordinal)),
        ];
    }

    private static string[] Split(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
}
