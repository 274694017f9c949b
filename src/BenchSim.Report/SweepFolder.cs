using System.Text;
using BenchSim.Report.Charts;
using BenchSim.Report.Pictures;
using BenchSim.Report.Sweeps;
using BenchSim.Report.Tables;
using BenchSim.Report.Writing;
using BenchSim.Study.Sweeps;

namespace BenchSim.Report;

/// <summary>
/// The answer of a sweep as a folder: <c>sweep.html</c>, <c>sweep.json</c>, <c>charts/plans.png</c> and tables. It keeps the rules of a
/// <see cref="ReportFolder"/>: whole or absent, and nothing that stood there is lost but an earlier folder of the same kind.
/// </summary>
public static class SweepFolder
{
    /// <summary>Name of the answer as JSON.</summary>
    public const string Answer = "sweep.json";

    /// <summary>Name of the page.</summary>
    public const string Page = "sweep.html";

    private static readonly ResultFolder<(SweepResult Result, string[] Sentences, byte[] Json)> s_folder = new(
        [
            (Page, sweep => Encoding.UTF8.GetBytes(SweepPage.Write(sweep.Result, sweep.Sentences))),
            (Answer, sweep => sweep.Json),
            ("charts/plans.png", sweep => PngPainter.Draw((SweepChart.Of(sweep.Result), PictureLayout.Bars))),
        ],
        [
            (SweepTables.PlansFile, sweep => SweepTables.Plans(sweep.Result)),
            (SweepTables.SpacesFile, sweep => SweepTables.Spaces(sweep.Result)),
        ]
    );

    /// <summary>The table of all plans, within the folder.</summary>
    public static string Table => SweepTables.PlansFile;

    /// <summary>Refuses a place where something stands that is not such a folder; to be asked before the work.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or it cannot be written.</exception>
    public static void Check(string directory) => s_folder.Check(directory);

    /// <summary>Writes the folder. It appears whole at the end or not at all.</summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="result">The sweep.</param>
    /// <param name="sentences">What it says as a whole, most important first.</param>
    /// <param name="json">The answer as JSON.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(string directory, SweepResult result, IEnumerable<string> sentences, byte[] json, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(sentences);
        ArgumentNullException.ThrowIfNull(json);
        s_folder.Write(directory, (result, [.. sentences], json), cancel);
    }
}
