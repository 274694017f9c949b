using BenchSim.Report.Charts;
using BenchSim.Report.Pictures;
using BenchSim.Report.Tables;
using BenchSim.Report.Writing;
using BenchSim.Study.Invest;

namespace BenchSim.Report;

/// <summary>
/// A money case as a folder: <c>charts/tornado.png</c> and <c>tables/invest-*.csv</c>. It keeps the rules of a <see cref="ReportFolder"/>:
/// whole or absent, and nothing that stood there is lost but an earlier folder of the same kind.
/// </summary>
public static class InvestFolder
{
    private static readonly ResultFolder<InvestResult> s_folder = new(
        [("charts/tornado.png", result => PngPainter.Draw((TornadoChart.Of(result), PictureLayout.Bars)))],
        [
            ("tables/invest-figures.csv", InvestTables.Figures),
            ("tables/invest-parts.csv", InvestTables.Parts),
            (TornadoChart.Table, InvestTables.Tornado),
            ("tables/invest-break-even.csv", InvestTables.BreakEvens),
        ]
    );

    /// <summary>Refuses a place where something stands that is not such a folder; to be asked before the work.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or it cannot be written.</exception>
    public static void Check(string directory) => s_folder.Check(directory);

    /// <summary>Writes the folder. It appears whole at the end or not at all.</summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="result">The case.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(string directory, InvestResult result, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(result);
        s_folder.Write(directory, result, cancel);
    }
}
