using BenchSim.Report.Charts;
using BenchSim.Report.Pictures;
using BenchSim.Report.Tables;
using BenchSim.Report.Writing;
using BenchSim.Study.Trust;

namespace BenchSim.Report;

/// <summary>
/// What hangs on values as a folder: <c>trust.json</c>, <c>charts/values.png</c> and tables. It keeps the rules of a
/// <see cref="ReportFolder"/>: whole or absent, and nothing that stood there is lost but an earlier folder of the same kind.
/// </summary>
public static class TrustFolder
{
    /// <summary>Name of the answer as JSON.</summary>
    public const string Answer = "trust.json";

    private static readonly ResultFolder<(TrustResult Result, byte[] Json)> s_folder = new(
        [(Answer, trust => trust.Json), ("charts/values.png", trust => PngPainter.Draw((TrustChart.Of(trust.Result), PictureLayout.Bars)))],
        [(TrustChart.Table, trust => TrustTables.Values(trust.Result)), ("tables/figures.csv", trust => TrustTables.Figures(trust.Result))]
    );

    /// <summary>Refuses a place where something stands that is not such a folder; to be asked before the work.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or it cannot be written.</exception>
    public static void Check(string directory) => s_folder.Check(directory);

    /// <summary>Writes the folder. It appears whole at the end or not at all.</summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="result">The study.</param>
    /// <param name="json">The answer as JSON.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(string directory, TrustResult result, byte[] json, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(json);
        s_folder.Write(directory, (result, json), cancel);
    }
}
