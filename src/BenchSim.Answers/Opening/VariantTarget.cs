using System.Text;
using BenchSim.Answers.Asking;
using BenchSim.Folder.Files;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;

namespace BenchSim.Answers.Opening;

/// <summary>A variant file that is to be written: whole or not at all, and never over another file.</summary>
/// <param name="directory">The scenario folder, as the user wrote it; null where there is none.</param>
/// <param name="name">Name of the variant.</param>
public sealed class VariantTarget(string? directory, string name)
{
    /// <summary>Where it stands, as the user wrote the folder.</summary>
    public string Shown => Path.Combine(directory ?? "", FileNames.VariantFolder, name + ".toml");

    /// <summary>Refuses a name that is none, and one that is taken.</summary>
    /// <exception cref="RefusedException">It is.</exception>
    public void Check()
    {
        if (directory is null)
        {
            throw new RefusedException("The scenario is in no folder, so no variant can be written.");
        }

        if (name.Length == 0 || name.Contains('/', StringComparison.Ordinal) || !PlainNames.IsPlain(FileNames.OfVariant(name)))
        {
            throw new RefusedException(
                $"{PlainText.Quote(name)} is no plain name of a variant; write one such as mended, without any of / \\ : * ? \" < > |."
            );
        }

        var folder = Path.Combine(directory, FileNames.VariantFolder);
        if (File.Exists(folder))
        {
            throw new RefusedException($"{PlainText.Quote(folder)} is a file, not a folder: no variant can be written there.");
        }

        if (Path.Exists(Shown))
        {
            throw new RefusedException($"There is a variant {PlainText.Quote(name)} already, and it stays as it is. Write another name.");
        }
    }

    /// <summary>Writes the file.</summary>
    /// <param name="text">What is in it.</param>
    /// <param name="cancel">Stops it; nothing is left behind.</param>
    /// <exception cref="RefusedException">It cannot be written.</exception>
    public void Write(string text, CancellationToken cancel)
    {
        try
        {
            cancel.ThrowIfCancellationRequested();
            Directory.CreateDirectory(Path.GetDirectoryName(Shown)!);

            // What has come to stand there during the play is looked at again.
            TargetFile.Write(Shown, Encoding.UTF8.GetBytes(text), Check, cancel);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException($"The variant could not be written to {PlainText.Quote(Shown)}: {failure.Message}");
        }
    }
}
