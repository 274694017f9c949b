using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;
using ScottPlot;
using ScottPlot.Plottables;

namespace BenchSim.Report.Charts;

/// <summary>The batches by their median dates: mats, benches, table, grouped by grower, with the wanted set-out date.</summary>
internal static class BatchesPicture
{
    /// <summary>Width of the picture in layout pixels.</summary>
    public const int Width = 1000;

    private const int RowHeight = 20;

    /// <summary>Draws rows that stand together by grower, as PNG.</summary>
    public static byte[] Draw(IReadOnlyList<(string Grower, BatchBar Bar)> rows, StudyResult result)
    {
        var dates = new Dates(result.Plan);
        using var plot = Picture.Blank("Batches: median dates of " + Numbers.Count(result.Seasons, "season", "seasons"));
        var positions = new List<double>();
        var labels = new List<string>();
        double y = 0;
        string? grower = null;
        foreach ((var owner, var bar) in rows)
        {
            if (owner != grower)
            {
                Heading(plot, owner, y);
                grower = owner;
                y--;
            }

            Row(plot, bar, y);
            positions.Add(y);
            labels.Add(Label(bar.Batch.Plan));
            y--;
        }

        Picture.DateAxis(plot, dates);
        plot.Axes.Left.SetTicks([.. positions], [.. labels]);
        plot.Axes.Left.TickLabelStyle.FontSize = 12;
        plot.Axes.Left.TickLabelStyle.OffsetY = Picture.LabelDrop;
        plot.Axes.Left.MajorTickStyle.Length = 0;
        plot.Grid.YAxisStyle.IsVisible = false;
        plot.Axes.SetLimits(0, dates.Days, y + 0.4, 0.7);
        Legend(plot);
        return Picture.Png(plot, Width, 110 + (int)(RowHeight * -y));
    }

    private static string Label(BatchPlan plan) =>
        $"{Picture.InDrawingOrder(PlainText.Short(plan.Order.Id, 16))}  "
        + $"{Picture.InDrawingOrder(PlainText.Short(plan.Crop.Name, 16))}";

    private static void Heading(Plot plot, string grower, double y)
    {
        var text = plot.Add.Text(Picture.InDrawingOrder(PlainText.Short(grower, 60)), 0, y);
        text.LabelFontSize = 13;
        text.LabelBold = true;
        text.LabelFontColor = Palette.Ink;
        text.LabelAlignment = Alignment.MiddleLeft;
        text.OffsetX = 4;
    }

    private static void Row(Plot plot, BatchBar bar, double y)
    {
        Phase(plot, bar.Mat, y, Palette.Mat);
        Phase(plot, bar.Bench, y, Palette.Bench);
        Phase(plot, bar.Table, y, Palette.Table);
        if (bar.PottedUp is { } potted)
        {
            plot.Add.Line(potted, y - 0.42, potted, y + 0.42).LineStyle = new LineStyle(3, Palette.Ink);
        }

        foreach ((var isHold, var from, var to) in bar.Lost())
        {
            plot.Add.Line(from, y - 0.4, to, y - 0.4).LineStyle = new LineStyle(2, isHold ? Palette.Hold : Palette.Ink);
        }

        if (bar.Note is { } note)
        {
            var text = plot.Add.Text(note, 0, y);
            text.LabelFontSize = 12;
            text.LabelFontColor = Palette.Ink;
            text.LabelAlignment = Alignment.MiddleLeft;
            text.OffsetX = 4;
        }

        var wanted = plot.Add.Marker(bar.Wanted, y, MarkerShape.FilledDiamond, 11, Palette.Ink);
        wanted.MarkerStyle.OutlineColor = Palette.Paper;
        wanted.MarkerStyle.OutlineWidth = 1;
    }

    private static void Phase(Plot plot, (int From, int To)? days, double y, Color color)
    {
        if (days is not { } span || span.To <= span.From)
        {
            return;
        }

        var rectangle = plot.Add.Rectangle(span.From, span.To, y - 0.32, y + 0.32);
        rectangle.FillColor = color;
        rectangle.LineWidth = 0;
    }

    private static void Legend(Plot plot)
    {
        Picture.Legend(plot);
        plot.Legend.ManualItems.Add(new LegendItem { LabelText = "on the mats", FillColor = Palette.Mat });
        plot.Legend.ManualItems.Add(new LegendItem { LabelText = "on the benches", FillColor = Palette.Bench });
        plot.Legend.ManualItems.Add(new LegendItem { LabelText = "on the hardening table", FillColor = Palette.Table });
        plot.Legend.ManualItems.Add(
            new LegendItem
            {
                LabelText = "potted up",
                LineColor = Palette.Ink,
                LineWidth = 3,
            }
        );
        plot.Legend.ManualItems.Add(
            new LegendItem
            {
                LabelText = "days waited for a place, mean",
                LineColor = Palette.Ink,
                LineWidth = 2,
            }
        );
        plot.Legend.ManualItems.Add(
            new LegendItem
            {
                LabelText = "days held by the weather, mean",
                LineColor = Palette.Hold,
                LineWidth = 2,
            }
        );
        plot.Legend.ManualItems.Add(
            new LegendItem
            {
                LabelText = "wanted in the field",
                MarkerShape = MarkerShape.FilledDiamond,
                MarkerSize = 11,
                MarkerColor = Palette.Ink,
            }
        );
    }
}
