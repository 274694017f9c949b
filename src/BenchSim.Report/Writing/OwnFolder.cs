using System.Text;

namespace BenchSim.Report.Writing;

/// <summary>
/// A folder of one kind that a command writes, under the rules of a <see cref="ReportFolder"/>: whole or absent, and nothing that stood
/// there is lost but an earlier folder of the same kind, as it was written. Its marker names its own files, which tell its kind.
/// </summary>
/// <param name="directory">Where it goes.</param>
/// <param name="names">Its own files, besides those that every report of a run may have; empty for the report of a run.</param>
internal sealed class OwnFolder(string directory, params string[] names)
{
    private const string Inputs = "inputs/";

    private readonly TargetFolder _target = new(directory);

    /// <summary>Refuses a place where something else stands, or that cannot be written; to be asked before the work.</summary>
    public void Check()
    {
        _target.CheckCanBeWritten();
        RefuseOtherKind();
    }

    /// <summary>Writes the folder. It appears whole at the end or not at all.</summary>
    /// <param name="inputs">The files that were played, kept in <c>inputs/</c>.</param>
    /// <param name="save">Saves the files of its own.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    public void Write(IReadOnlyList<ReportInput> inputs, Action<PartialFolder> save, CancellationToken cancel)
    {
        _target.Check();
        RefuseOtherKind();
        cancel.ThrowIfCancellationRequested();
        _target.Fill(
            folder =>
            {
                var partial = new PartialFolder(folder, cancel);
                partial.Save(
                    TargetFolder.MarkerName,
                    Encoding.UTF8.GetBytes(TargetFolder.MarkerStart + string.Concat(names.Select(name => name + "\n")))
                );
                foreach (var input in inputs)
                {
                    partial.Save(Inputs + input.Name, input.Bytes.ToArray());
                }

                save(partial);
                partial.Finish();
            },
            cancel
        );
    }

    private void RefuseOtherKind()
    {
        if (Marker() is not { } marker)
        {
            return;
        }

        var kind = marker.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1);
        if (!kind.Order(StringComparer.Ordinal).SequenceEqual(names.Order(StringComparer.Ordinal), StringComparer.Ordinal))
        {
            throw new ReportRefusedException(FolderRefusals.OtherKind(directory));
        }
    }

    // None stands there, or another writer has just taken it away.
    private string? Marker()
    {
        try
        {
            return TargetFolder.MarkerText(Path.Combine(directory, TargetFolder.MarkerName));
        }
        catch (Exception failure) when (failure is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }
}
