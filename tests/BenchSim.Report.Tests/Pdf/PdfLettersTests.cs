using BenchSim.Report.Pdf;

namespace BenchSim.Report.Tests.Pdf;

public class PdfLettersTests
{
    private static readonly TextStyle s_style = new(12);

    public static TheoryData<string> Names => HostileNames.All;

    [Fact]
    public void A_letter_that_the_font_lacks_shows_as_a_box()
    {
        // Neither a tomato nor Chinese is in the font; the joiner between the two parts of the farmer has no shape.
        Assert.Equal("Tomato □", PdfLetters.Settable("Tomato \U0001F345", bold: false));
        Assert.Equal("□□", PdfLetters.Settable("日本", bold: true));
        Assert.Equal("□□", PdfLetters.Settable("\U0001F468\u200D\U0001F33E", bold: false));
    }

    [Fact]
    public void Accents_of_their_own_are_joined_and_line_breaks_become_spaces()
    {
        Assert.Equal("été", PdfLetters.Settable("e\u0301te\u0301", bold: false));
        Assert.Equal("one  two three four", PdfLetters.Settable("one\r\ntwo\nthree\u2028four", bold: false));
    }

    [Fact]
    public void A_width_is_that_of_the_fonts_own_table()
    {
        // DejaVu Sans Condensed, table hmtx: "i" 512, "M" 1590 of 2048 units. Ten and ten at 12 points (4.2333 mm): 43.450 mm.
        var expected = (10 * (512 + 1590) / 2048.0) * 12 * 25.4 / 72;
        Assert.Equal(expected, PdfLetters.WidthMm("iiiiiiiiiiMMMMMMMMMM", s_style), 3);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Lines_are_no_wider_than_asked_and_lose_nothing_but_spaces(string text)
    {
        var lines = PdfLetters.Lines(text, 30, s_style);

        Assert.All(lines, line => Assert.True(PdfLetters.WidthMm(line, s_style) <= 30));
        Assert.Equal(
            PdfLetters.Settable(text, bold: false).Replace(" ", "", StringComparison.Ordinal),
            string.Concat(lines).Replace(" ", "", StringComparison.Ordinal)
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_left_out_shows_as_an_ellipsis(string text)
    {
        var line = PdfLetters.Shortened(text, 25, s_style);
        var two = PdfLetters.Lines(text, 25, s_style, most: 2);

        Assert.True(PdfLetters.WidthMm(line, s_style) <= 25);
        Assert.True(two.Count <= 2);
        Assert.All(two, each => Assert.True(PdfLetters.WidthMm(each, s_style) <= 25));
        var fits = PdfLetters.WidthMm(PdfLetters.Settable(text, bold: false), s_style) <= 25;
        Assert.Equal(!fits, line.EndsWith('…'));
    }

    [Fact]
    public void Nothing_is_set_where_not_even_the_ellipsis_fits() => Assert.Equal("", PdfLetters.Shortened("Tomato", 1, s_style));
}
