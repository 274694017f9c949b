using System.Globalization;
using System.Xml.Linq;
using BenchSim.Report.Charts;
using BenchSim.Report.Html;
using BenchSim.Report.Pdf;
using BenchSim.Report.Pictures;
using BenchSim.Report.Tests.Pdf;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Study.Results;
using SkiaSharp;

namespace BenchSim.Report.Tests.Charts;

/// <summary>Every painter draws every kind of mark, and lets no name out of its place.</summary>
public sealed class PainterTests
{
    private const string Name = "<b>\"Beet\" & 'Kale'</b>";

    [Fact]
    public void A_page_has_all_marks_of_a_plot()
    {
        var svg = Svg(MarksOfAllKinds.Plot(Name));

        Assert.Equal(Name, svg.Attribute("aria-label")!.Value);
        // The plot is 760 - 46 - 14 = 700 wide from 46 on, and 220 - 24 - 8 = 188 high down to 196; the band
        // from 2 to 6 of 10 lies from 158.4 to 83.2.
        Assert.Equal("M46 83.2H746V158.4H46Z", Only(svg, "path", "band").Attribute("d")!.Value);
        Assert.Equal("M46 120.8H746", Only(svg, "path", "played").Attribute("d")!.Value);
        Assert.Equal((396.0, 45.6), Place(Only(svg, "circle", "enough"), "cx", "cy"));
        Assert.Equal((46.0, 26.8), Place(Only(svg, "line", "goal"), "x1", "y1"));
        Assert.Equal((396.0, 8.0), Place(Only(svg, "line", "even"), "x1", "y1"));
        Assert.Equal("0, 10, start, middle", string.Join(", ", svg.Descendants("text").Select(text => text.Value)));
    }

    [Fact]
    public void A_page_has_all_marks_of_rows()
    {
        var svg = Svg(MarksOfAllKinds.Rows(Name));

        // The plot is 760 - 190 - 14 = 556 wide from 190 on; the first row stands below 6 of air and the heading's 22.
        var bar = Only(svg, "rect", "mat");
        Assert.Equal((301.2, 30.5), Place(bar, "x", "y"));
        Assert.Equal("222.4", bar.Attribute("width")!.Value);
        Assert.Equal((245.6, 36.5), Place(Only(svg, "line", "reach"), "x1", "y1"));
        Assert.Equal((412.4, 62.5), Place(Only(svg, "line", "wait"), "x1", "y1"));
        Only(svg, "rect", "pot");
        Only(svg, "path", "diamond");
        Assert.Equal(Name, svg.Descendants("title").Single().Value);
        Assert.Contains(svg.Descendants("text"), text => text.Value == Name);
        Assert.Contains(svg.Descendants("g").First().Descendants("text"), text => text.Value == "left");
        Assert.Equal("right", svg.Elements().Last().Value);
    }

    [Fact]
    public void A_picture_has_all_marks()
    {
        using var picture = SKBitmap.Decode(
            PngPainter.Draw(
                (MarksOfAllKinds.Plot(Name), PictureLayout.Plot),
                (MarksOfAllKinds.Rows(Name), PictureLayout.Plot with { RowHeight = 50 })
            )
        );

        // 420 pixels of layout, and as many with a heading and two rows of 50 each; two pixels drawn for one.
        Assert.Equal((960 * 2, (420 + 420 + 150) * 2), (picture.Width, picture.Height));
        var colours = picture.Pixels.Select(pixel => $"#{pixel.Red:x2}{pixel.Green:x2}{pixel.Blue:x2}").ToHashSet(StringComparer.Ordinal);
        Assert.Superset(new HashSet<string>([Palette.Held, Palette.Wanted, Palette.Mat, Palette.Ink], StringComparer.Ordinal), colours);
    }

    [Fact]
    public void Paper_has_all_marks()
    {
        using var book = new PdfBook("drawing");
        var sheet = book.Add(PaperSize.A4);
        var rows = MarksOfAllKinds.Rows(Name);
        PdfPainter.Plot(sheet, MarksOfAllKinds.Plot(Name), 20, 20, 110, 62);
        PdfPainter.Rows(sheet, rows, 20, 100, 160);
        PdfPainter.Key(sheet, rows.Key, 20, 200, 160);
        var pdf = book.ToBytes();

        // The plot is 110 - 10 mm wide and 62 - 9 = 53 mm high from 24.6 mm on: the band from 2 to 6 of 10 lies
        // 10.6 to 31.8 mm above its foot.
        var band = PdfReader.Shapes(pdf, 1).Select(shape => shape[0]).MaxBy(box => box.Bottom - box.Top);
        Assert.Equal((30.0, 130.0), (Math.Round(band.Left, 1), Math.Round(band.Right, 1)));
        Assert.Equal((45.8, 67.0), (Math.Round(band.Top, 1), Math.Round(band.Bottom, 1)));
        // With figures at both ends a row's bars begin after 46 + 24 mm and are 160 - 46 - 48 = 66 mm wide: the
        // bar from 2 to 6 of 10 is 26.4 mm.
        Assert.Contains(PdfReader.Shapes(pdf, 1).Select(shape => shape[0]), box =>
            (Math.Round(box.Left, 1), Math.Round(box.Right, 1)) == (103.2, 129.6)
        );
        var text = Assert.Single(PdfReader.Texts(pdf));
        Assert.All(new[] { Name, "start", "middle", "left", "right", "plain", "bar" }, word =>
            Assert.Contains(word, text, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_space_that_is_not_there_says_so_on_paper()
    {
        using var book = new PdfBook("drawing");
        PdfPainter.Blank(book.Add(PaperSize.A4), Name, "not there", 20, 50, 110, 62);
        var pdf = book.ToBytes();

        Assert.Contains("not there", Assert.Single(PdfReader.Texts(pdf)), StringComparison.Ordinal);
        Assert.Empty(PdfReader.Shapes(pdf, 1));
    }

    private static XElement Svg(Chart chart)
    {
        var html = new HtmlText();
        SvgPainter.Draw(html, chart);
        return XDocument.Parse(html.ToString()).Root!.Element("svg")!;
    }

    private static XElement Only(XElement svg, string element, string look) =>
        Assert.Single(svg.Descendants(element), each => each.Attribute("class")?.Value == look);

    private static (double, double) Place(XElement element, string across, string down) =>
        (
            double.Parse(element.Attribute(across)!.Value, CultureInfo.InvariantCulture),
            double.Parse(element.Attribute(down)!.Value, CultureInfo.InvariantCulture)
        );
}
