using System.CommandLine;
using BenchSim.Answers.Check;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Today;
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
        "benchsim check spring --today 2027-04-20",
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
            Description = "Print the ways to get enough plants of each batch sown directly, with trays, seeds, chance and cost.",
        };
        var today = DayOptions.Today(
            "Say what stands where on that day by log.csv, and what is due and has no line; without a date, today."
        );
        var output = new OutputOptions("the plan, or the faults,");
        var command = new Command(
            "check",
            "Reads everything, reports every fault with its file, line and column, and prints the plan it understood: dates, trays, "
                + "seeds, and what the site's weather means for it."
        )
        {
            folder,
            sources,
            stand,
            today,
        };
        output.AddTo(command);
        command.Validators.Add(result =>
        {
            foreach (var option in new Option[] { sources, stand }.Where(option => result.IsGiven(today) && result.IsGiven(option)))
            {
                result.AddError($"{option.Name} does not go with --today: it tells of the plan; ask for it without a day.");
            }
        });
        command.SetAction(parsed =>
        {
            var scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder));
            return desk.Give(
                parsed.GetValue(today) is { } day
                    ? new TodayQuestion { Scenario = scenario, Today = day }.Ask()
                    : new CheckQuestion
                    {
                        Scenario = scenario,
                        Sources = parsed.GetValue(sources),
                        Stand = parsed.GetValue(stand),
                    }.Ask(),
                output.Of(parsed)
            );
        });
        return command;
    }
}
