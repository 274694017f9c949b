using System.Text;
using BenchSim.Report.Charts;
using BenchSim.Report.Tables;
using BenchSim.Study.Sizing;

namespace BenchSim.Report;

/// <summary>
/// A curve as a folder: <c>charts/size.png</c> and <c>tables/size.csv</c>. It keeps the rules of a <see cref="ReportFolder"/>: whole or absent, and
/// nothing that stood there is lost but an earlier folder of the same kind.
/// </summary>
public static class SizeFolder
{
    private const string Chart = "charts/size.png";
    private const string Curve = "tables/size.csv";

    // The marker names the files of the folder, so that a later writing knows them for its own.
    private static readonly string s_marker = ReportFolder.MarkerText + $"{Chart}\n{Curve}\n";

    /// <summary>Refuses a place where something stands that is not such a folder; to be asked before the work.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there.</exception>
    public static void Check(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        new TargetFolder(directory).CheckCanBeWritten();
        string marker = Path.Combine(directory, ReportFolder.MarkerName);
        if (File.Exists(marker) && !File.ReadAllText(marker).ReplaceLineEndings("\n").Split('\n').Contains(Chart, StringComparer.Ordinal))
            throw new ReportRefusedException($"Nothing was written: '{directory}' holds another kind of report. Name another folder.");
    }

    /// <summary>Writes the folder. It appears whole at the end or not at all.</summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="result">The curve.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(string directory, SizeResult result, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(result);
        Check(directory);
        cancel.ThrowIfCancellationRequested();
        new TargetFolder(directory).Fill(
            folder =>
            {
                Save(folder, ReportFolder.MarkerName, Encoding.UTF8.GetBytes(s_marker), cancel);
                Save(folder, Curve, SizeTable.Write(result), cancel);
                Save(folder, Chart, SizeChart.Draw(result), cancel);
            },
            cancel);
    }

    private static void Save(string folder, string name, byte[] bytes, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        string path = Path.Combine(folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
    }
}
