using BenchSim.Report.Charts;
using BenchSim.Report.Pictures;
using BenchSim.Report.Tables;
using BenchSim.Report.Writing;
using BenchSim.Study.Dense;

namespace BenchSim.Report;

/// <summary>
/// Direct against dense sowing as a folder: <c>charts/dense.png</c>, <c>charts/density.png</c> and <c>tables/dense-*.csv</c>. It keeps the
/// rules of a <see cref="ReportFolder"/>: whole or absent, and nothing that stood there is lost but an earlier folder of the same kind.
/// </summary>
public static class DenseFolder
{
    /// <summary>Refuses a place where something stands that is not such a folder; to be asked before the work.</summary>
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
    /// <param name="result">The result.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(string directory, DenseResult result, CancellationToken cancel)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        ArgumentNullException.ThrowIfNull(result);
        Files(directory)
            .Write(
                [],
                folder =>
                {
                    folder.Save("charts/dense.png", PngPainter.Draw((DenseChart.Of(result), PictureLayout.Pairs)));
                    folder.Save("charts/density.png", PngPainter.Draw((DensityChart.Of(result), PictureLayout.Plot with { Height = 520 })));
                    folder.Save("tables/dense-changes.csv", DenseTables.Changes(result));
                    folder.Save("tables/dense-break-even.csv", DenseTables.BreakEven(result));
                    folder.Save("tables/dense-curve.csv", DenseTables.Curve(result));
                },
                cancel
            );
    }

    private static OwnFolder Files(string directory) =>
        new(
            directory,
            "charts/dense.png",
            "charts/density.png",
            "tables/dense-changes.csv",
            "tables/dense-break-even.csv",
            "tables/dense-curve.csv"
        );
}
