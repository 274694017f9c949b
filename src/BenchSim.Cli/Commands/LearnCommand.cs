using System.CommandLine;
using BenchSim.Answers.Learn;
using BenchSim.Answers.Opening;
using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Commands;

/// <summary><c>learn DIR...</c>: what the logs of seasons teach of the crops, written into crops.csv where asked.</summary>
internal static class LearnCommand
{
    public static readonly string[] Examples =
    [
        "benchsim learn spring",
        "benchsim learn spring-2026 spring-2027 --write",
        "benchsim learn spring --prior 0.15,0.3,0.5",
    ];

    public static Command Make(Desk desk)
    {
        var folders = CommonOptions.Folders("Scenario folders of seasons with a log.csv, the season whose crops are learned last.");
        var write = new Option<bool>("--write")
        {
            Description = "Write the values into crops.csv of the last folder, with their source. Without it nothing is written.",
        };
        var prior = PriorOption.Make();
        var output = new OutputOptions("what was learned");
        var command = new Command(
            "learn",
            "Says crop by crop what the logs of one or more seasons teach: heat to come up, germination, losses, days of growth, minutes a "
                + "tray; how sure that is; and whether it would move a planned date by more than a day."
        )
        {
            folders,
            write,
            prior,
        };
        output.AddTo(command);
        command.SetAction(parsed =>
            desk.Give(
                new LearnQuestion
                {
                    Scenarios = [.. parsed.GetRequiredValue(folders).Select(ScenarioSource.Folder)],
                    Deviations = parsed.GetRequiredValue(prior),
                    Write = parsed.GetValue(write),
                }.Ask(desk.Cancel),
                output.Of(parsed)
            )
        );
        return command;
    }
}
