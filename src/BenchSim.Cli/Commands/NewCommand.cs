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
        var output = new OutputOptions("the names of the files");
        var command = new Command("new", "Makes a scenario folder to fill in: a small invented farm, with a comment beside each line.")
        {
            folder,
        };
        output.AddTo(command);
        command.SetAction(parsed => desk.Give(new NewQuestion(parsed.GetRequiredValue(folder)).Ask(desk.Watch), output.Of(parsed)));
        return command;
    }
}
