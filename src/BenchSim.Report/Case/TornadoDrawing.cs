using BenchSim.Report.Pdf;
using BenchSim.Report.Words;
using BenchSim.Study.Invest;

namespace BenchSim.Report.Case;

/// <summary>Which inputs decide a money case, drawn on a page: a bar an input, from the net present value at its lower value to that at its higher, widest on top.</summary>
internal static class TornadoDrawing
{
    private const int MostBars = 8;
    private const double RowMm = 5.4;
    private const double NameMm = 46;
    private const double LabelMm = 24;

    private static readonly Ink s_lower = new(0x56, 0xB4, 0xE9);
    private static readonly Ink s_higher = new(0x00, 0x72, 0xB2);
    private static readonly Ink s_even = new(0xB8, 0x4A, 0x00);
    private static readonly TextStyle s_text = new(8);

    /// <summary>Height of the drawing, millimetres; 0 where no input makes a difference.</summary>
    public static double HeightMm(InvestResult result) => Bars(result).Length is > 0 and var bars ? (bars * RowMm) + 6 : 0;

    /// <summary>Draws it.</summary>
    public static void Draw(PdfSheet sheet, InvestResult result, double left, double top, double width)
    {
        var swings = Bars(result);
        var currency = result.Currency;
        var middle = result.NetPresentValue.Mean;
        double[] ends = [.. swings.SelectMany(swing => new[] { swing.AtLow, swing.AtHigh }), middle, 0];
        var from = left + NameMm + LabelMm;
        var wide = width - NameMm - (2 * LabelMm);
        var span = Math.Max(1e-9, ends.Max() - ends.Min());
        double Across(double amount) => from + ((amount - ends.Min()) / span * wide);
        var bottom = top + (swings.Length * RowMm);
        for (var at = 0; at < swings.Length; at++)
        {
            var swing = swings[at];
            var y = top + (at * RowMm);
            sheet.TextWithin(InvestNames.Of(swing.Input), left, y + 0.6, NameMm - 1, s_text);
            Bar(sheet, Across(middle), Across(swing.AtLow), y, s_lower);
            Bar(sheet, Across(middle), Across(swing.AtHigh), y, s_higher);
        }

        sheet.Curve([(Across(0), top), (Across(0), bottom)], 0.4, s_even, 1.4);
        sheet.Curve([(Across(middle), top), (Across(middle), bottom)], 0.4, Ink.Black);

        // Last, so that no line runs through a figure.
        foreach ((var swing, var at) in swings.Select((swing, at) => (swing, at)))
        {
            var y = top + (at * RowMm);
            Label(sheet, InvestNames.Value(swing.Input, swing.Low, currency), Across(swing.AtLow), y, swing.AtLow < swing.AtHigh);
            Label(sheet, InvestNames.Value(swing.Input, swing.High, currency), Across(swing.AtHigh), y, swing.AtHigh < swing.AtLow);
        }

        sheet.TextWithin(InvestNames.Money(ends.Min(), currency), from - 30, bottom + 0.8, 60, s_text, TextSide.Middle);
        sheet.TextWithin(InvestNames.Money(ends.Max(), currency), from + wide - 30, bottom + 0.8, 30 + LabelMm, s_text, TextSide.Middle);
    }

    private static Swing[] Bars(InvestResult result) => [.. result.Tornado.Where(swing => swing.Size > 0).Take(MostBars)];

    private static void Bar(PdfSheet sheet, double middle, double end, double y, Ink ink) =>
        sheet.Fill(Math.Min(middle, end), y + 0.6, Math.Max(0.05, Math.Abs(end - middle)), RowMm - 1.2, ink);

    // The label stands outside the bar, at the end it belongs to.
    private static void Label(PdfSheet sheet, string label, double end, double y, bool isLeft) =>
        sheet.TextWithin(label, isLeft ? end - LabelMm : end + 1, y + 0.7, LabelMm - 1, s_text, isLeft ? TextSide.Right : TextSide.Left);
}
