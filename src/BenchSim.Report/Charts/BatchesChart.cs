using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Charts;

/// <summary>The batches by their median dates: mats, benches, table, grouped by grower, with the wanted set-out date.</summary>
internal static class BatchesChart
{
    /// <summary>The table with its figures.</summary>
    public const string Table = "tables/batches.csv";

    /// <summary>What the looks mean.</summary>
    public static readonly ImmutableArray<KeyEntry> Key =
    [
        new(Looks.Mat, "on the mats"),
        new(Looks.Bench, "on the benches"),
        new(Looks.Table, "on the hardening table"),
        new(Looks.PottedUp, "potted up"),
        new(Looks.InField, "wanted in the field"),
        new(Looks.Waited, "days waited for a place, mean") { OnPage = "so many days a tray waited for a place, mean" },
        new(Looks.HeldByWeather, "days held by the weather, mean") { OnPage = "so many days a tray was held by the weather alone, mean" },
    ];

    /// <summary>What the looks mean on the chart of a plan.</summary>
    public static ImmutableArray<KeyEntry> KeyOf(SeasonPlan plan) => plan.Today is null ? Key : Key.Add(TodayMark.Key(plan));

    /// <summary>The chart of some batches.</summary>
    /// <param name="growers">The batches by grower.</param>
    /// <param name="result">The result they belong to.</param>
    public static Chart Of(IEnumerable<(string Grower, BatchBar[] Bars)> growers, StudyResult result) =>
        new()
        {
            Title = "Batches: median dates of " + Numbers.Count(result.Seasons, "season", "seasons") + TodayMark.Title(result.Plan),
            Label = "Batches by grower: median dates on mats, benches and hardening table, and the wanted set-out date",
            Table = Table,
            Across = ChartAxis.OfDates(new Dates(result.Plan)),
            Key = KeyOf(result.Plan),
            Marks = [.. TodayMark.Of(result.Plan)],
            Groups = [.. growers.Select(grower => new RowGroup(PlainText.Short(grower.Grower, 60), [.. grower.Bars.Select(Row)]))],
        };

    private static ChartRow Row(BatchBar bar)
    {
        var plan = bar.Batch.Plan;
        return new ChartRow(plan.Order.Id)
        {
            Detail = plan.Crop.Name,
            Told =
                $"{PlainText.Short(plan.Order.Id, 60)}, {PlainText.Short(plan.Crop.Name, 60)}, "
                + $"{Numbers.Count(plan.Trays, "tray", "trays")}; waited {Days(bar.WaitDays)}, held by the weather {Days(bar.HoldDays)} a "
                + "tray on average",
            Marks = [.. Marks(bar)],
        };
    }

    private static IEnumerable<Mark> Marks(BatchBar bar)
    {
        foreach (var (look, days) in new[] { (Looks.Mat, bar.Mat), (Looks.Bench, bar.Bench), (Looks.Table, bar.Table) })
        {
            if (days is { } span && span.To > span.From)
            {
                yield return new BarMark(look, span.From, span.To);
            }
        }

        foreach (var (isHold, from, to) in bar.Lost())
        {
            yield return new SpanMark(isHold ? Looks.HeldByWeather : Looks.Waited, from, to) { IsBelow = true };
        }

        if (bar.Note is { } note)
        {
            yield return new NoteMark(note, 0);
        }

        if (bar.PottedUp is { } potted)
        {
            yield return new PointMark(Looks.PottedUp, potted);
        }

        yield return new PointMark(Looks.InField, bar.Wanted);
    }

    private static string Days(double days) => days < 0.05 ? "no day" : Numbers.Fine(days) + (Numbers.Fine(days) == "1" ? " day" : " days");
}
