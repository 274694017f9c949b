using BenchSim.Report.Words;
using BenchSim.Study.Invest;
using ScottPlot;
using ScottPlot.Plottables;

namespace BenchSim.Report.Charts;

/// <summary>Which inputs decide a money case: a bar an input, from the net present value at its lower value to that at its higher, widest on top.</summary>
internal static class TornadoChart
{
    /// <summary>Width of the picture in layout pixels.</summary>
    public const int Width = 960;

    private const int RowHeight = 44;
    private const int MostBars = 13;
    private const double HalfBar = 0.3;

    /// <summary>Draws it as PNG.</summary>
    /// <param name="result">The case.</param>
    public static byte[] Draw(InvestResult result)
    {
        var currency = result.Currency;
        Swing[] swings = [.. result.Tornado.Where(swing => swing.Size > 0).Take(MostBars)];
        using var plot = Picture.Blank(
            $"{Picture.InDrawingOrder(PlainText.Short(result.Name, 30))}: net present value over {Numbers.Count(result.Terms.LifeYears, "year", "years")}, one input lower or higher (mean of {Numbers.Count(result.Seasons, "season", "seasons")})"
        );
        var middle = result.NetPresentValue.Mean;
        for (var at = 0; at < swings.Length; at++)
        {
            Bars(plot, swings[at], -at, middle);
        }

        double[] ends = [.. swings.SelectMany(swing => new[] { swing.AtLow, swing.AtHigh }), middle, 0];
        var air = Math.Max(1, (ends.Max() - ends.Min()) * 0.16);
        plot.Axes.SetLimits(ends.Min() - air, ends.Max() + air, -Math.Max(1, swings.Length) + 0.4, 0.6);
        Line(plot, 0, Palette.Wanted, LinePattern.Dashed, "breaks even");
        Line(plot, middle, Palette.Ink, LinePattern.Solid, $"as given: {InvestNames.Money(middle, currency)}");

        // Last, so that no line runs through a figure.
        for (var at = 0; at < swings.Length; at++)
        {
            Labels(plot, swings[at], -at, currency);
        }

        plot.Axes.Left.SetTicks([.. swings.Select((_, at) => (double)-at)], [.. swings.Select(swing => InvestNames.Of(swing.Input))]);
        plot.Axes.Left.TickLabelStyle.FontSize = 12;
        plot.Axes.Left.TickLabelStyle.OffsetY = Picture.LabelDrop;
        plot.Axes.Left.MajorTickStyle.Length = 0;
        plot.Axes.Bottom.TickGenerator = new ScottPlot.TickGenerators.NumericAutomatic { LabelFormatter = value => Tick(value, currency) };
        plot.Axes.Bottom.TickLabelStyle.FontSize = 12;
        plot.Axes.Bottom.TickLabelStyle.ForeColor = Palette.Ink;
        plot.Grid.YAxisStyle.IsVisible = false;
        Picture.Legend(plot);
        return Picture.Png(plot, Width, 130 + (RowHeight * Math.Max(1, swings.Length)));
    }

    // A whole amount has no decimals, whatever its size.
    private static string Tick(double amount, string currency) =>
        Math.Abs(amount - Math.Round(amount)) < 1e-6
            ? (amount <= -0.5 ? "-" : "") + new Money(currency).Whole(Math.Abs(amount))
            : InvestNames.Money(amount, currency);

    private static void Bars(Plot plot, Swing swing, double y, double middle)
    {
        Bar(plot, middle, swing.AtLow, y, Palette.Table, y == 0 ? "at the lower value" : "");
        Bar(plot, middle, swing.AtHigh, y, Palette.Held, y == 0 ? "at the higher value" : "");
    }

    private static void Labels(Plot plot, Swing swing, double y, string currency)
    {
        Label(plot, InvestNames.Value(swing.Input, swing.Low, currency), swing.AtLow, y, swing.AtLow < swing.AtHigh);
        Label(plot, InvestNames.Value(swing.Input, swing.High, currency), swing.AtHigh, y, swing.AtHigh < swing.AtLow);
    }

    private static void Bar(Plot plot, double from, double to, double y, Color color, string legend)
    {
        var bar = plot.Add.Rectangle(Math.Min(from, to), Math.Max(from, to), y - HalfBar, y + HalfBar);
        bar.FillColor = color;
        bar.LineWidth = 0;
        bar.LegendText = legend;
    }

    // The label stands outside the bar, at the end it belongs to.
    private static void Label(Plot plot, string label, double x, double y, bool isLeft)
    {
        var text = plot.Add.Text(label, x, y);
        text.LabelFontSize = 11;
        text.LabelFontColor = Palette.Ink;
        text.LabelBackgroundColor = Colors.White;
        text.LabelPadding = 1;
        text.LabelAlignment = isLeft ? Alignment.MiddleRight : Alignment.MiddleLeft;
        text.OffsetX = isLeft ? -5 : 5;
    }

    private static void Line(Plot plot, double x, Color color, LinePattern pattern, string legend)
    {
        var line = plot.Add.VerticalLine(x, 2, color, pattern);
        line.LegendText = legend;
    }
}
