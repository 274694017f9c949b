using System.Globalization;
using BenchSim.Report.Pdf;

namespace BenchSim.Report.Tests.Pdf;

public class PdfFlowTests
{
    public static TheoryData<string> Names => HostileNames.All;

    [Fact]
    public void Long_text_runs_over_several_pages_that_are_counted_and_loses_no_word()
    {
        string[] words = [.. Enumerable.Range(1, 3000).Select(number => $"w{number}")];
        var pdf = Write(flow => flow.Paragraph(string.Join(' ', words)));

        var pages = PdfReader.Texts(pdf);
        Assert.True(pages.Length > 2);
        Assert.EndsWith($"page 1 of {pages.Length}", pages[0], StringComparison.Ordinal);
        Assert.EndsWith($"page {pages.Length} of {pages.Length}", pages[^1], StringComparison.Ordinal);
        var all = string.Concat(pages);
        Assert.All(words, word => Assert.Contains(word, all, StringComparison.Ordinal));
        AssertWithinMargins(pdf, PaperSize.A4);
    }

    [Fact]
    public void A_table_repeats_its_heading_on_each_page()
    {
        IReadOnlyList<string>[] rows =
        [
            .. Enumerable.Range(1, 150).Select(row => new[] { $"batch{row}", row.ToString(CultureInfo.InvariantCulture) }),
        ];
        var pdf = Write(flow => flow.Table([new("Batch", 3), new("Trays", 1, TextSide.Right)], rows));

        var pages = PdfReader.Texts(pdf);
        Assert.True(pages.Length > 2);
        Assert.All(pages, page => Assert.Contains("Trays", page, StringComparison.Ordinal));
        var all = string.Concat(pages);
        Assert.All(rows, row => Assert.Contains(row[0], all, StringComparison.Ordinal));
        AssertWithinMargins(pdf, PaperSize.A4);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_name_overflows(string name)
    {
        using var book = new PdfBook(name);
        var flow = new PdfFlow(book, PaperSize.Letter, name);
        flow.Title(name);
        flow.Heading(name);
        flow.Heading(name, 2);
        flow.Paragraph(name);
        flow.Point(name);
        flow.Small(name);
        flow.Table(
            [new(name, 1), new(name, 5), new(name, 1, TextSide.Right), new(name, 1, TextSide.Middle)],
            [
                [name, name, name, name],
            ]
        );
        flow.Finish();

        AssertWithinMargins(book.ToBytes(), PaperSize.Letter);
    }

    [Fact]
    public void A_heading_is_not_left_alone_at_the_foot_of_a_page()
    {
        var pdf = Write(flow =>
        {
            while (flow.LeftMm > 12)
            {
                flow.Space(1);
            }

            flow.Heading("Alone");
            flow.Paragraph("What follows");
        });

        Assert.Contains("Alone", PdfReader.Texts(pdf)[1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_mark_of_a_point_stands_on_the_page_of_its_first_words()
    {
        // Three lines of 10.5 points are 13.9 mm; room for two of them is left.
        var pdf = Write(flow =>
        {
            while (flow.LeftMm > 10)
            {
                flow.Space(0.5);
            }

            flow.Point("First " + string.Join(' ', Enumerable.Repeat("words", 40)));
        });

        var pages = PdfReader.Texts(pdf);
        Assert.DoesNotContain("•", pages[0], StringComparison.Ordinal);
        Assert.Contains("•First", pages[1].Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_with_too_few_cells_is_refused() =>
        Assert.Throws<ArgumentException>(() =>
            Write(flow =>
                flow.Table(
                    [new("a", 1), new("b", 1)],
                    [
                        ["x"],
                    ]
                )
            )
        );

    private static byte[] Write(Action<PdfFlow> write)
    {
        using var book = new PdfBook("flow");
        var flow = new PdfFlow(book, PaperSize.A4, "Paper farm");
        write(flow);
        flow.Finish();
        return book.ToBytes();
    }

    private static void AssertWithinMargins(byte[] pdf, PaperSize size)
    {
        for (var page = 1; page <= PdfReader.Sizes(pdf).Length; page++)
        {
            foreach ((var text, var left, var top, var right, var bottom) in PdfReader.Letters(pdf, page))
            {
                Assert.True(left >= 19.9 && right <= size.WidthMm - 19.9, $"page {page}: \"{text}\" from {left} to {right}");
                Assert.True(top >= 19.9 && bottom <= size.HeightMm - 8, $"page {page}: \"{text}\" from {top} to {bottom}");
            }
        }
    }
}
