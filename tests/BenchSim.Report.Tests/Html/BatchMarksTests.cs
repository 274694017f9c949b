using System.Globalization;
using System.Xml.Linq;
using BenchSim.Report.Html;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Html;

/// <summary>Waiting and holds, marked under the bars of the batches.</summary>
public class BatchMarksTests
{
    [Fact]
    public void The_marks_are_as_long_as_a_tray_waited_and_was_held()
    {
        // Of a batch of 4 trays, 12 tray-days of waiting and 8 of holds are 3 and 2 days a tray. The tray-days
        // of all spaces count together.
        var tiny = SyntheticStudy.Tiny();
        var batch = tiny.Batches[0];
        Assert.Equal(4, batch.Plan.Trays);
        var marked = batch with
        {
            HoldTrayDays = batch.HoldTrayDays with { Mean = 8 },
            BlockedTrayDays =
            [
                .. batch.BlockedTrayDays.Select(
                    (space, at) =>
                        space with
                        {
                            Mean = at switch
                            {
                                0 => 5,
                                1 => 7,
                                _ => 0,
                            },
                        }
                ),
            ],
        };
        var section = Section(tiny with { Batches = [marked] });
        var wait = Length(section, "wait");
        var hold = Length(section, "hold");

        Assert.Equal(3.0 / 2, wait / hold, 0.02);
        // The frame has 760 - 190 - 14 units for all days of the play; coordinates are rounded to a tenth.
        Assert.Equal(3 * (760.0 - 190 - 14) / tiny.Plan.Days, wait, 0.15);
        Assert.Contains(
            "waited 3 days, held by the weather 2 days a tray on average",
            section.Descendants("title").First().Value,
            StringComparison.Ordinal
        );
        string[] head = [.. section.Descendants("thead").First().Descendants("th").Select(cell => cell.Value)];
        string[] row = [.. section.Descendants("tbody").First().Element("tr")!.Elements().Select(cell => cell.Value)];
        Assert.Equal("3", row[Array.IndexOf(head, "Waited")]);
        Assert.Equal("2", row[Array.IndexOf(head, "Held")]);
    }

    [Fact]
    public void What_did_not_wait_has_no_mark()
    {
        var tiny = SyntheticStudy.Tiny();
        var quiet = tiny.Batches[0] with { HoldTrayDays = default, BlockedTrayDays = [] };
        Assert.DoesNotContain(Section(tiny with { Batches = [quiet] }).Descendants("line"), line =>
            line.Attribute("class")!.Value is "wait" or "hold"
        );
    }

    private static XElement Section(StudyResult result) =>
        XDocument
            .Parse(ReportPage.Write(result, [], null).Replace("<!DOCTYPE html>\n", "", StringComparison.Ordinal))
            .Descendants("section")
            .Single(section => section.Attribute("id")!.Value == "batches");

    private static double Length(XElement section, string kind)
    {
        var line = section.Descendants("line").Single(each => each.Attribute("class")!.Value == kind);
        return Number(line, "x2") - Number(line, "x1");
    }

    private static double Number(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
