using System.CommandLine;
using BenchSim.Cli.Terminal;
using BenchSim.Level;
using BenchSim.Workbench;

namespace BenchSim.Cli.Commands;

/// <summary><c>open DIR</c>: the workbench, a page on which the answer moves with every change.</summary>
internal static class OpenCommand
{
    private const int MostPort = 65_535;

    public static readonly string[] Examples = ["benchsim open", "benchsim open spring", "benchsim open spring --port 8080"];

    public static Command Make(Desk desk)
    {
        var folder = new Argument<string?>("DIR")
        {
            Description = "Scenario folder: site.toml and plan.csv. Left out: the page asks ten questions and lays one down here.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var port = CommonOptions.Whole("--port", "N", 1, MostPort, "Port to listen on. Default: one that is free.");
        var show = new Option<bool>("--show") { Description = "Open the page in your browser at once." };
        var command = new Command(
            "open",
            "Opens the workbench: a page in your browser on which the answer moves with every change. "
                + "It answers this computer alone and sends nothing anywhere. Ctrl-C closes it."
        )
        {
            folder,
            port,
            show,
        };
        command.SetAction(parsed => Open(desk, parsed.GetValue(folder), parsed.GetValue(port) ?? 0, parsed.GetValue(show)));
        return command;
    }

    // Its own method: the web server's assemblies are loaded when it is entered, and by no other command.
    private static int Open(Desk desk, string? folder, int port, bool show)
    {
        OpenAsync(desk, folder, port, show).GetAwaiter().GetResult();
        return ExitCode.Done;
    }

    private static async Task OpenAsync(Desk desk, string? folder, int port, bool show)
    {
        await using var workbench = await OpenWorkbench.StartAsync(folder, port, desk.Cancel, Leveller.IfHere);
        desk.Say("The workbench is open. Its address, good for one use, on this computer alone:");
        desk.Say(workbench.Address);
        desk.Output.Flush();
        if (show && !DoubleClick.Show(workbench.Address))
        {
            desk.Complain("No browser could be called: type the address into one.");
        }

        await Task.Delay(Timeout.Infinite, desk.Cancel).ContinueWith(_ => { }, TaskScheduler.Default);
        desk.Say("Closed. What you changed is kept in the folder.");
    }
}
