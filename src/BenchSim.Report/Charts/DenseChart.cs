using BenchSim.Report.Words;
using BenchSim.Study.Compare;
using BenchSim.Study.Dense;
using ScottPlot;
using ScottPlot.Plottables;

namespace BenchSim.Report.Charts;

/// <summary>What dense sowing does to mats and benches, crop by crop: tray-days more or less than sown directly, with intervals.</summary>
internal static class DenseChart
{
    /// <summary>Width of the picture in layout pixels.</summary>
    public const int Width = 960;

    private const int RowHeight = 52;
    private const int MostCrops = 40;
    private const double HalfBar = 0.17;

    /// <summary>Draws it as PNG.</summary>
    /// <param name="result">The result.</param>
    public static byte[] Draw(DenseResult result)
    {
        DenseCrop[] crops = [.. result.Crops.Take(MostCrops)];
        using var plot = Picture.Blank(
            $"Sown dense less sown directly, tray-days a season: means of {Numbers.Count(result.Seasons, "season", "seasons")}"
        );
        var ends = new List<double> { 0 };
        for (var at = 0; at < crops.Length; at++)
        {
            Bar(crops[at].Of(MeasureKind.MatTrayDays), -at + 0.2, Palette.Mat, at == 0 ? "on the heat mats" : "");
            Bar(crops[at].Of(MeasureKind.BenchTrayDays), -at - 0.2, Palette.Bench, at == 0 ? "on the benches" : "");
        }

        var air = Math.Max(1, (ends.Max() - ends.Min()) * 0.12);
        plot.Axes.SetLimits(ends.Min() - air, ends.Max() + air, -Math.Max(1, crops.Length) + 0.4, 0.6);
        plot.Add.VerticalLine(0, 2, Palette.Ink);
        plot.Axes.Left.SetTicks([.. crops.Select((_, at) => (double)-at)], [.. crops.Select(Label)]);
        plot.Axes.Left.TickLabelStyle.FontSize = 12;
        plot.Axes.Left.TickLabelStyle.OffsetY = Picture.LabelDrop;
        plot.Axes.Left.MajorTickStyle.Length = 0;
        plot.Axes.Bottom.TickLabelStyle.FontSize = 12;
        plot.Axes.Bottom.TickLabelStyle.ForeColor = Palette.Ink;
        plot.Grid.YAxisStyle.IsVisible = false;
        Picture.Legend(plot);
        return Picture.Png(plot, Width, 130 + (RowHeight * Math.Max(1, crops.Length)));

        void Bar(MeasureChange change, double y, Color color, string legend)
        {
            var bar = plot.Add.Rectangle(Math.Min(0, change.Difference), Math.Max(0, change.Difference), y - HalfBar, y + HalfBar);
            bar.FillColor = color;
            bar.LineWidth = 0;
            bar.LegendText = legend;
            ends.Add(change.Difference);
            var reach = double.IsNaN(change.HalfWidth) ? 0 : change.HalfWidth;
            ends.AddRange([change.Difference - reach, change.Difference + reach]);
            if (reach > 0)
            {
                plot.Add.Line(change.Difference - reach, y, change.Difference + reach, y).LineStyle = new LineStyle(2, Palette.Ink);
            }

            var text = plot.Add.Text(Signed(change.Difference), change.Difference + (change.Difference < 0 ? -reach : reach), y);
            text.LabelFontSize = 11;
            text.LabelFontColor = Palette.Ink;
            text.LabelAlignment = change.Difference < 0 ? Alignment.MiddleRight : Alignment.MiddleLeft;
            text.OffsetX = change.Difference < 0 ? -5 : 5;
        }
    }

    private static string Label(DenseCrop crop) =>
        $"{Picture.InDrawingOrder(PlainText.Short(crop.Crop.Name, 20))}, {(crop.SeedsPerFlat.Least == crop.SeedsPerFlat.Most ? $"{crop.SeedsPerFlat.Least}" : $"{crop.SeedsPerFlat.Least} to {crop.SeedsPerFlat.Most}")} a flat";

    private static string Signed(double value) => Numbers.Whole(value) is "0" or "-0" ? "0" : (value > 0 ? "+" : "") + Numbers.Whole(value);
}
