using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Words;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Report.Json;
using BenchSim.Report.Words;

namespace BenchSim.Answers.New;

/// <summary>Asks for a commented scenario folder to fill in.</summary>
/// <param name="Directory">Folder to make; it must not exist yet, or be empty.</param>
public sealed record NewQuestion(string Directory)
{
    /// <summary>The files to lay down: those of the starter folder, where nothing else is said.</summary>
    public IReadOnlyList<InputFile> Files { get; init; } = ScenarioTemplate.Files();

    /// <summary>Lays the folder down, whole or not at all.</summary>
    /// <param name="watch">Stops it.</param>
    /// <exception cref="RefusedException">Something stands there, or it cannot be written.</exception>
    public NewAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        RefuseFolderInUse();
        watch.Cancel.ThrowIfCancellationRequested();
        Write();
        return new NewAnswer(Directory, [.. Files.Select(file => file.Name)]);
    }

    private void RefuseFolderInUse()
    {
        if (File.Exists(Directory))
        {
            throw new RefusedException($"{PlainText.Quote(Directory)} is a file. Name a folder that does not exist yet.");
        }

        if (System.IO.Directory.Exists(Directory) && System.IO.Directory.EnumerateFileSystemEntries(Directory).Any())
        {
            throw new RefusedException(
                $"The folder {PlainText.Quote(Directory)} has files in it, and they stay as they are. "
                    + "Name a folder that does not exist yet, or an empty one."
            );
        }
    }

    private void Write()
    {
        var made = new Stack<string>();
        var written = new List<string>();
        try
        {
            Make(Directory, made);
            foreach (var file in Files)
            {
                var path = Path.Combine(Directory, file.Name);
                Make(Path.GetDirectoryName(path)!, made);
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

            foreach (var folder in made.Where(System.IO.Directory.Exists))
            {
                System.IO.Directory.Delete(folder);
            }

            throw new RefusedException(
                $"The folder {PlainText.Quote(Directory)} could not be made, and nothing was left behind: {failure.Message}"
            );
        }
    }

    // The last made is the first to go.
    private static void Make(string folder, Stack<string> made)
    {
        if (!System.IO.Directory.Exists(folder))
        {
            System.IO.Directory.CreateDirectory(folder);
            made.Push(folder);
        }
    }
}

/// <summary>A scenario folder that was laid down.</summary>
/// <param name="Directory">The folder.</param>
/// <param name="Files">Names of its files.</param>
public sealed record NewAnswer(string Directory, ImmutableArray<string> Files) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(new NewDocument(JsonDialect.Version, Directory, Files));

    private protected override void Tell(Passages passages)
    {
        passages.Line($"Wrote {PlainText.List(Files)} to {Directory}.");
        passages.Line("Put your own farm in the place of the invented one, then see what BenchSim understands:");
        passages.Line($"{Shell.Program} check {Shell.Word(Directory)}", 2);
    }
}
