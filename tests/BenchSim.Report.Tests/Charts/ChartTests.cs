using BenchSim.Report.Charts;
using BenchSim.Report.Tests.Case;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Charts;

/// <summary>What stands on the charts, whoever paints them.</summary>
public sealed class ChartTests
{
    [Fact]
    public void A_space_has_its_band_below_its_lines_and_what_is_held_on_top()
    {
        var study = SyntheticStudy.Tiny();
        var days = study.Plan.Days;
        var space = study.Spaces[0] with
        {
            Places = [.. Enumerable.Range(0, days).Select(day => day < 10 ? 8 : 10)],
            Held = [.. Enumerable.Repeat(new DaySpread(5, 2, 5, 8, 8, 9), days)],
            Wanted = [.. Enumerable.Repeat(new DaySpread(6, 6, 6, 6, 6, 6), days)],
        };

        var chart = OccupancyChart.Of(space, study);

        // The scale ends 6 % above the 10 places; a number holds for the whole of its day.
        Assert.Equal((0.0, 10.6), (chart.Up!.Low, Math.Round(chart.Up.High, 9)));
        Assert.Equal([(0, 2, 8), (1, 2, 8), (1, 2, 8)], Assert.IsType<BandMark>(chart.Marks[0]).Points.Take(3));
        LineMark[] lines = [.. chart.Marks.Skip(1).Cast<LineMark>()];
        Assert.Equal([Looks.Places, Looks.Wanted, Looks.Held], lines.Select(line => line.Look));
        Assert.Equal([(9, 8), (10, 8), (10, 10), (11, 10)], lines[0].Points.Skip(18).Take(4));
        Assert.Equal((days, 5), lines[2].Points[^1]);
        Assert.Equal(chart.Key.Select(entry => entry.Look).ToHashSet(), [Looks.HeldBand, .. lines.Select(line => line.Look)]);
    }

    [Fact]
    public void A_batch_has_its_bars_in_order_and_the_wanted_date_on_top()
    {
        var study = SyntheticStudy.Tiny();
        var bar = BatchBar.Of(study.Batches[0], study.Plan.FirstDay, study.Plan.Days - 1);

        var chart = BatchesChart.Of([("Ann", [bar])], study);

        var row = Assert.Single(chart.Rows);
        Assert.Equal((bar.Batch.Plan.Order.Id, bar.Batch.Plan.Crop.Name), (row.Label, row.Detail));
        Assert.Equal(
            [(Looks.Mat, bar.Mat), (Looks.Bench, bar.Bench), (Looks.Table, bar.Table)],
            row.Marks.OfType<BarMark>().Select(mark => (mark.Look, ((int, int)?)((int)mark.From, (int)mark.To)))
        );
        Assert.Equal(new PointMark(Looks.InField, bar.Wanted), row.Marks[^1]);
        Assert.Equal("Ann", Assert.Single(chart.Groups).Heading);
    }

    [Fact]
    public void A_tornado_has_the_inputs_that_decide_most_and_room_for_all_its_ends()
    {
        var money = CaseSample.WithMoney(CaseSample.Spring()).Money!;
        var deciding = money.Tornado.Where(swing => swing.Size > 0).ToArray();

        var chart = TornadoChart.Of(money, most: 1);

        var row = Assert.Single(chart.Rows);
        Assert.Equal(InvestNames.Of(deciding[0].Input), row.Label);
        double[] ends = [deciding[0].AtLow, deciding[0].AtHigh, money.NetPresentValue.Mean, 0];
        Assert.Equal((ends.Min(), ends.Max()), (chart.Across.Low, chart.Across.High));
        Assert.Equal(
            [(Looks.Lower, deciding[0].AtLow), (Looks.Higher, deciding[0].AtHigh)],
            row.Marks.Cast<BarMark>().Select(bar => (bar.Look, bar.To))
        );
        Assert.Equal(deciding.Length, TornadoChart.Of(money).Rows.Count());
    }

    // The style sheet has the colours once more, for it has others in the dark and in print.
    [Fact]
    public void The_page_has_the_colours_and_the_samples_of_the_looks()
    {
        using var stream = typeof(Looks).Assembly.GetManifestResourceStream("Html/report.css")!;
        using var reader = new StreamReader(stream);
        var css = reader.ReadToEnd();

        foreach (var look in new[] { Looks.Held, Looks.Wanted, Looks.Places, Looks.Mat, Looks.Bench, Looks.Table, Looks.HeldByWeather })
        {
            Assert.Contains($"--{look.Name}: {look.Colour};", css, StringComparison.Ordinal);
        }

        // A quarter of 255 is 0x40.
        Assert.Contains($"--{Looks.HeldBand.Name}: {Looks.HeldBand.Colour}40;", css, StringComparison.Ordinal);
        Assert.Equal(0.25, Looks.HeldBand.Cover);
        Assert.All(OccupancyChart.Key.Concat(BatchesChart.Key), entry =>
            Assert.Contains($".sw.{entry.Look.Name}", css, StringComparison.Ordinal)
        );
    }
}
