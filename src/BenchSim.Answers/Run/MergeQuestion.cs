using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Parts;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;

namespace BenchSim.Answers.Run;

/// <summary>Asks for the answer of a run that was played in parts.</summary>
public sealed record MergeQuestion
{
    /// <summary>Files of the parts, all of one run, in any order.</summary>
    public required ImmutableArray<string> Files { get; init; }

    /// <summary>Share of seasons that must fit, 0 to 1; null for no gate.</summary>
    public double? Require { get; init; }

    /// <summary>Report folder; null for the scenario folder's name with "-report", beside the first part.</summary>
    public string? Out { get; init; }

    /// <summary>True when no report is wanted.</summary>
    public bool NoReport { get; init; }

    /// <summary>Adds the parts. The report is written by the answer.</summary>
    /// <param name="watch">Stops it.</param>
    /// <exception cref="FaultsFoundException">Some part cannot be read, or they are not one whole run.</exception>
    public RunAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var parts = OpenedParts.Open(Files);
        var first = parts[0];

        // The parts stand where the scenario folder stands, unless told otherwise.
        var directory = Path.Combine(Path.GetDirectoryName(Files[0]) ?? "", first.Header.Folder);
        var place = RunQuestion.ReportPlace(directory, Out, NoReport);
        watch.Cancel.ThrowIfCancellationRequested();
        var files = first.Inputs.Select(input => new InputFile(input.Name, ImmutableArray.Create(input.Bytes.Span)));
        var opened = ScenarioSource.Files(files, first.Header.Unread).Open();
        return new RunAnswer(Add(parts, opened.Plan), opened.Inputs)
        {
            ScenarioFolder = directory,
            Required = Require,
            Report = place,
        };
    }

    private StudyResult Add(ImmutableArray<RunPart> parts, SeasonPlan plan)
    {
        var header = parts[0].Header;
        try
        {
            return PartRunner.Add(plan, header.Seasons, header.Seed, [.. parts.Select(part => part.Counts)]);
        }
        catch (PartRefusedException)
        {
            // Only a part that was made up by hand comes here: its last line vouches for it, yet no play wrote it.
            throw new FaultsFoundException([
                OpenedParts.At(Files[0], "the parts do not hold the counts of their seasons", "play them again"),
            ]);
        }
    }
}
