using System.CommandLine;
using BenchSim.Answers;
using BenchSim.Answers.Words;
using BenchSim.Folder;

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
        command.SetAction(parsed => LayDown(parsed.GetRequiredValue(folder), parsed.GetValue(json), desk));
        return command;
    }

    private static int LayDown(string directory, bool json, Desk desk)
    {
        var files = ScenarioTemplate.Files();
        RefuseFolderInUse(directory);
        desk.Cancel.ThrowIfCancellationRequested();
        Write(directory, files);
        if (json)
        {
            PrintJson(directory, files, desk);
        }
        else
        {
            Print(directory, files, desk);
        }

        return ExitCode.Done;
    }

    private static void RefuseFolderInUse(string directory)
    {
        if (File.Exists(directory))
        {
            throw new RefusedException($"{SafeText.Quote(directory)} is a file. Name a folder that does not exist yet.");
        }

        if (Directory.Exists(directory) && Directory.EnumerateFileSystemEntries(directory).Any())
        {
            throw new RefusedException(
                $"The folder {SafeText.Quote(directory)} has files in it, and they stay as they are. Name a folder that does not exist yet, or an empty one."
            );
        }
    }

    private static void Write(string directory, IReadOnlyList<InputFile> files)
    {
        var wasThere = Directory.Exists(directory);
        var written = new List<string>();
        try
        {
            Directory.CreateDirectory(directory);
            foreach (var file in files)
            {
                var path = Path.Combine(directory, file.Name);
                using var stream = new FileStream(path, FileMode.CreateNew);
                written.Add(path);
                stream.Write(file.Bytes.AsSpan());
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            foreach (var path in written)
            {
                File.Delete(path);
            }

            if (!wasThere && Directory.Exists(directory))
            {
                Directory.Delete(directory);
            }

            throw new RefusedException(
                $"The folder {SafeText.Quote(directory)} could not be laid down, and nothing was left behind: {failure.Message}"
            );
        }
    }

    private static void Print(string directory, IReadOnlyList<InputFile> files, Desk desk)
    {
        desk.Say($"Laid down {Figures.List([.. files.Select(file => file.Name)])} in {directory}.");
        desk.Say("Put your own farm in the place of the invented one, then see what BenchSim understands:");
        desk.Say($"  {RootMenu.ProgramName} check {Shell.Word(directory)}");
    }

    private static void PrintJson(string directory, IReadOnlyList<InputFile> files, Desk desk) =>
        desk.SayJson(json =>
        {
            json.WriteString("folder", directory);
            json.WriteStartArray("files");
            foreach (var file in files)
            {
                json.WriteStringValue(file.Name);
            }

            json.WriteEndArray();
        });
}
