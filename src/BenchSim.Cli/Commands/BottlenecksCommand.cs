using System.CommandLine;
using BenchSim.Answers.Bottlenecks;
using BenchSim.Answers.Opening;
using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Commands;

/// <summary><c>bottlenecks DIR</c>: gives each space more room in turn, on the same luck, and says what that saves.</summary>
internal static class BottlenecksCommand
{
    public static readonly string[] Examples = ["benchsim bottlenecks spring", "benchsim bottlenecks spring --seasons 2000 --json"];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var play = new PlayOptions();
        var json = CommonOptions.ForMachines("the answer");
        var command = new Command(
            "bottlenecks",
            "Gives each space no limit in turn, then one unit more, then every two no limit at once, on the same luck, "
                + "and says which saves most late plants; and who waits for whom, by week."
        )
        {
            folder,
        };
        play.AddTo(command);
        command.Add(json);
        command.SetAction(parsed =>
            desk.Give(
                new BottleneckQuestion { Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)), Play = play.Of(parsed) }.Ask(
                    desk.Watch
                ),
                parsed.GetValue(json)
            )
        );
        return command;
    }
}
