using BenchSim.Report.Charts;
using BenchSim.Report.Html;
using BenchSim.Report.Pictures;
using BenchSim.Report.Tests.Synthetic;

namespace BenchSim.Report.Tests.Charts;

/// <summary>Of very many batches only those are drawn that cost most, and the page says so.</summary>
public class DrawnBatchesTests
{
    // The later of the two batches comes 300 times, the other 300 times before it: 400 are drawn, all 300 of the later and 100 of the
    // other, in the order of the plan, on 400 / 80 = 5 pictures.
    [Fact]
    public void The_latest_are_drawn_in_the_order_of_the_plan()
    {
        var tiny = SyntheticStudy.Tiny();
        var byCost = tiny.Batches.OrderBy(batch => batch.LatePlantDays.Mean).ToArray();
        var (good, bad) = (byCost[0], byCost[^1]);
        Assert.True(good.LatePlantDays.Mean < bad.LatePlantDays.Mean);
        var many = tiny with { Batches = [.. Enumerable.Repeat(good, 300), .. Enumerable.Repeat(bad, 300)] };

        Assert.Equal([.. Enumerable.Repeat(good, 100), .. Enumerable.Repeat(bad, 300)], DrawnBatches.Of(many));
        Assert.Equal(400, BatchBar.ByGrower(many).Sum(grower => grower.Bars.Length));
        Assert.Equal(5, ChartFiles.Of(many).Count(file => file.Name.StartsWith("charts/batches-", StringComparison.Ordinal)));
        Assert.Contains(
            "Drawn are the 400 of 600 batches that cost most late plant-days; the table has all of them.",
            ReportPage.Write(many, [], null),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void As_many_as_are_drawn_are_all_drawn_without_a_word()
    {
        var tiny = SyntheticStudy.Tiny();
        var many = tiny with { Batches = [.. Enumerable.Repeat(tiny.Batches[0], 400)] };
        Assert.Equal(400, DrawnBatches.Of(many).Count());
        Assert.DoesNotContain("Drawn are", ReportPage.Write(many, [], null), StringComparison.Ordinal);
    }
}
