using BenchSim.Report.Pdf;
using BenchSim.Report.Words;

namespace BenchSim.Report.Labels;

/// <summary>Tray labels as a PDF, one a tray, on a sheet of labels.</summary>
internal static class LabelPages
{
    private const double MostPoints = 14;
    private const double LeastShare = 0.6;

    /// <summary>Sheets that so many labels take.</summary>
    public static int Sheets(int labels, LabelSheet sheet, int used) => labels == 0 ? 0 : (used + labels + sheet.Count - 1) / sheet.Count;

    /// <summary>Draws the labels.</summary>
    /// <param name="title">Title of the file.</param>
    /// <param name="labels">Labels, one or more.</param>
    /// <param name="sheet">Sheet.</param>
    /// <param name="used">Labels already used of the first sheet, fewer than a sheet has.</param>
    /// <param name="cancel">Stops the drawing.</param>
    public static byte[] Draw(string title, IReadOnlyList<TrayLabel> labels, LabelSheet sheet, int used, CancellationToken cancel)
    {
        using var book = new PdfBook(title);
        PdfSheet? page = null;
        for (var at = 0; at < labels.Count; at++)
        {
            var place = (used + at) % sheet.Count;
            if (page is null || place == 0)
            {
                cancel.ThrowIfCancellationRequested();
                page = book.Add(sheet.Paper);
            }

            (var x, var y) = sheet.Corner(place);
            if (sheet.IsCut)
            {
                page.Frame(x, y, sheet.WidthMm, sheet.HeightMm, 0.1, Ink.Grey);
            }

            DrawOne(page, labels[at], x, y, sheet);
        }

        return book.ToBytes();
    }

    private static void DrawOne(PdfSheet page, TrayLabel label, double x, double y, LabelSheet sheet)
    {
        var padding = Math.Min(2, sheet.HeightMm * 0.08);
        var height = sheet.HeightMm - (2 * padding);
        var width = sheet.WidthMm - (2 * padding);

        // The white border of the code may lie in the padding.
        var side = Math.Min(sheet.HeightMm - padding, sheet.WidthMm * 0.38);
        if (QrSquare.Draw(page, label.Code, x + sheet.WidthMm - side - (padding / 2), y + ((sheet.HeightMm - side) / 2), side))
        {
            width -= side - (padding / 2);
        }

        var lines = Ways(label).MaxBy(way => PointsOf(way, width, height))!;
        var each = height / lines.Length;
        var points = Math.Min(MostPoints, PointsIn(each));
        foreach ((var line, var at) in lines.Select((line, at) => (line, at)))
        {
            var style = Fitting(line, width, points);
            page.TextWithin(Cut(line, width, style), x + padding, y + padding + (at * each) + ((each - style.LineMm) / 2), width, style);
        }
    }

    /// <summary>How large the lines that must be read whole come out.</summary>
    private static double PointsOf(Line[] way, double width, double height)
    {
        var points = Math.Min(MostPoints, PointsIn(height / way.Length));
        return way.Where(line => line.IsWhole).Min(line => Fitting(line, width, points).Points);
    }

    // A line takes 1.25 times the size of its letters.
    private static double PointsIn(double lineMm) => lineMm / new TextStyle(1).LineMm;

    // Letters become smaller before they are cut off; what must be read whole is never cut off.
    private static TextStyle Fitting(Line line, double width, double points)
    {
        var style = new TextStyle(points, line.IsBold);
        var wanted = PdfLetters.WidthMm(PdfLetters.Settable(line.Text.Trim(), line.IsBold), style);
        var least = line.IsWhole ? 0.1 : LeastShare;
        return wanted <= width ? style : style with { Points = points * Math.Max(least, width / wanted * 0.999) };
    }

    // A crop with a long name leaves its grower room: half of the line, or what it does not need.
    private static string Cut(Line line, double width, TextStyle style)
    {
        if (line.Tail.Length == 0 || WidthOf(line.Text, line, style) <= width)
        {
            return line.Text;
        }

        var head = line.Text[..^(line.Tail.Length + " · ".Length)];
        var room = Math.Max(width / 2, width - WidthOf(head + " · ", line, style));
        var tail = " · " + PdfLetters.Shortened(PdfLetters.Settable(line.Tail, line.IsBold), room, style);
        return PdfLetters.Shortened(PdfLetters.Settable(head, line.IsBold), width - WidthOf(tail, line, style), style) + tail;
    }

    private static double WidthOf(string text, Line line, TextStyle style) =>
        PdfLetters.WidthMm(PdfLetters.Settable(text, line.IsBold), style);

    /// <summary>The fields of a label: each on a line of its own, or side by side where the label is wide and low.</summary>
    private static Line[][] Ways(TrayLabel label)
    {
        var batch = Joined(label.Short, label.Batch.Order.Id);
        var crop = label.Batch.CropAndVariety;
        var grower = label.Batch.Order.Grower;
        var sow = "sow " + Dates.Iso(label.Batch.SowOn);
        var potUp = label.Batch.PotUpOn is { } on ? "pot up " + Dates.Iso(on) : "";
        var setOut = "set out " + Dates.Iso(label.Batch.SetOutOn);
        var who = new Line(Joined(crop, grower), Tail: grower);
        return
        [
            Kept(
                new(batch, IsBold: true),
                new(crop),
                new(label.Count, IsBold: true, IsWhole: true),
                new(grower),
                new(sow, IsWhole: true),
                new(potUp, IsWhole: true),
                new(setOut, IsWhole: true)
            ),
            Kept(
                new(batch, IsBold: true),
                who,
                new(label.Count, IsBold: true, IsWhole: true),
                new(Joined(sow, potUp), IsWhole: true),
                new(setOut, IsWhole: true)
            ),
            Kept(
                new(Joined(label.Short, label.Count, label.Batch.Order.Id), IsBold: true),
                who,
                new(Joined(sow, potUp, setOut), IsWhole: true)
            ),
        ];
    }

    private static Line[] Kept(params Line[] lines) => [.. lines.Where(line => line.Text.Length > 0)];

    private static string Joined(params IEnumerable<string> parts) => string.Join(" · ", parts.Where(part => part.Length > 0));

    /// <summary>A line of a label.</summary>
    /// <param name="Text">What the line says.</param>
    /// <param name="IsBold">Whether it is set in bold letters.</param>
    /// <param name="IsWhole">Whether it must be read whole.</param>
    /// <param name="Tail">Its last field, where that must not fall victim to a long one before it; may be empty.</param>
    private readonly record struct Line(string Text, bool IsBold = false, bool IsWhole = false, string Tail = "");
}
