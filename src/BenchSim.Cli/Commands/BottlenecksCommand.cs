using System.CommandLine;
using BenchSim.Cli.Printing;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Bottlenecks;

namespace BenchSim.Cli.Commands;

/// <summary><c>bottlenecks DIR</c>: gives each space more room in turn, on the same luck, and says what that saves.</summary>
internal static class BottlenecksCommand
{
    public static readonly string[] Examples = ["benchsim bottlenecks spring", "benchsim bottlenecks spring --seasons 2000 --json"];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var options = new PlayOptions();
        var json = CommonOptions.ForMachines("the answer");
        var command = new Command(
            "bottlenecks",
            "Gives each space no limit in turn, then one unit more, then every two no limit at once, on the same luck, and says which saves most late plants; and who waits for whom, by week."
        )
        {
            folder,
        };
        options.AddTo(command);
        command.Add(json);
        command.SetAction(parsed => Find(parsed.GetRequiredValue(folder), plan => options.Of(parsed, plan), parsed.GetValue(json), desk));
        return command;
    }

    private static int Find(string directory, Func<SeasonPlan, StudyOptions> optionsOf, bool json, Desk desk)
    {
        var opened = OpenedScenario.Open(directory);
        if (opened.Plan is not { } plan)
        {
            return FaultList.Print(desk, json, opened.Faults);
        }

        var options = optionsOf(plan);
        var result = PlayProgress.Draw(desk, options.Seasons, progress => BottleneckRunner.Play(plan, options, progress, desk.Cancel));
        if (json)
        {
            BottleneckJson.Print(desk, result);
        }
        else
        {
            BottleneckPrinter.Print(desk, result);
        }

        return ExitCode.Done;
    }
}
