using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Case;
using BenchSim.Folder;
using BenchSim.Season.Values;
using BenchSim.Study.Shards;

namespace BenchSim.Answers.Parts;

/// <summary>Reads the parts of a run and finds out whether they are one whole run.</summary>
internal static class OpenedParts
{
    /// <summary>Largest part that is read, bytes.</summary>
    private const long LargestPart = 1_000_000_000;

    /// <summary>The parts, number 1 first.</summary>
    /// <param name="files">Their files.</param>
    /// <exception cref="FaultsFoundException">Some cannot be read, or they are not one whole run.</exception>
    public static ImmutableArray<RunPart> Open(IEnumerable<string> files)
    {
        var parts = new List<(string File, RunPart Part)>();
        var faults = new List<Fault>();
        foreach (var file in files)
        {
            if (Read(file, out var fault) is { } part)
            {
                parts.Add((file, parts.Count == 0 ? part : part.SharingInputsWith(parts[0].Part)));
            }
            else
            {
                faults.Add(fault!);
            }
        }

        // Which parts are missing cannot be said while some cannot be read.
        if (faults.Count == 0)
        {
            faults.AddRange(PartSet.Faults(parts, BuildMark.Text).Select(each => At(each.File, each.What, each.Instead)));
        }

        return faults.Count > 0
            ? throw new FaultsFoundException(faults)
            : [.. parts.Select(each => each.Part).OrderBy(part => part.Header.Share.Number)];
    }

    /// <summary>A fault of a part as a whole.</summary>
    public static Fault At(string file, string what, string instead) => new(new SourcePlace(file, 0, 0), what, instead);

    private static RunPart? Read(string file, out Fault? fault)
    {
        if (PlainFile.Read(file, LargestPart, out fault) is not { } bytes)
        {
            return null;
        }

        var part = RunPart.Read(bytes, out var problem);
        fault = problem switch
        {
            PartProblem.None => null,
            PartProblem.NotAPart => At(file, "this is no part of a run", "name files that \"benchsim run --shard\" wrote"),
            PartProblem.OtherVersion => At(
                file,
                "this part was written by another version of BenchSim",
                "merge it with the BenchSim that wrote it"
            ),
            _ => At(file, "this part is damaged or cut short", "copy it again, or play it again"),
        };
        return part;
    }
}
