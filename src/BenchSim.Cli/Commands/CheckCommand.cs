using System.CommandLine;
using BenchSim.Answers.Check;
using BenchSim.Answers.Opening;
using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Commands;

/// <summary><c>check DIR</c>: reports every fault with its place, or prints the plan that was understood.</summary>
internal static class CheckCommand
{
    public static readonly string[] Examples =
    [
        "benchsim check spring",
        "benchsim check spring --sources",
        "benchsim check spring --stand",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        Option<bool> sources = new("--sources")
        {
            Description = "Print every value of the crops, tray types and houses in use, with its source.",
        };
        Option<bool> stand = new("--stand")
        {
            Description = "Print the ways to the stand of each directly sown batch, with trays, seeds, chance and cost.",
        };
        var json = CommonOptions.ForMachines("the plan, or the faults,");
        var command = new Command(
            "check",
            "Reads everything, reports every fault with its file, line and column, and prints the plan it understood: dates, trays, "
                + "seeds, and what the site's weather means for it."
        )
        {
            folder,
            sources,
            stand,
            json,
        };
        command.SetAction(parsed =>
            desk.Give(
                new CheckQuestion
                {
                    Scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder)),
                    Sources = parsed.GetValue(sources),
                    Stand = parsed.GetValue(stand),
                }.Ask(),
                parsed.GetValue(json)
            )
        );
        return command;
    }
}
