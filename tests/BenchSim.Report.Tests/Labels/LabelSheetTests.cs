using BenchSim.Report.Labels;

namespace BenchSim.Report.Tests.Labels;

public class LabelSheetTests
{
    public static TheoryData<string> Names => [.. LabelSheets.Known.Select(sheet => sheet.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_known_sheet_lies_within_its_paper_and_is_found_by_its_name(string name)
    {
        var sheet = LabelSheets.Parse(name.ToUpperInvariant(), out var why)!;
        Assert.Empty(why);
        (var left, var top) = sheet.Corner(0);
        (var lastLeft, var lastTop) = sheet.Corner(sheet.Count - 1);
        Assert.True(left >= 0 && top >= 0, $"{left} {top}");
        Assert.True(lastLeft + sheet.WidthMm <= sheet.Paper.WidthMm && lastTop + sheet.HeightMm <= sheet.Paper.HeightMm);
    }

    [Fact]
    public void Labels_stand_in_the_middle_of_the_paper()
    {
        // A4: 3 x 63.5 + 2 x 2.5 = 195.5 mm of 210: 7.25 left and right. 7 x 38.1 = 266.7 of 297: 15.15 above and below.
        var sheet = LabelSheets.Parse("a4-21", out _)!;
        Assert.Equal((7.25, 15.15), (Math.Round(sheet.Corner(0).X, 9), Math.Round(sheet.Corner(0).Y, 9)));

        // The fifth label is the second of the second row: 7.25 + 66, 15.15 + 38.1.
        Assert.Equal((73.25, 53.25), (Math.Round(sheet.Corner(4).X, 9), Math.Round(sheet.Corner(4).Y, 9)));
    }

    [Theory]
    [InlineData("70x30", false, 70, 30, 2, 9, 0, 0, true)] // 200 mm hold two of 70, 287 mm nine of 30
    [InlineData("letter:66.7x25.4/3x10/3.2x0", true, 66.7, 25.4, 3, 10, 3.2, 0, false)]
    [InlineData("A4:70x37/3x8", false, 70, 37, 3, 8, 0, 0, false)]
    public void A_size_in_millimetres_makes_a_sheet(
        string text,
        bool letter,
        double width,
        double height,
        int columns,
        int rows,
        double gapX,
        double gapY,
        bool cut
    )
    {
        var sheet = LabelSheets.Parse(text, out _)!;
        Assert.Equal(
            (letter, width, height, columns, rows, gapX, gapY, cut),
            (sheet.IsLetter, sheet.WidthMm, sheet.HeightMm, sheet.Columns, sheet.Rows, sheet.GapXMm, sheet.GapYMm, sheet.IsCut)
        );
    }

    [Theory]
    [InlineData("", "write one of a4-21")]
    [InlineData("a5", "write one of a4-21")]
    [InlineData("70", "write one of a4-21")]
    [InlineData("70x30/0x4", "at least one column")]
    [InlineData("70x30/4x4", "the labels take 280 x 120 mm, and A4 is 210 x 297 mm")]
    [InlineData("300x30", "the labels take 300 x 270 mm")]
    [InlineData("5x5", "at least 20 mm wide and 10 mm high")]
    [InlineData("1e3x40", "write one of a4-21")]
    public void What_cannot_be_printed_is_refused_with_what_would_be_right(string text, string why)
    {
        Assert.Null(LabelSheets.Parse(text, out var said));
        Assert.Contains(why, said, StringComparison.Ordinal);
    }
}
