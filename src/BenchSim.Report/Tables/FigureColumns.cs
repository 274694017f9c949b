using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>The columns of figures: which they are, and what stands in them. Every figure of a list stands in the table of its owners, but for those by day.</summary>
internal static class FigureColumns
{
    private static readonly string[] s_ofEstimate = ["mean", "half_width", "p10", "p50", "p90", "p95", "most"];
    private static readonly string[] s_ofDates = ["p10", "p50", "p90", "seasons"];
    private static readonly string[] s_ofChance = ["share", "low", "high"];
    private static readonly string[] s_ofDays = ["mean", "p10", "p50", "p90", "p95", "most"];

    /// <summary>Names of the columns of all figures of an owner.</summary>
    /// <param name="figures">The figures.</param>
    /// <param name="spaces">Number of spaces, which rows by space have a column each of.</param>
    public static IEnumerable<string> Names<TOwner>(FigureList<TOwner> figures, int spaces) =>
        figures.SelectMany(figure =>
            figure switch
            {
                ChanceFigure<TOwner> => Endings(figure.Id, s_ofChance),
                DateFigure<TOwner> => Endings(figure.Id, s_ofDates),
                AmountFigure<TOwner> => Estimates(figure.Id),
                RowFigure<TOwner> { By: "space" } row => Enumerable.Range(1, spaces).Select(space => $"{row.Stem}_mean_space_{space}"),
                RowFigure<TOwner> { By: "reason" } row => BatchTable.Reasons.SelectMany(reason => Estimates($"{row.Stem}_{reason.Column}")),
                _ => [],
            }
        );

    /// <summary>Names of the columns of a quantity.</summary>
    public static IEnumerable<string> Estimates(string id) => Endings(id, s_ofEstimate);

    /// <summary>Names of the columns of a figure by day.</summary>
    public static IEnumerable<string> Days(string id) => Endings(id, s_ofDays);

    /// <summary>What stands in the columns of all figures of an owner.</summary>
    public static void Write<TOwner>(CsvTable table, FigureList<TOwner> figures, Told<TOwner> told)
    {
        foreach (var figure in figures)
        {
            switch (figure)
            {
                case ChanceFigure<TOwner> chance:
                    table.Number(told[chance].Share).Number(told[chance].Low).Number(told[chance].High);
                    break;
                case DateFigure<TOwner> date:
                    var dates = told[date];
                    table.Date(dates.P10).Date(dates.P50).Date(dates.P90).Number(dates.Happened);
                    break;
                case AmountFigure<TOwner> amount:
                    Write(table, told[amount]);
                    break;
                case RowFigure<TOwner> { By: "space" } row:
                    foreach (var estimate in told[row])
                    {
                        table.Number(estimate.Mean);
                    }

                    break;
                case RowFigure<TOwner> { By: "reason" } row:
                    foreach (var estimate in told[row])
                    {
                        Write(table, estimate);
                    }

                    break;
                default:
                    break;
            }
        }
    }

    /// <summary>What stands in the columns of a quantity.</summary>
    public static void Write(CsvTable table, Estimate estimate) =>
        table
            .Number(estimate.Mean)
            .Number(estimate.HalfWidth)
            .Number(estimate.P10)
            .Number(estimate.P50)
            .Number(estimate.P90)
            .Number(estimate.P95)
            .Number(estimate.Most);

    /// <summary>What stands in the columns of a figure by day.</summary>
    public static void Write(CsvTable table, DaySpread day) =>
        table.Number(day.Mean).Number(day.P10).Number(day.P50).Number(day.P90).Number(day.P95).Number(day.Most);

    private static IEnumerable<string> Endings(string id, string[] endings) => endings.Select(ending => $"{id}_{ending}");
}
