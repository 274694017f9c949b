using BenchSim.Report.Writing;

namespace BenchSim.Report.Case;

/// <summary>
/// A case report of a comparison as a folder: <c>case.pdf</c> and the files that were played in <c>inputs/</c>, so that a reviewer can play
/// them again. It keeps the rules of a <see cref="ReportFolder"/>: whole or absent, and nothing that stood there is lost but an earlier
/// folder of the same kind.
/// </summary>
public static class CaseFolder
{
    /// <summary>Name of the case report, here and in a report folder.</summary>
    public const string FileName = "case.pdf";

    /// <summary>The case report by itself. The same case gives the same bytes.</summary>
    /// <param name="input">The case.</param>
    /// <param name="inputs">The files that were played.</param>
    /// <exception cref="ArgumentException">The parts of the case do not belong together, or a name of an input cannot be used.</exception>
    public static byte[] Book(CaseInput input, IReadOnlyList<ReportInput> inputs)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(inputs);
        InputNames.Check(inputs);
        return CaseBook.Write(input, inputs);
    }

    /// <summary>Refuses a place where something stands that is not such a folder, or that cannot be written; to
    /// be asked before the play.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or it cannot be written.</exception>
    public static void Check(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        Files(directory).Check();
    }

    /// <summary>Writes the folder. It appears whole at the end or not at all.</summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="input">The case.</param>
    /// <param name="inputs">The files that were played.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentException">The directory is empty, the parts of the case do not belong
    /// together, or a name of an input cannot be used.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(string directory, CaseInput input, IReadOnlyList<ReportInput> inputs, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        cancel.ThrowIfCancellationRequested();
        var pdf = Book(input, inputs);
        Files(directory).Write(inputs, folder => folder.Save(FileName, pdf), cancel);
    }

    private static OwnFolder Files(string directory) => new(directory, FileName);
}
