using System.Collections.Immutable;
using System.Text;
using BenchSim.Report.Labels;
using BenchSim.Report.Tables;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Report.Papers;

/// <summary>One paper, made when it is asked for.</summary>
/// <param name="Name">Name of its file.</param>
/// <param name="Kind">Which of the papers it belongs to.</param>
/// <param name="Write">Makes it.</param>
public sealed record Paper(string Name, PaperKinds Kind, Func<CancellationToken, byte[]> Write)
{
    /// <summary>Makes it as a table; null for what is none.</summary>
    internal Func<CsvTable>? Table { get; init; }
}

/// <summary>
/// The papers of a season, worked out once: work list, tray labels, order, calendar and workbook. The same plan gives the same bytes.
/// </summary>
public sealed class PaperSet
{
    private const string WorkListHtml = "work-list.html";
    private const string WorkListCsv = "work-list.csv";
    private const string NightsCsv = "cold-nights.csv";
    private const string LabelsPdf = "labels.pdf";
    private const string LabelsCsv = "labels.csv";
    private const string OrderHtml = "order.html";
    private const string OrderCsv = "order.csv";
    private const string ToBuyCsv = "to-buy.csv";
    private const string CalendarIcs = "calendar.ics";
    private const string WorkbookXlsx = "workbook.xlsx";

    private readonly PaperContent _content;
    private readonly PaperSettings _settings;
    private readonly LabelSheet _sheet;

    private PaperSet(PaperContent content, PaperSettings settings, LabelSheet sheet)
    {
        (_content, _settings, _sheet) = (content, settings, sheet);
        Papers = [.. Each().Where(paper => settings.Kinds.HasFlag(paper.Kind))];
        Summary = Summed();
    }

    /// <summary>Names of all the papers there can be, but for the dictionary of the columns of the tables among them.</summary>
    public static ImmutableArray<string> Names { get; } =
    [WorkListHtml, WorkListCsv, NightsCsv, LabelsPdf, LabelsCsv, OrderHtml, OrderCsv, ToBuyCsv, CalendarIcs, WorkbookXlsx];

    /// <summary>The same, and the dictionary of the columns.</summary>
    public static ImmutableArray<string> AllNames => [.. Names, ColumnDictionary.FileName];

    /// <summary>The style that the pages among the papers carry, as a Content-Security-Policy names it.</summary>
    public static string StyleSource => PaperPage.StyleSource;

    /// <summary>The papers asked for, those that the plan has, but for the dictionary.</summary>
    internal ImmutableArray<Paper> Papers { get; }

    /// <summary>The papers asked for, those that the plan has.</summary>
    public ImmutableArray<Paper> All =>
        Papers.Any(paper => paper.Table is not null)
            ? [.. Papers, new Paper(ColumnDictionary.FileName, PaperKinds.None, _ => Columns())]
            : Papers;

    /// <summary>What they hold.</summary>
    public PaperSummary Summary { get; }

    /// <summary>Works the papers of a plan out.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="settings">Which papers, for which dates.</param>
    /// <exception cref="ArgumentException">No paper is asked for, the plan has no such grower, or the dates or the used labels are out of
    /// range.</exception>
    /// <exception cref="ReportRefusedException">The dates hold nothing to do.</exception>
    public static PaperSet Of(SeasonPlan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
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

        var content = PaperContent.Of(plan, settings.From, settings.To, settings.Grower);
        if (settings.From > settings.To)
        {
            throw new ArgumentException("The last date is before the first.", nameof(settings));
        }

        if (content.Tasks.IsEmpty && content.Nights.IsEmpty)
        {
            throw new ReportRefusedException(
                $"No papers were written: the plan has nothing to do {For(settings)}{When(content, settings)}. Choose other dates."
            );
        }

        return new PaperSet(content, settings, sheet);
    }

    private static string For(PaperSettings settings) => settings.Grower is { } grower ? $"for {PlainText.Quote(grower)} " : "";

    // The other end of a range that is given by one date may lie on its wrong side.
    private static string When(PaperContent content, PaperSettings settings) =>
        (settings.From, settings.To) switch
        {
            ({ } from, null) => $"from {Words.Dates.Iso(from)} on",
            (null, { } to) => $"up to {Words.Dates.Iso(to)}",
            _ => $"from {Words.Dates.Iso(content.From)} to {Words.Dates.Iso(content.To)}",
        };

    private IEnumerable<Paper> Each()
    {
        yield return Page(PaperKinds.WorkList, WorkListHtml, () => WorkListPage.Write(_content));
        yield return Table(PaperKinds.WorkList, WorkListCsv, () => WorkTable.Work(_content));
        yield return Table(PaperKinds.WorkList, NightsCsv, () => WorkTable.Nights(_content));
        if (!_content.Labels.IsEmpty)
        {
            yield return new Paper(LabelsPdf, PaperKinds.Labels, cancel =>
                LabelPages.Draw($"Tray labels: {_content.Title}", _content.Labels, _sheet, _settings.LabelsUsed, cancel)
            );
        }

        yield return Table(PaperKinds.Labels, LabelsCsv, () => LabelTable.Write(_content));
        yield return Page(PaperKinds.Order, OrderHtml, () => OrderPage.Write(_content));
        yield return Table(PaperKinds.Order, OrderCsv, () => OrderTable.Write(_content.Needs));
        if (!_content.Purchases.IsEmpty)
        {
            yield return Table(PaperKinds.Order, ToBuyCsv, () => PurchaseTable.Write(_content.Purchases));
        }

        yield return new Paper(CalendarIcs, PaperKinds.Calendar, _ => CalendarFile.Write(_content));
        yield return new Paper(WorkbookXlsx, PaperKinds.Workbook, _ => Workbook.Write(_content));
    }

    private static Paper Page(PaperKinds kind, string name, Func<string> write) => new(name, kind, _ => Encoding.UTF8.GetBytes(write()));

    private static Paper Table(PaperKinds kind, string name, Func<CsvTable> make) =>
        new(name, kind, _ => make().ToBytes()) { Table = make };

    private byte[] Columns()
    {
        var columns = new ColumnDictionary();
        foreach (var paper in Papers)
        {
            if (paper.Table is { } make)
            {
                columns.Add(paper.Name, make());
            }
        }

        return columns.ToBytes();
    }

    private PaperSummary Summed() =>
        new()
        {
            Grower = _content.Grower,
            From = _content.From,
            To = _content.To,
            Files = [.. All.Select(paper => paper.Name)],
            Weeks = _content.Mondays.Length,
            Tasks = _content.Tasks.Length,
            Hours = _content.Tasks.Sum(task => task.Hours ?? 0),
            WateringHours = _content.WateringHours,
            Labels = _content.Labels.Length,
            LabelSheets = _settings.Kinds.HasFlag(PaperKinds.Labels)
                ? LabelPages.Sheets(_content.Labels.Length, _sheet, _settings.LabelsUsed)
                : 0,
            Sheet = _sheet,
            Seeds = _content.Needs.Seeds.Sum(seed => seed.Seeds),
            Trays = _content.Needs.Trays.Where(tray => !tray.Type.IsFlat).Sum(tray => tray.Filled),
            Flats = _content.Needs.Trays.Where(tray => tray.Type.IsFlat).Sum(tray => tray.Filled),
            MixLitres = _content.Needs.MixLitres,
            MixCubicFeet = _content.Needs.MixCubicFeet,
            MixUnits = _content.Needs.MixUnits,
            MixSoldIn = _content.Needs.Mix.SoldIn,
            Cost = _content.Needs.MixCost + _content.Needs.SeedCost,
        };
}
