using System.Collections.Immutable;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>
/// The columns of figures: which they are, and what stands in them. Every figure of a list stands in the table of its owners, but for those
/// by day.
/// </summary>
internal static class FigureColumns
{
    private static readonly ColumnEnding s_mean = new("mean", "mean of the seasons");
    private static readonly ColumnEnding s_halfWidth = new("half_width", "half the width of the 95 % interval of the mean");

    private static readonly ImmutableArray<ColumnEnding> s_spread =
    [
        new("p10", "one season in ten has no more"),
        new("p50", "half of the seasons have no more"),
        new("p90", "nine seasons in ten have no more"),
        new("p95", "nineteen seasons in twenty have no more"),
        new("most", "most of any season"),
    ];

    private static readonly ImmutableArray<ColumnEnding> s_ofDates =
    [
        new("p10", "one season in ten is no later"),
        new("p50", "half of the seasons are no later"),
        new("p90", "nine seasons in ten are no later"),
        new("seasons", "seasons in which it happens", "seasons"),
    ];

    private static readonly ImmutableArray<ColumnEnding> s_ofChance =
    [
        new("share", "share of the seasons"),
        new("low", "lower end of its 95 % interval"),
        new("high", "upper end of its 95 % interval"),
    ];

    /// <summary>Seasons played, the last column of every table of a run.</summary>
    public static Column Seasons { get; } = new("seasons", "seasons", "seasons played");

    /// <summary>The columns of all figures of an owner.</summary>
    /// <param name="figures">The figures.</param>
    /// <param name="spaces">The spaces, which rows by space have a column each of.</param>
    public static IEnumerable<Column> Of<TOwner>(FigureList<TOwner> figures, IEnumerable<SpaceResult> spaces) =>
        figures.SelectMany(figure =>
            figure switch
            {
                ChanceFigure<TOwner> => [new Column(figure.Id, "0 to 1", figure.Meaning) { Endings = s_ofChance }],
                DateFigure<TOwner> => [new Column(figure.Id, "date", figure.Meaning) { Endings = s_ofDates }],
                AmountFigure<TOwner> => [Estimate(figure.Id, figure.Unit, figure.Meaning)],
                RowFigure<TOwner> { By: "space" } row => [BySpace(row, spaces)],
                RowFigure<TOwner> { By: "reason" } row => BatchTable.Reasons.Select(reason =>
                    Estimate($"{row.Stem}_{reason.Column}", reason.Unit, $"{row.Meaning}: {reason.Meaning}")
                ),
                _ => Enumerable.Empty<Column>(),
            }
        );

    /// <summary>The columns of a quantity.</summary>
    /// <param name="id">What their names begin with.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="meaning">What it is.</param>
    public static Column Estimate(string id, string unit, string meaning) =>
        new(id, unit, meaning) { Endings = [s_mean, s_halfWidth, .. s_spread] };

    /// <summary>The columns of a figure by day or week.</summary>
    /// <inheritdoc cref="Estimate"/>
    public static Column Spread(string id, string unit, string meaning) => new(id, unit, meaning) { Endings = [s_mean, .. s_spread] };

    private static Column BySpace<TOwner>(RowFigure<TOwner> row, IEnumerable<SpaceResult> spaces) =>
        new($"{row.Stem}_mean_space", row.Unit, row.Meaning)
        {
            Endings = [.. spaces.Select((space, at) => new ColumnEnding((at + 1).ToString(null, null), space.Space.Name))],
            IsBySpace = true,
        };

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
}
