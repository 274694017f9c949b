using System.CommandLine;
using BenchSim.Cli.Terminal;
using BenchSim.Level;
using BenchSim.Workbench;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Phones;

namespace BenchSim.Cli.Commands;

/// <summary><c>open DIR</c>: the workbench, a page on which the answer moves with every change.</summary>
internal static class OpenCommand
{
    private const int MostPort = 65_535;

    public static readonly string[] Examples =
    [
        "benchsim open",
        "benchsim open spring",
        "benchsim open spring --port 8080",
        "benchsim open spring --lan",
    ];

    public static Command Make(Desk desk)
    {
        var folder = new Argument<string?>("DIR")
        {
            Description =
                "Scenario folder: site.toml and plan.csv. Left out: the page lists those opened before, "
                + "or asks ten questions and lays one down here.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var port = CommonOptions.Whole("--port", "N", 1, MostPort, "Port to listen on. Default: one that is free.");
        var show = new Option<bool>("--show") { Description = "Open the page in your browser at once." };
        var lan = new Option<string?>("--lan")
        {
            HelpName = "ADDRESS",
            Arity = ArgumentArity.ZeroOrOne,
            Description =
                "Let paired phones in your own network write into the log, at this computer's addresses there or the one named. "
                + "What they send is not encrypted.",
        };
        var command = new Command(
            "open",
            "Opens the workbench: a page in your browser on which the answer moves with every change. "
                + "It answers this computer alone, with --lan paired phones too, and sends nothing anywhere else. Ctrl-C closes it."
        )
        {
            folder,
            port,
            show,
            lan,
        };
        command.SetAction(parsed =>
            Open(
                desk,
                parsed.GetValue(folder),
                parsed.GetValue(port) ?? 0,
                parsed.GetValue(show),
                parsed.CommandResult.IsGiven(lan),
                parsed.GetValue(lan)
            )
        );
        return command;
    }

    // Its own method: the web server's assemblies are loaded when it is entered, and by no other command.
    private static int Open(Desk desk, string? folder, int port, bool show, bool isLan, string? address)
    {
        OpenAsync(desk, folder, port, show, isLan ? Lan.Of(address) : null).GetAwaiter().GetResult();
        return ExitCode.Done;
    }

    private static async Task OpenAsync(Desk desk, string? folder, int port, bool show, Lan? lan)
    {
        await using var workbench = await OpenWorkbench.StartAsync(folder, port, desk.Cancel, Leveller.IfHere, lan, FolderList.OfUser());
        desk.Say("The workbench is open. Its address, good for one use, on this computer alone:");
        desk.Say(workbench.Address);
        if (lan is not null)
        {
            desk.Say("Phones in your own network open this, and type the code below; each phone once:");
            foreach (var each in workbench.PhoneAddresses)
            {
                desk.Say(each);
            }

            desk.Say("What they send is not encrypted: others in the same network can read it. Use a network of your own.");
            workbench.TellCodes(code =>
            {
                desk.Say($"Code for a phone, good once and for ten minutes: {code}. A new one: on the page, under Phones.");
                desk.Output.Flush();
            });
        }

        desk.Output.Flush();
        if (show && !DoubleClick.Show(workbench.Address))
        {
            desk.Complain("No browser could be called: type the address into one.");
        }

        await Task.Delay(Timeout.Infinite, desk.Cancel).ContinueWith(_ => { }, TaskScheduler.Default);
        desk.Say("Closed. What you changed is kept in the folder.");
    }
}
