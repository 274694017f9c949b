using System.Collections.Immutable;
using System.CommandLine;
using BenchSim.Answers;
using BenchSim.Cli.Parts;
using BenchSim.Cli.Printing;
using BenchSim.Folder;
using BenchSim.Report;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;

namespace BenchSim.Cli.Commands;

/// <summary><c>merge PART...</c>: adds the parts of a run into the answer of the run.</summary>
internal static class MergeCommand
{
    public static readonly string[] Examples =
    [
        "benchsim merge spring.*-of-8.part",
        "benchsim merge spring.*-of-8.part --out answers/spring --require 0.9",
    ];

    public static Command Make(Desk desk)
    {
        var files = CommonOptions.Parts();
        var place = CommonOptions.Text(
            "--out",
            "DIR",
            "Report folder. Default: the scenario folder's name with \"-report\", beside the first part."
        );
        var require = CommonOptions.Share("--require", "P", "Share of seasons that must fit, such as 0.9; exit code 1 when fewer do.");
        Option<bool> noReport = new("--no-report") { Description = "Write no report folder." };
        var json = CommonOptions.ForMachines("the answer");
        var command = new Command(
            "merge",
            "Adds the parts of a run that \"run --shard\" wrote: the same answer and report, to the last byte, as one run of all seasons."
        )
        {
            files,
            place,
            require,
            noReport,
            json,
        };
        command.Validators.Add(result =>
        {
            if (result.IsGiven(place) && result.IsGiven(noReport))
            {
                result.AddError("--out and --no-report contradict each other; leave one out.");
            }
        });
        command.SetAction(parsed =>
            Merge(
                parsed.GetRequiredValue(files),
                folder => new RunSettings
                {
                    Directory = folder,
                    Out = parsed.GetValue(place),
                    Require = parsed.GetValue(require),
                    NoReport = parsed.GetValue(noReport),
                    Json = parsed.GetValue(json),
                },
                parsed.GetValue(json),
                desk
            )
        );
        return command;
    }

    private static int Merge(string[] files, Func<string, RunSettings> settingsOf, bool json, Desk desk)
    {
        var opened = OpenedParts.Open(files);
        if (opened.Parts.IsEmpty)
        {
            return FaultList.Print(desk, json, opened.Faults);
        }

        // The parts stand where the scenario folder stands, unless told otherwise.
        var first = opened.Parts[0];
        var settings = settingsOf(Path.Combine(Path.GetDirectoryName(files[0]) ?? "", first.Header.Folder));
        var place = settings.ReportPlace();
        if (place is not null)
        {
            ReportFolder.Check(place);
        }

        desk.Cancel.ThrowIfCancellationRequested();

        var scenario = OpenedScenario.Again(
            first.Inputs.Select(input => new InputFile(input.Name, ImmutableArray.Create(input.Bytes.Span))),
            first.Header.Unread
        );
        if (scenario.Plan is not { } plan)
        {
            return FaultList.Print(desk, json, scenario.Faults);
        }

        return Add(opened.Parts, plan) is { } result
            ? AnswerDelivery.Give(
                desk,
                new Answer(result, Verdict.Of(result), settings.Require),
                settings.Directory,
                place,
                scenario.Inputs,
                settings.Json
            )
            : FaultList.Print(
                desk,
                json,
                [OpenedParts.At(files[0], "the parts do not hold the counts of their seasons", "play them again")]
            );
    }

    private static StudyResult? Add(ImmutableArray<RunPart> parts, SeasonPlan plan)
    {
        var header = parts[0].Header;
        try
        {
            return PartRunner.Add(plan, header.Seasons, header.Seed, [.. parts.Select(part => part.Counts)]);
        }
        catch (PartRefusedException)
        {
            // Only a part that was made up by hand comes here: its last line vouches for it, yet no play wrote it.
            return null;
        }
    }
}
