using System.Collections.Immutable;
using System.Text;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Words;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Mend;

/// <summary>Changes that are not to be had on this farm: the lines of not-here.txt in the scenario folder, one mark each.</summary>
internal sealed class NotHere
{
    /// <summary>Name of the file.</summary>
    public const string FileName = "not-here.txt";

    private const long LargestFile = 1_000_000;

    private readonly HashSet<string> _marks;

    private NotHere(IEnumerable<string> marks) => _marks = new HashSet<string>(marks, StringComparer.Ordinal);

    /// <summary>Reads the file of a folder; nothing is marked where there is none.</summary>
    /// <param name="directory">The folder; null for a scenario in memory.</param>
    /// <param name="plan">The plan, whose houses, spaces, crops and lines may be named.</param>
    /// <exception cref="FaultsFoundException">A line marks nothing that there is.</exception>
    public static NotHere Read(string? directory, SeasonPlan plan)
    {
        var path = directory is null ? null : Path.Combine(directory, FileName);
        if (path is null || !Path.Exists(path))
        {
            return new NotHere([]);
        }

        return PlainFile.Read(path, LargestFile, out var fault) is { } bytes
            ? Of(new InputFile(FileName, [.. bytes]), plan)
            : throw new FaultsFoundException([fault! with { Place = new SourcePlace(FileName, 0, 0) }]);
    }

    /// <summary>Reads the lines of a file that was read already.</summary>
    /// <param name="file">The file.</param>
    /// <param name="plan">The plan, whose houses, spaces, crops and lines may be named.</param>
    /// <exception cref="FaultsFoundException">A line marks nothing that there is.</exception>
    public static NotHere Of(InputFile file, SeasonPlan plan)
    {
        string text;
        try
        {
            text = new UTF8Encoding(false, true).GetString(file.Bytes.AsSpan()).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            throw new FaultsFoundException([
                new Fault(new SourcePlace(FileName, 0, 0), "a character here is not UTF-8 text", "save the file as UTF-8"),
            ]);
        }

        (string Mark, int Line)[] lines =
        [
            .. text.ReplaceLineEndings("\n")
                .Split('\n')
                .Select((line, at) => (line.Split('#')[0].Trim(), at + 1))
                .Where(line => line.Item1.Length > 0),
        ];
        var known = Known(plan);
        Fault[] faults = [.. lines.Where(line => !IsKnown(known, line.Mark)).Select(line => Unknown(known, line.Mark, line.Line))];
        return faults.Length > 0 ? throw new FaultsFoundException(faults) : new NotHere(lines.Select(line => line.Mark));
    }

    /// <summary>The changes that are not marked.</summary>
    /// <param name="changes">Changes.</param>
    /// <param name="left">How many are left out.</param>
    public ImmutableArray<MendChange> Without(ImmutableArray<MendChange> changes, out int left)
    {
        ImmutableArray<MendChange> kept = [.. changes.Where(change => !IsMarked(change.Mark) && !change.Settles.Any(IsMarked))];
        left = changes.Length - kept.Length;
        return kept;
    }

    // A kind alone marks all of its kind.
    private bool IsMarked(string mark) => _marks.Contains(mark) || _marks.Contains(mark.Split(' ')[0]);

    private static Dictionary<string, string[]> Known(SeasonPlan plan)
    {
        string[] houses = [.. plan.Scenario.Houses.Select(house => house.Id)];
        string[] crops = [.. plan.Scenario.Crops.Select(crop => crop.Id)];
        string[] lines = [.. MendCandidates.Lines(plan)];
        return new Dictionary<string, string[]>(StringComparer.Ordinal)
        {
            ["places"] = [.. plan.Scenario.Spaces.Select(space => space.Id)],
            ["heat"] = houses,
            ["open"] = houses,
            ["cover"] = [],
            ["relief"] = [.. ReliefFields.Word.Choices],
            ["dense"] = crops,
            ["finish"] = crops,
            ["slack"] = [],
            ["level"] = [],
            ["sow"] = lines,
            ["fewer"] = lines,
            ["later"] = lines,
        };
    }

    private static bool IsKnown(Dictionary<string, string[]> known, string mark)
    {
        var parts = mark.Split(' ', 2, StringSplitOptions.TrimEntries);
        return known.TryGetValue(parts[0], out var names) && (parts.Length == 1 || names.Contains(parts[1], StringComparer.Ordinal));
    }

    private static Fault Unknown(Dictionary<string, string[]> known, string mark, int line)
    {
        var parts = mark.Split(' ', 2, StringSplitOptions.TrimEntries);
        var isKind = known.TryGetValue(parts[0], out var names);
        var near = isKind
            ? NearNames.Of(parts.Length > 1 ? parts[1] : "", names!).Select(name => $"{parts[0]} {name}")
            : NearNames.Of(parts[0], known.Keys);
        var first = near.FirstOrDefault();
        return new Fault(
            new SourcePlace(FileName, line, 1),
            $"nothing that could be changed is called {PlainText.Quote(mark)}",
            first is not null ? $"did you mean {PlainText.Quote(first)}"
                : isKind ? $"write {parts[0]} alone, or with a name of the scenario"
                : $"begin with one of {PlainText.List([.. known.Keys])}; mend --all prints the marks"
        );
    }
}
