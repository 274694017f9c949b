using System.Collections.Immutable;
using System.Text;
using BenchSim.Report.Labels;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Report.Papers;

/// <summary>
/// The papers of a season as a folder: work list, tray labels, order, calendar and workbook. It keeps the rules of a
/// <see cref="ReportFolder"/>: whole or absent, and nothing that stood there is lost but an earlier folder of papers. The same plan gives
/// the same bytes.
/// </summary>
public static class PapersFolder
{
    private const string WorkListHtml = "work-list.html";
    private const string WorkListCsv = "work-list.csv";
    private const string NightsCsv = "cold-nights.csv";
    private const string LabelsPdf = "labels.pdf";
    private const string LabelsCsv = "labels.csv";
    private const string OrderHtml = "order.html";
    private const string OrderCsv = "order.csv";
    private const string CalendarIcs = "calendar.ics";
    private const string WorkbookXlsx = "workbook.xlsx";

    private static readonly ImmutableArray<string> s_names =
    [
        WorkListHtml,
        WorkListCsv,
        NightsCsv,
        LabelsPdf,
        LabelsCsv,
        OrderHtml,
        OrderCsv,
        CalendarIcs,
        WorkbookXlsx,
    ];

    /// <summary>Refuses a place where something stands that is no folder of papers; to be asked before the work.</summary>
    /// <param name="directory">Where the folder is to go.</param>
    /// <exception cref="ArgumentException"><paramref name="directory"/> is empty.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, or the place cannot be written.</exception>
    public static void Check(string directory)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(directory);
        Files(directory).Check();
    }

    /// <summary>Writes the folder. It appears whole at the end or not at all; an earlier folder of papers is replaced.</summary>
    /// <param name="directory">Where to write; parents are made as needed.</param>
    /// <param name="plan">Plan.</param>
    /// <param name="settings">Which papers, for which dates.</param>
    /// <param name="cancel">Stops the writing; nothing is left behind.</param>
    /// <exception cref="ArgumentException">The directory is empty, no paper is asked for, or the dates or the
    /// used labels are out of range.</exception>
    /// <exception cref="ReportRefusedException">Something else stands there, the dates hold nothing to do, or the disk refuses.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static PaperSummary Write(string directory, SeasonPlan plan, PaperSettings settings, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
        Check(directory);
        var sheet = settings.Sheet ?? LabelSheets.Usual(plan.Scenario.Units == UnitSystem.Imperial);
        if ((settings.Kinds & PaperKinds.All) == PaperKinds.None)
        {
            throw new ArgumentException("No paper is asked for.", nameof(settings));
        }

        if (settings.LabelsUsed < 0 || settings.LabelsUsed >= sheet.Count)
        {
            throw new ArgumentException(
                $"A sheet has {sheet.Count} labels; {settings.LabelsUsed} cannot be used already.",
                nameof(settings)
            );
        }

        var content = PaperContent.Of(plan, settings.From, settings.To);
        if (settings.From > settings.To)
        {
            throw new ArgumentException("The last date is before the first.", nameof(settings));
        }

        if (content.Tasks.IsEmpty && content.Nights.IsEmpty)
        {
            throw new ReportRefusedException(
                $"No papers were written: the plan has nothing to do {When(content, settings)}. Choose other dates."
            );
        }

        cancel.ThrowIfCancellationRequested();

        var files = new List<string>();
        Files(directory).Write([], folder => WriteFiles(folder, content, settings, sheet, files, cancel), cancel);
        return Summary(content, settings, sheet, files);
    }

    // The other end of a range that is given by one date may lie on its wrong side.
    private static string When(PaperContent content, PaperSettings settings) =>
        (settings.From, settings.To) switch
        {
            ({ } from, null) => $"from {Words.Dates.Iso(from)} on",
            (null, { } to) => $"up to {Words.Dates.Iso(to)}",
            _ => $"from {Words.Dates.Iso(content.From)} to {Words.Dates.Iso(content.To)}",
        };

    private static void WriteFiles(
        PartialFolder folder,
        PaperContent content,
        PaperSettings settings,
        LabelSheet sheet,
        List<string> files,
        CancellationToken cancel
    )
    {
        void Save(PaperKinds kind, string name, Func<byte[]> write)
        {
            if (!settings.Kinds.HasFlag(kind))
            {
                return;
            }

            folder.Save(name, write());
            files.Add(name);
        }

        Save(PaperKinds.WorkList, WorkListHtml, () => Encoding.UTF8.GetBytes(WorkListPage.Write(content)));
        Save(PaperKinds.WorkList, WorkListCsv, () => WorkTable.Work(content));
        Save(PaperKinds.WorkList, NightsCsv, () => WorkTable.Nights(content));
        if (!content.Labels.IsEmpty)
        {
            Save(PaperKinds.Labels, LabelsPdf, () =>
                LabelPages.Draw($"Tray labels: {content.SiteName}", content.Labels, sheet, settings.LabelsUsed, cancel)
            );
        }

        Save(PaperKinds.Labels, LabelsCsv, () => LabelTable.Write(content));
        Save(PaperKinds.Order, OrderHtml, () => Encoding.UTF8.GetBytes(OrderPage.Write(content)));
        Save(PaperKinds.Order, OrderCsv, () => OrderTable.Write(content.Needs));
        Save(PaperKinds.Calendar, CalendarIcs, () => CalendarFile.Write(content));
        Save(PaperKinds.Workbook, WorkbookXlsx, () => Workbook.Write(content));
    }

    private static PaperSummary Summary(PaperContent content, PaperSettings settings, LabelSheet sheet, List<string> files) =>
        new()
        {
            From = content.From,
            To = content.To,
            Files = [.. files],
            Weeks = content.Mondays.Length,
            Tasks = content.Tasks.Length,
            Hours = content.Tasks.Sum(task => task.Hours ?? 0),
            Labels = content.Labels.Length,
            LabelSheets = settings.Kinds.HasFlag(PaperKinds.Labels)
                ? LabelPages.Sheets(content.Labels.Length, sheet, settings.LabelsUsed)
                : 0,
            Sheet = sheet,
            Seeds = content.Needs.Seeds.Sum(seed => seed.Seeds),
            Trays = content.Needs.Trays.Where(tray => !tray.Type.IsFlat).Sum(tray => tray.Filled),
            Flats = content.Needs.Trays.Where(tray => tray.Type.IsFlat).Sum(tray => tray.Filled),
            MixLitres = content.Needs.MixLitres,
            MixCubicFeet = content.Needs.MixCubicFeet,
            Cost = content.Needs.MixCost + content.Needs.SeedCost,
        };

    // The marker names every paper, also those that were not asked for, so that a later writing knows them for its own.
    private static OwnFolder Files(string directory) => new(directory, [.. s_names]);
}
