using BenchSim.Report.Writing;

namespace BenchSim.Report.Agreed;

/// <summary>
/// The folder of an agreement: the files of the plan as it was agreed, and what was agreed beside them. It keeps the rules of a
/// <see cref="ReportFolder"/>: whole or absent, and nothing that stood there is lost but an earlier folder of the same kind.
/// </summary>
public static class AgreedFolder
{
    /// <summary>Name of the file that says what was agreed.</summary>
    public const string FileName = "agreed.txt";

    /// <summary>Refuses a place where something else stands, or that cannot be written; to be asked before the work.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ReportRefusedException">Something else stands there, or the place cannot be written.</exception>
    public static void Check(string directory) => Folder(directory).Check();

    /// <summary>Writes the folder. It appears whole at the end or not at all; an earlier one is replaced.</summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="inputs">The files of the plan, which stand in it as they stood in the scenario folder.</param>
    /// <param name="agreed">What was agreed.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ReportRefusedException">Something else stands there, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(string directory, IReadOnlyList<ReportInput> inputs, byte[] agreed, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        Folder(directory)
            .Write(
                [],
                folder =>
                {
                    foreach (var input in inputs)
                    {
                        folder.Save(input.Name, input.Bytes.ToArray());
                    }

                    folder.Save(FileName, agreed);
                },
                cancel
            );
    }

    /// <summary>Files of an agreement that somebody has changed since, in order of name; none where no list of them was kept.</summary>
    /// <param name="directory">The folder.</param>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public static IReadOnlyList<string> Changed(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        var list = Path.Combine(directory, WrittenFiles.FileName);
        return File.Exists(list) ? WrittenFiles.Of(OwnText.Read(list))?.ChangedIn(directory) ?? [] : [];
    }

    private static OwnFolder Folder(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        return new OwnFolder(directory, FileName);
    }
}
