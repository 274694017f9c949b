using System.Text;

namespace BenchSim.Report;

/// <summary>
/// A folder of a few charts and tables, under the rules of a <see cref="ReportFolder"/>: whole or absent, and nothing that stood there is lost but an
/// earlier folder of the same kind, known by the names in its marker.
/// </summary>
internal sealed class FolderFiles(string directory, params string[] names)
{
    // The marker names the files of the folder, so that a later writing knows them for its own.
    private readonly string _marker = ReportFolder.MarkerText + string.Concat(names.Select(name => name + "\n"));

    /// <summary>Refuses a place where something else stands, or that cannot be written; to be asked before the work.</summary>
    public void Check()
    {
        new TargetFolder(directory).CheckCanBeWritten();
        string marker = Path.Combine(directory, ReportFolder.MarkerName);
        if (File.Exists(marker) && !string.Equals(File.ReadAllText(marker).ReplaceLineEndings("\n"), _marker, StringComparison.Ordinal))
            throw new ReportRefusedException($"Nothing was written: '{directory}' holds another report. Name another folder.");
    }

    /// <summary>Writes the folder. It appears whole at the end or not at all.</summary>
    /// <param name="bytes">What each file holds, in the order of the names.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    public void Write(IReadOnlyList<Func<byte[]>> bytes, CancellationToken cancel)
    {
        Check();
        cancel.ThrowIfCancellationRequested();
        new TargetFolder(directory).Fill(
            folder =>
            {
                Save(folder, ReportFolder.MarkerName, Encoding.UTF8.GetBytes(_marker));
                for (int at = 0; at < names.Length; at++)
                {
                    cancel.ThrowIfCancellationRequested();
                    Save(folder, names[at], bytes[at]());
                }
            },
            cancel);
    }

    private static void Save(string folder, string name, byte[] bytes)
    {
        string path = Path.Combine(folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
    }
}
