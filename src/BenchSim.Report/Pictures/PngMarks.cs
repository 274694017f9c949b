using BenchSim.Report.Charts;
using BenchSim.Report.Words;
using ScottPlot;
using ScottPlot.Plottables;
using Palette = BenchSim.Report.Charts.Palette;

namespace BenchSim.Report.Pictures;

/// <summary>Puts the marks of a chart on a plot of ScottPlot, each with its look.</summary>
/// <param name="plot">The plot.</param>
/// <param name="lanes">Bars one below the other in a row.</param>
/// <param name="halfBar">Half the height of a bar, as a share of a row.</param>
internal sealed class PngMarks(Plot plot, int lanes, double halfBar)
{
    /// <summary>Colour of letters and axes.</summary>
    public static readonly Color Ink = Color.FromHex(Palette.Ink);

    /// <summary>Colour of the ground.</summary>
    public static readonly Color Paper = Color.FromHex(Palette.Paper);

    private const double LaneStep = 0.4;

    /// <summary>Draws marks, in a row where its height is given.</summary>
    public void Add(IEnumerable<Mark> marks, double row = 0)
    {
        foreach (var mark in marks)
        {
            Add(mark, row);
        }
    }

    /// <summary>Draws figures of a row with the ground of the paper around them.</summary>
    public void AddOnGround(IEnumerable<FigureMark> figures, double row)
    {
        foreach (var figure in figures)
        {
            var text = Figure(figure, row);
            text.LabelBackgroundColor = Colors.White;
            text.LabelPadding = 1;
        }
    }

    /// <summary>Writes the heading of a group of rows.</summary>
    public void Heading(string words, double row) => Write(words, 0, row, 13).LabelBold = true;

    /// <summary>An entry of the legend.</summary>
    public static LegendItem KeyItem(KeyEntry entry)
    {
        var look = entry.Look;
        var item = new LegendItem { LabelText = RightToLeftRuns.AsSeen(entry.Words) };
        if (look.IsFilled)
        {
            item.FillColor = ColourOf(look);
            return item;
        }

        item.LineStyle = LineOf(look);
        item.MarkerStyle = DotOf(look);
        item.MarkerStyle.OutlineWidth = 0;
        return item;
    }

    private void Add(Mark mark, double row)
    {
        switch (mark)
        {
            case LineMark line:
                Line(line);
                break;
            case BandMark band:
                var fill = plot.Add.FillY(
                    [.. band.Points.Select(point => point.X)],
                    [.. band.Points.Select(point => point.Low)],
                    [.. band.Points.Select(point => point.High)]
                );
                fill.FillColor = ColourOf(band.Look);
                fill.LineWidth = 0;
                break;
            case EdgeMark { IsUpright: true } edge:
                plot.Add.VerticalLine(edge.At).LineStyle = LineOf(edge.Look);
                break;
            case EdgeMark edge:
                plot.Add.HorizontalLine(edge.At).LineStyle = LineOf(edge.Look);
                break;
            case BarMark bar:
                var middle = MiddleOf(row, bar.Lane);
                var rectangle = plot.Add.Rectangle(
                    Math.Min(bar.From, bar.To),
                    Math.Max(bar.From, bar.To),
                    middle - halfBar,
                    middle + halfBar
                );
                rectangle.FillColor = ColourOf(bar.Look);
                rectangle.LineWidth = 0;
                break;
            case SpanMark span:
                var y = span.IsBelow ? row - 0.4 : MiddleOf(row, span.Lane);
                plot.Add.Line(span.From, y, span.To, y).LineStyle = LineOf(span.Look);
                break;
            case PointMark { Look.Dot: Dot.Upright } point:
                plot.Add.Line(point.At, row - 0.42, point.At, row + 0.42).LineStyle = LineOf(point.Look);
                break;
            case PointMark point:
                plot.Add.Marker(point.At, row).MarkerStyle = DotOf(point.Look);
                break;
            case NoteMark note:
                Write(note.Text, note.At, row, 12);
                break;
            case FigureMark figure:
                Figure(figure, row);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(mark), mark, "A mark that no picture draws.");
        }
    }

    private void Line(LineMark line)
    {
        var scatter = plot.Add.Scatter(
            line.Points.Select(point => point.X).ToArray(),
            line.Points.Select(point => point.Y).ToArray(),
            ColourOf(line.Look)
        );
        scatter.LineStyle = LineOf(line.Look);
        scatter.MarkerStyle = DotOf(line.Look);
    }

    private double MiddleOf(double row, int lane) => row + ((((lanes - 1) / 2.0) - lane) * LaneStep);

    // It stands outside the bar, at the end it belongs to.
    private Text Figure(FigureMark figure, double row)
    {
        var text = Write(figure.Text, figure.At, MiddleOf(row, figure.Lane), 11);
        text.LabelAlignment = figure.IsLeft ? Alignment.MiddleRight : Alignment.MiddleLeft;
        text.OffsetX = figure.IsLeft ? -5 : 5;
        return text;
    }

    private Text Write(string words, double x, double y, float size)
    {
        var text = plot.Add.Text(RightToLeftRuns.AsSeen(words), x, y);
        text.LabelFontSize = size;
        text.LabelFontColor = Ink;
        text.LabelAlignment = Alignment.MiddleLeft;
        text.OffsetX = 4;
        return text;
    }

    private static Color ColourOf(Look look)
    {
        var colour = Color.FromHex(look.Colour);
        return look.Cover < 1 ? colour.WithAlpha(look.Cover) : colour;
    }

    private static LineStyle LineOf(Look look) =>
        look.IsDotsAlone
            ? LineStyle.None
            : new LineStyle(look.Width, ColourOf(look), look.IsDashed ? LinePattern.Dashed : LinePattern.Solid);

    private static MarkerStyle DotOf(Look look)
    {
        var colour = ColourOf(look);
        return look.Dot switch
        {
            Dot.Disc => new MarkerStyle(MarkerShape.FilledCircle, look.DotSize, colour),
            Dot.Diamond => new MarkerStyle(MarkerShape.FilledDiamond, look.DotSize, colour) { OutlineColor = Paper, OutlineWidth = 1 },
            Dot.Ring => new MarkerStyle(MarkerShape.OpenCircle, look.DotSize, colour) { LineColor = colour, LineWidth = look.Width },
            Dot.Square => new MarkerStyle(MarkerShape.OpenSquare, look.DotSize, colour) { LineColor = colour, LineWidth = look.Width },
            _ => MarkerStyle.None,
        };
    }
}
