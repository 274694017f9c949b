using System.CommandLine;
using BenchSim.Cli.Printing;

namespace BenchSim.Cli.Commands;

/// <summary><c>check DIR</c>: reports every fault with its place, or prints the plan that was understood.</summary>
internal static class CheckCommand
{
    public static readonly string[] Examples = ["benchsim check spring", "benchsim check spring --sources"];

    public static Command Make(Desk desk)
    {
        Argument<string> folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        Option<bool> sources = new("--sources") { Description = "Print every value of the crops and tray types in use, with its source." };
        Option<bool> json = CommonOptions.ForMachines("the plan, or the faults,");
        var command = new Command("check", "Reads everything, reports every fault with its file, line and column, and prints the plan it understood: dates, trays, seeds.") { folder, sources, json };
        command.SetAction(parsed => Check(parsed.GetRequiredValue(folder), parsed.GetValue(sources), parsed.GetValue(json), desk));
        return command;
    }

    private static int Check(string directory, bool sources, bool json, Desk desk)
    {
        OpenedScenario opened = OpenedScenario.Open(directory);
        if (opened.Plan is not { } plan)
            return FaultList.Print(desk, json, opened.Faults);
        if (json)
            PlanJson.Print(desk, plan, sources);
        else
            PlanPrinter.Print(desk, plan, sources, directory);
        return ExitCode.Done;
    }
}
