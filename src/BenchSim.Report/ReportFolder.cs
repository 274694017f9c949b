using System.Text;
using BenchSim.Report.Case;
using BenchSim.Report.Charts;
using BenchSim.Report.Html;
using BenchSim.Report.Json;
using BenchSim.Report.Pictures;
using BenchSim.Report.Tables;
using BenchSim.Report.Writing;
using BenchSim.Study.Results;

namespace BenchSim.Report;

/// <summary>
/// A report as a folder: <c>report.html</c>, <c>charts/*.png</c>, <c>tables/*.csv</c>, <c>result.json</c> and <c>inputs/</c>; where asked
/// for, <c>case.pdf</c>. The same result and inputs give the same bytes for every text file.
/// </summary>
public static class ReportFolder
{
    /// <summary>Refuses a place where <see cref="Write(string, StudyResult, IReadOnlyList{ReportInput}, string, CancellationToken)"/> would
    /// refuse to write, because of what stands there or because the place cannot be written; to be asked before a long play. Leaves nothing
    /// behind.</summary>
    /// <param name="directory">Where a report is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something that is no report stands there, or the place cannot be written.</exception>
    public static void Check(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        new OwnFolder(directory).Check();
    }

    /// <summary>
    /// Writes a report. The folder appears whole at the end or not at all; an earlier report in its place is
    /// replaced, anything else is left alone.
    /// </summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="result">The result to report.</param>
    /// <param name="inputs">The files that were run.</param>
    /// <param name="overallNote">A remark shown at the top of the page, such as "part 1 of 3"; null for none.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An input's name is not a plain relative path, or two inputs share one.</exception>
    /// <exception cref="ReportRefusedException">Something that is no report stands there, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(
        string directory,
        StudyResult result,
        IReadOnlyList<ReportInput> inputs,
        string? overallNote,
        CancellationToken cancel
    ) => Write(directory, result, inputs, overallNote, null, cancel);

    /// <summary>The same, with a case report in <c>case.pdf</c>.</summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="result">The result to report.</param>
    /// <param name="inputs">The files that were run.</param>
    /// <param name="overallNote">A remark shown at the top of the page, such as "part 1 of 3"; null for none.</param>
    /// <param name="caseInput">The case report that goes with it, in <c>case.pdf</c>; null for none.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An input's name is not a plain relative path, two inputs share one, or the parts of the case do
    /// not belong together.</exception>
    /// <exception cref="ReportRefusedException">Something that is no report stands there, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(
        string directory,
        StudyResult result,
        IReadOnlyList<ReportInput> inputs,
        string? overallNote,
        CaseInput? caseInput,
        CancellationToken cancel
    )
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(inputs);
        InputNames.Check(inputs);

        new OwnFolder(directory).Write(inputs, folder => WriteFiles(folder, result, inputs, overallNote, caseInput), cancel);
    }

    private static void WriteFiles(
        PartialFolder folder,
        StudyResult result,
        IReadOnlyList<ReportInput> inputs,
        string? overallNote,
        CaseInput? caseInput
    )
    {
        folder.Save("result.json", ResultDocument.Write(result, inputs));
        folder.Save(OccupancyChart.Table, TableFiles.Daily(result));
        folder.Save(BatchesChart.Table, BatchTable.Write(result));
        folder.Save("tables/spaces.csv", TableFiles.Spaces(result));
        folder.Save("tables/growers.csv", TableFiles.Growers(result));
        folder.Save("tables/fuel.csv", FuelTable.Write(result));
        folder.Save("tables/waits.csv", WaitTable.Write(result));
        if (result.Bottlenecks is { } bottlenecks)
        {
            folder.Save("tables/bottlenecks.csv", BottleneckTable.Write(bottlenecks));
        }

        folder.Save("report.html", Encoding.UTF8.GetBytes(ReportPage.Write(result, inputs, overallNote)));
        foreach (var chart in ChartFiles.Of(result))
        {
            folder.Save(chart.Name, chart.Draw());
        }

        if (caseInput is not null)
        {
            folder.Save(CaseFolder.FileName, CaseBook.Write(caseInput, inputs));
        }
    }
}
