using System.Text;
using BenchSim.Report.Pdf;

namespace BenchSim.Report.Tests.Pdf;

public class PdfBookTests
{
    public static TheoryData<string> Names => HostileNames.All;

    [Theory]
    [MemberData(nameof(Names))]
    public void Text_is_read_back_by_another_reader_as_it_was_set(string name)
    {
        using var book = new PdfBook(name);
        var sheet = book.Add(PaperSize.A4);
        sheet.TextWithin(name, 20, 30, 150, new TextStyle(8, IsBold: true));

        var text = Assert.Single(PdfReader.Texts(book.ToBytes()));

        var expected = PdfLetters.Shortened(name, 150, new TextStyle(8, IsBold: true));
        Assert.Equal(Squeezed(expected), Squeezed(text));
    }

    [Fact]
    public void Text_stands_where_it_was_put()
    {
        using var book = new PdfBook("places");
        var sheet = book.Add(PaperSize.Letter);
        sheet.Text("H", 50, 100, new TextStyle(72));
        sheet.Text("H", 150, 100, new TextStyle(72), TextSide.Right);
        var pdf = book.ToBytes();

        // "H" of DejaVu Sans Condensed is 1386 of 2048 units wide: at 72 points (25.4 mm) 17.19 mm. Its foot
        // lies one size below the top of the line.
        Assert.Equal([(215.9, 279.4)], PdfReader.Sizes(pdf).Select(size => (Math.Round(size.Width, 1), Math.Round(size.Height, 1))));
        (string, double Left, double, double Right, double Bottom)[] letters = PdfReader.Letters(pdf, 1);
        Assert.Equal(50, letters[0].Left, 1);
        Assert.Equal(50 + (1386 / 2048.0 * 25.4), letters[0].Right, 1);
        Assert.Equal(125.4, letters[0].Bottom, 1);
        Assert.Equal(150, letters[1].Right, 1);
    }

    [Fact]
    public void The_same_pages_give_the_same_bytes_without_clock_or_chance()
    {
        var first = Sample();
        var second = Sample();

        Assert.Equal(first, second);
        var text = Encoding.Latin1.GetString(first);
        Assert.DoesNotContain("CreationDate", text, StringComparison.Ordinal);
        Assert.DoesNotContain("uuid", text, StringComparison.Ordinal);
        Assert.DoesNotContain("CreateDate", text, StringComparison.Ordinal);
        Assert.Contains("/FontName/AAAAAA+DejaVu", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Other_pages_have_another_identifier()
    {
        using var book = new PdfBook("sample");
        book.Add(PaperSize.A4).Text("other", 20, 20, new TextStyle(10));

        Assert.False(string.Equals(Identifier(Sample()), Identifier(book.ToBytes()), StringComparison.Ordinal));
    }

    [Fact]
    public void A_book_without_a_page_is_refused()
    {
        using var book = new PdfBook("empty");
        Assert.Throws<InvalidOperationException>(book.ToBytes);
    }

    private static string Identifier(byte[] pdf)
    {
        var text = Encoding.Latin1.GetString(pdf);
        return text.Substring(text.LastIndexOf("/ID", StringComparison.Ordinal), 40);
    }

    private static byte[] Sample()
    {
        using var book = new PdfBook("sample");
        var sheet = book.Add(PaperSize.A4);
        sheet.Text("Tomato", 20, 20, new TextStyle(10));
        sheet.Text("Pepper", 20, 30, new TextStyle(10, IsBold: true));
        sheet.Fill(20, 40, 5, 5, Ink.Pale);
        sheet.FillAll([(30, 40, 1, 1), (31, 41, 1, 1)], Ink.Black);
        book.AddToContents("Tomato", sheet, 1);
        return book.ToBytes();
    }

    private static string Squeezed(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
