using System.Globalization;
using System.Xml.Linq;
using BenchSim.Report.Charts;
using BenchSim.Report.Html;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Html;

/// <summary>The growers' shares, and the sheets their batches are drawn on.</summary>
public class GrowersSectionTests
{
    [Fact]
    public void The_chart_has_a_bar_for_each_share_as_long_as_the_share_and_a_line_at_equal_shares()
    {
        var tiny = SyntheticStudy.Tiny();
        var one = tiny.Growers[0] with { Share = 0.75, FuelShare = 0.4 };
        var two = tiny.Growers[1] with { Share = 0.25, FuelShare = 0.6 };
        var chart = Chart(tiny with { Growers = [one, two] });

        var days = Lengths(chart, "days");
        var fuel = Lengths(chart, "fuel");
        Assert.Equal(3, days[0] / days[1], 0.01);
        Assert.Equal(1.5, fuel[1] / fuel[0], 0.01);
        Assert.Equal(0.75 / 0.6, days[0] / fuel[1], 0.01);
        // Of two growers each has half: the line lies at two thirds of a bar of three quarters.
        var left = Number(chart.Descendants("rect").First(), "x");
        Assert.Equal(left + (days[0] * 2 / 3), Number(chart.Elements("line").Single(), "x1"), 0.1);
    }

    [Fact]
    public void What_is_not_known_has_no_bar()
    {
        var tiny = SyntheticStudy.Tiny();
        var chart = Chart(
            tiny with
            {
                Houses = [],
                MatPower = [],
                Growers = [.. tiny.Growers.Select(grower => grower with { FuelShare = double.NaN })],
            }
        );

        Assert.NotEmpty(Lengths(chart, "days"));
        Assert.Empty(Lengths(chart, "fuel"));
        Assert.Empty(Lengths(chart, "cost"));
    }

    [Fact]
    public void A_grower_alone_needs_no_line_of_equal_shares()
    {
        var tiny = SyntheticStudy.Tiny();
        Assert.Empty(Chart(tiny with { Growers = [tiny.Growers[0] with { Share = 1 }] }).Elements("line"));
    }

    // 30 batches and a name are 31 rows, 9 and a name 10: together 41, one too many for a sheet of 40. 100
    // batches of one grower need three.
    [Theory]
    [InlineData(new[] { 30, 8 }, new[] { 38 })]
    [InlineData(new[] { 30, 9 }, new[] { 30, 9 })]
    [InlineData(new[] { 100 }, new[] { 39, 39, 22 })]
    [InlineData(new[] { 5, 100, 3 }, new[] { 5, 39, 39, 25 })]
    [InlineData(new int[0], new[] { 0 })]
    public void Batches_are_drawn_on_sheets_that_a_page_can_hold(int[] batches, int[] sheets)
    {
        var bar = BatchBar.Of(SyntheticStudy.Tiny().Batches[0], new DateOnly(2027, 2, 1), 100);
        (string, BatchBar[])[] growers =
        [
            .. batches.Select((count, grower) => ($"grower {grower}", Enumerable.Repeat(bar, count).ToArray())),
        ];

        Assert.Equal(sheets, BatchSheets.Of(growers).Select(sheet => sheet.Sum(grower => grower.Bars.Length)));
    }

    private static XElement Chart(StudyResult result) =>
        XDocument
            .Parse(ReportPage.Write(result, [], null).Replace("<!DOCTYPE html>\n", "", StringComparison.Ordinal))
            .Descendants("section")
            .Single(section => section.Attribute("id")!.Value == "growers")
            .Descendants("svg")
            .First();

    private static double[] Lengths(XElement chart, string kind) =>
        [.. chart.Descendants("rect").Where(bar => bar.Attribute("class")!.Value == kind).Select(bar => Number(bar, "width"))];

    private static double Number(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
