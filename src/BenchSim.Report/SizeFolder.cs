using BenchSim.Report.Charts;
using BenchSim.Report.Pictures;
using BenchSim.Report.Tables;
using BenchSim.Report.Writing;
using BenchSim.Study.Sizing;

namespace BenchSim.Report;

/// <summary>
/// A curve as a folder: <c>charts/size.png</c> and <c>tables/size.csv</c>. It keeps the rules of a <see cref="ReportFolder"/>: whole or
/// absent, and nothing that stood there is lost but an earlier folder of the same kind.
/// </summary>
public static class SizeFolder
{
    private static readonly ResultFolder<SizeResult> s_folder = new(
        [("charts/size.png", result => PngPainter.Draw((SizeChart.Of(result), PictureLayout.Plot with { Height = 440 })))],
        [(SizeChart.Table, SizeTable.Write)]
    );

    /// <summary>Refuses a place where something stands that is not such a folder; to be asked before the work.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there.</exception>
    public static void Check(string directory) => s_folder.Check(directory);

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
        s_folder.Write(directory, result, cancel);
    }
}
