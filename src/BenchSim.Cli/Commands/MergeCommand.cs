using System.CommandLine;
using BenchSim.Answers.Run;
using BenchSim.Cli.Terminal;

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
        var output = new OutputOptions("the answer");
        var command = new Command(
            "merge",
            "Joins the parts of a run that \"run --shard\" wrote: the same answer and report, to the last byte, as one run of all seasons."
        )
        {
            files,
            place,
            require,
            noReport,
        };
        output.AddTo(command);
        command.Validators.Add(result =>
        {
            if (result.IsGiven(place) && result.IsGiven(noReport))
            {
                result.AddError("--out and --no-report contradict each other; leave one out.");
            }
        });
        command.SetAction(parsed =>
            RunCommand.Give(
                desk,
                new MergeQuestion
                {
                    Files = [.. parsed.GetRequiredValue(files)],
                    Require = parsed.GetValue(require),
                    Out = parsed.GetValue(place),
                    NoReport = parsed.GetValue(noReport),
                }.Ask(desk.Watch),
                output.Of(parsed)
            )
        );
        return command;
    }
}
