using BenchSim.Report.Charts;
using BenchSim.Report.Pdf;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Case;

/// <summary>One space by day, drawn on a page: places there are, held (band and median) and wanted (median).</summary>
internal sealed class OccupancyDrawing
{
    /// <summary>Height of the words above and below the plot, millimetres.</summary>
    public const double AroundMm = 9;

    private const double MarksMm = 10;

    /// <summary>Colour of what is held.</summary>
    private static readonly Ink s_held = new(0x00, 0x72, 0xB2);

    // A quarter of the colour of what is held, on white paper.
    private static readonly Ink s_band = new(0xBF, 0xDC, 0xEC);
    private static readonly Ink s_wanted = new(0xB8, 0x4A, 0x00);
    private static readonly Ink s_rule = new(0xDD, 0xDB, 0xD2);
    private static readonly TextStyle s_title = new(8.5, IsBold: true);
    private static readonly TextStyle s_mark = new(7.5, Ink: Ink.Grey);

    private readonly Dates _dates;
    private readonly PlaceScale _scale;

    /// <summary>Drawings of one space, all on one scale.</summary>
    /// <param name="dates">Dates of the play.</param>
    /// <param name="spaces">The space with and without a change.</param>
    public OccupancyDrawing(Dates dates, IEnumerable<SpaceResult> spaces)
    {
        _dates = dates;
        _scale = new PlaceScale(
            spaces.Max(space =>
                Enumerable
                    .Range(0, dates.Days)
                    .Max(day => Math.Max(space.Places[day], Math.Max(space.Held[day].P90, space.Wanted[day].P50)))
            )
        );
    }

    /// <summary>What the lines mean, on one line.</summary>
    public static void Legend(PdfSheet sheet, double left, double top, double width)
    {
        var each = width / 4;
        sheet.Curve([(left, top + 2), (left + 7, top + 2)], 0.6, Ink.Black);
        sheet.Fill(left + each, top + 0.5, 7, 3, s_band);
        sheet.Curve([(left + (2 * each), top + 2), (left + (2 * each) + 7, top + 2)], 0.45, s_held);
        sheet.Curve([(left + (3 * each), top + 2), (left + (3 * each) + 7, top + 2)], 0.45, s_wanted, 1.4);
        string[] words = ["places there are", "held, 8 seasons of 10", "held, median", "wanted, median"];
        for (var at = 0; at < words.Length; at++)
        {
            sheet.TextWithin(words[at], left + (at * each) + 8.5, top, each - 9, s_mark);
        }
    }

    /// <summary>Draws it.</summary>
    /// <param name="sheet">Where.</param>
    /// <param name="title">Words above.</param>
    /// <param name="space">The space; null where it is not there, which is said instead.</param>
    /// <param name="left">Left end.</param>
    /// <param name="top">Upper end.</param>
    /// <param name="width">Width with the marks, millimetres.</param>
    /// <param name="height">Height with the words, millimetres.</param>
    public void Draw(PdfSheet sheet, string title, SpaceResult? space, double left, double top, double width, double height)
    {
        sheet.TextWithin(title, left, top, width, s_title);
        var x = left + MarksMm;
        var y = top + 4.6;
        var wide = width - MarksMm;
        var high = height - AroundMm;
        if (space is null)
        {
            sheet.Frame(x, y, wide, high, 0.1, Ink.Grey);
            sheet.TextWithin("not there", x, y + (high / 2) - 1.5, wide, s_mark, TextSide.Middle);
            return;
        }

        double Across(double day) => x + (day / _dates.Days * wide);
        double Down(double places) => y + high - (places / _scale.Top * high);
        Marks(sheet, x, y, wide, high, Across, Down);
        (double X, double Y)[] Steps(Func<int, int> value) =>
            [
                .. Enumerable
                    .Range(0, _dates.Days)
                    .SelectMany(day => new[] { (Across(day), Down(value(day))), (Across(day + 1), Down(value(day))) }),
            ];
        sheet.Area([.. Steps(day => space.Held[day].P90), .. Steps(day => space.Held[day].P10).Reverse()], s_band);

        // What is held lies over the places there are, so that it is seen where the space is full.
        sheet.Curve(Steps(day => space.Places[day]), 0.55, Ink.Black);
        sheet.Curve(Steps(day => space.Wanted[day].P50), 0.4, s_wanted, 1.4);
        sheet.Curve(Steps(day => space.Held[day].P50), 0.4, s_held);
    }

    private void Marks(PdfSheet sheet, double x, double y, double wide, double high, Func<double, double> across, Func<double, double> down)
    {
        foreach (var mark in _scale.Marks)
        {
            sheet.Rule(x, down(mark), x + wide, down(mark), 0.15, s_rule);
            sheet.TextWithin(Numbers.Whole(mark), x - MarksMm, down(mark) - 1.9, MarksMm - 1.2, s_mark, TextSide.Right);
        }

        foreach (var tick in DateTick.Of(_dates, wide > 100 ? 12 : 6))
        {
            var at = across(tick.Day);
            sheet.Rule(at, y + high, at, y + high + 0.8, 0.2, Ink.Grey);
            if (at + 8 < x + wide)
            {
                sheet.TextWithin(tick.Label, at, y + high + 0.8, 10, s_mark);
            }
        }

        sheet.Rule(x, y + high, x + wide, y + high, 0.2, Ink.Grey);
    }
}
