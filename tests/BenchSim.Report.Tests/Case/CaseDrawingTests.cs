using BenchSim.Report.Case;
using BenchSim.Report.Pdf;
using BenchSim.Report.Tests.Pdf;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Case;

public sealed class CaseDrawingTests
{
    [Fact]
    public void The_band_of_what_is_held_stands_at_its_height_and_width()
    {
        var study = SyntheticStudy.Tiny();
        var days = study.Plan.Days;
        var space = study.Spaces[0] with
        {
            Places = [.. Enumerable.Repeat(10, days)],
            Held = [.. Enumerable.Repeat(new DaySpread(5, 2, 5, 8, 8, 9), days)],
            Wanted = [.. Enumerable.Repeat(new DaySpread(6, 6, 6, 6, 6, 6), days)],
        };
        using var book = new PdfBook("drawing");
        var sheet = book.Add(PaperSize.A4);
        new OccupancyDrawing(new Dates(study.Plan), [space]).Draw(sheet, "Mats", space, 20, 50, 110, 62);

        // The plot is 110 - 10 mm wide and 62 - 9 = 53 mm high from 54.6 mm on; its scale ends 6 % above 10 places, so a place is 53 / 10.6 = 5 mm.
        var pdf = book.ToBytes();
        var band = PdfReader.Shapes(pdf, 1).Select(shape => shape[0]).MaxBy(box => box.Right - box.Left);
        const double foot = 54.6 + 53;
        Assert.Equal((30.0, 130.0), (Math.Round(band.Left, 1), Math.Round(band.Right, 1)));
        Assert.Equal((foot - 40, foot - 10), (Math.Round(band.Top, 1), Math.Round(band.Bottom, 1)));
        var text = Assert.Single(PdfReader.Texts(pdf));
        Assert.StartsWith("Mats", text, StringComparison.Ordinal);
        Assert.Contains("Mar", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_space_that_is_not_there_says_so()
    {
        var study = SyntheticStudy.Tiny();
        using var book = new PdfBook("drawing");
        new OccupancyDrawing(new Dates(study.Plan), [study.Spaces[0]]).Draw(book.Add(PaperSize.A4), "Mats", null, 20, 50, 110, 62);
        Assert.Contains("not there", Assert.Single(PdfReader.Texts(book.ToBytes())), StringComparison.Ordinal);
    }
}
