using System.CommandLine;
using BenchSim.Answers.Bottlenecks;
using BenchSim.Answers.Opening;
using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Commands;

/// <summary><c>bottlenecks DIR</c>: gives each space more room in turn, on the same luck, and says what that saves.</summary>
internal static class BottlenecksCommand
{
    public static readonly string[] Examples =
    [
        "benchsim bottlenecks spring",
        "benchsim bottlenecks spring --seasons 2000 --json",
        "benchsim bottlenecks spring --today 2027-04-20",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var today = DayOptions.Underway();
        var play = new PlayOptions();
        var output = new OutputOptions("the answer");
        var command = new Command(
            "bottlenecks",
            "Takes away the limit of each space in turn, then gives each one unit more, then takes away the limits of every two, all in "
                + "the same seasons. Says which of it saves most late plants, and which trays wait for which space, by week."
        )
        {
            folder,
            today,
        };
        play.AddTo(command);
        output.AddTo(command);
        command.SetAction(parsed =>
            desk.Give(
                new BottleneckQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)).On(parsed.GetValue(today)),
                    Play = play.Of(parsed),
                }.Ask(desk.Watch),
                output.Of(parsed)
            )
        );
        return command;
    }
}
