using System.CommandLine;
using BenchSim.Answers.New;
using BenchSim.Answers.Words;
using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Commands;

/// <summary><c>new DIR</c>: lays down a commented scenario folder to fill in.</summary>
internal static class NewCommand
{
    public static readonly string[] Examples = ["benchsim new spring"];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Folder to make. It must not exist yet, or be empty.");
        var json = CommonOptions.ForMachines("the names of the files");
        var command = new Command(
            "new",
            "Lays down a scenario folder with a small invented farm and a comment beside each line, to fill in."
        )
        {
            folder,
            json,
        };
        command.SetAction(parsed => desk.Give(new NewQuestion(parsed.GetRequiredValue(folder)).Ask(desk.Watch), parsed.GetValue(json)));
        return command;
    }
}
