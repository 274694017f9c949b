using System.Globalization;
using System.Text;
using BenchSim.Report.Tables;

namespace BenchSim.Report.Tests.Tables;

/// <summary>RFC 4180, and the list of signs that begin a formula from the OWASP page on CSV injection.</summary>
public class CsvTableTests
{
    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("a;b", "\"a;b\"")]
    [InlineData("say \"hi\"", "\"say \"\"hi\"\"\"")]
    [InlineData("two\nlines", "\"two\nlines\"")]
    [InlineData("two\r\nlines", "\"two\r\nlines\"")]
    [InlineData("", "")]
    public void Text_is_quoted_where_it_must_be(string text, string cell) => Assert.Equal(cell, Written(text));

    [Theory]
    [InlineData("=cmd|' /C calc'!A0", "'=cmd|' /C calc'!A0")]
    [InlineData("+SUM(A1)", "'+SUM(A1)")]
    [InlineData("-A1", "'-A1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("\t=1", "\"'\t=1\"")]
    [InlineData("\r=1", "\"'\r=1\"")]
    [InlineData("\n=1", "\"'\n=1\"")]
    [InlineData("  =1+1", "'  =1+1")]
    [InlineData("＝1+1", "'＝1+1")]
    [InlineData("=\"a\",b", "\"'=\"\"a\"\",b\"")]
    public void Text_that_would_be_a_formula_gets_an_apostrophe(string text, string cell) => Assert.Equal(cell, Written(text));

    [Theory]
    [InlineData("-5")]
    [InlineData("+5")]
    [InlineData("-0.25")]
    public void Text_that_is_a_number_stays_one(string text) => Assert.Equal(text, Written(text));

    [Fact]
    public void Numbers_stay_numbers()
    {
        var table = Table("a", "b", "c", "d", "e");
        table.Number(-5).Number(-0.25).Number(double.NaN).Number(1e-9 * -1).Number(1234567.25);

        Assert.Equal("a,b,c,d,e\r\n-5,-0.25,,0,1234567.25\r\n", Text(table));
    }

    [Fact]
    public void Dates_are_iso_and_none_is_blank()
    {
        var table = Table("a", "b");
        table.Date(new DateOnly(2027, 4, 5)).Date(null);

        Assert.Equal("a,b\r\n2027-04-05,\r\n", Text(table));
    }

    [Fact]
    public void Half_of_a_surrogate_pair_becomes_the_replacement_character() => Assert.Equal("a\uFFFDb", Written("a\uD83Db"));

    [Fact]
    public void A_table_begins_with_a_byte_order_mark() => Assert.Equal([0xEF, 0xBB, 0xBF, (byte)'a'], Table("a").ToBytes()[..4]);

    [Fact]
    public void A_table_reads_back_as_it_was_written()
    {
        string[] texts = ["", " led by a blank", "a;b", "tab\there", "say \"hi\"", "two\r\nlines", "Jalapeño, früh", "-5"];
        var table = Table("text", "length", "behind");
        foreach (var text in texts)
        {
            table.Text(text).Number(text.Length).Text(text);
        }

        string[][] rows =
        [
            ["text", "length", "behind"],
            .. texts.Select(text => new[] { text, text.Length.ToString(CultureInfo.InvariantCulture), text }),
        ];
        Assert.Equal(rows, CsvRows.Of(table.ToBytes()));
    }

    [Fact]
    public void A_row_that_stops_early_is_no_table() =>
        Assert.Throws<InvalidOperationException>(() => Table("a", "b").Number(1).Number(2).Number(3).ToBytes());

    private static CsvTable Table(params string[] columns) => new(columns.Select(column => new Column(column, "", "")));

    private static string Written(string text) => Text(Table("x", "y").Text(text).Text("z"))[5..^4];

    private static string Text(CsvTable table) => Encoding.UTF8.GetString(table.ToBytes())[1..];
}
