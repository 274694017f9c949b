using System.Globalization;
using BenchSim.Report.Papers;
using BenchSim.Report.Tests.Pdf;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Report.Tests.Papers;

public class WorkbookTests
{
    [Fact]
    public void Every_sheet_keeps_its_header_in_view_and_can_be_filtered()
    {
        var book = new SmallWorkbook(Workbook.Write(PaperSample.Of(SyntheticPlan.Spring())));
        Assert.Equal("Work Nights Batches Order Labels", string.Join(' ', book.Sheets.Keys));
        foreach ((var name, var sheet) in book.Sheets)
        {
            var rows = book.Rows(name);
            Assert.True(SmallWorkbook.IsFrozenBelowHeader(sheet), name);
            var last = ((char)('A' + rows[0].Length - 1)).ToString();
            Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"A1:{last}{rows.Length}"), SmallWorkbook.Filter(sheet));
            Assert.False(SmallWorkbook.HasFormula(sheet), name);
        }
    }

    [Fact]
    public void Another_reader_finds_each_job_with_its_numbers_and_dates()
    {
        var content = PaperSample.Of(SyntheticPlan.Spring());
        var rows = new SmallWorkbook(Workbook.Write(content)).Rows("Work");

        Assert.Equal("Week from|Date|Job|Batch|Crop|Variety|Grower|Pieces|Unit|Hours|What", string.Join('|', rows[0]));
        Assert.Equal(content.Tasks.Length, rows.Length - 1);
        foreach ((var task, var row) in content.Tasks.Zip(rows[1..]))
        {
            Assert.Equal(task.On, row[1]);
            Assert.Equal(task.Batch.Order.Id, row[3]);
            Assert.Equal((double)task.Pieces, row[7]);
            Assert.Equal(task.Hours is { } hours ? Math.Round(hours, 4) : null, row[9]);
        }
    }

    // 45 F is 7.2 C, and in Celsius it is told as what it is.
    [Theory]
    [InlineData(UnitSystem.Imperial, "Cold below, F", "Carry in below, F", 45.0)]
    [InlineData(UnitSystem.Metric, "Cold below, C", "Carry in below, C", 7.2)]
    public void Nights_are_told_in_the_units_of_the_site(UnitSystem units, string cold, string carryIn, double degrees)
    {
        var plan = SyntheticPlan.Spring();
        plan = plan with
        {
            Scenario = plan.Scenario with { Units = units },
            Batches = [.. plan.Batches.Select(batch => batch with { Crop = batch.Crop with { TableAboveC = 7.2 } })],
        };
        var rows = new SmallWorkbook(Workbook.Write(PaperSample.Of(plan))).Rows("Nights");
        Assert.Equal((cold, carryIn), (rows[0][5], rows[0][8]));
        Assert.All(rows[1..], row => Assert.Equal(degrees, (double)row[5]!, 9));
        Assert.True(rows.Length > 1);
    }

    [Fact]
    public void Batches_labels_and_order_agree_with_the_plan()
    {
        var plan = SyntheticPlan.Spring();
        var book = new SmallWorkbook(Workbook.Write(PaperSample.Of(plan)));

        var batches = book.Rows("Batches");
        foreach ((var batch, var row) in plan.Batches.Zip(batches[1..]))
        {
            Assert.Equal(
                [batch.Order.Id, (double)batch.Order.Plants, batch.SowOn, (double)batch.Trays, (double)batch.Flats, (double)batch.Seeds],
                new[] { row[0], row[4], row[5], row[13], row[15], row[16] }
            );
            Assert.Equal(batch.PotUpOn, row[8]);
        }

        Assert.Equal(plan.Batches.Sum(batch => batch.Trays + batch.Flats), book.Rows("Labels").Length - 1);
        var mix = book.Rows("Order").Single(row => row[0] is "mix" && row[6] is "litres");

        // The synthetic tray and flat take 3.4 litres each, 3.4 / 0.85 = 4 loose.
        Assert.Equal(plan.Batches.Sum(batch => batch.Trays + batch.Flats) * 4.0, (double)mix[5]!, 1e-6);
    }

    [Fact]
    public void Hostile_text_is_text_and_nothing_becomes_a_formula()
    {
        var plan = PaperSample.Hostile();
        var book = new SmallWorkbook(Workbook.Write(PaperSample.Of(plan)));

        Assert.All(book.Sheets.Values, sheet => Assert.False(SmallWorkbook.HasFormula(sheet)));
        var batches = book.Rows("Batches");
        foreach ((var batch, var row) in plan.Batches.Zip(batches[1..]))
        {
            Assert.Equal(PlainText.OneLine(batch.Order.Id).Trim(), row[0]);
            Assert.Equal(PlainText.OneLine(batch.Order.Note).Trim(), row[19]);
        }

        Assert.Contains(batches, row => row[1] is HostileNames.Formula);
        Assert.Contains(batches, row => row[2] is HostileNames.Formula);
    }

    [Fact]
    public void What_looks_like_a_numbered_letter_stays_as_written()
    {
        var plan = SyntheticPlan.Tiny();
        plan = plan with { Batches = [plan.Batches[0] with { Order = plan.Batches[0].Order with { Note = "row _x0041_ of 3" } }] };
        var bytes = Workbook.Write(PaperSample.Of(plan));
        Assert.Equal("row _x0041_ of 3", new SmallWorkbook(bytes).Rows("Batches")[1][19]);
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes() =>
        Assert.Equal(Workbook.Write(PaperSample.Of(SyntheticPlan.Spring())), Workbook.Write(PaperSample.Of(SyntheticPlan.Spring())));

    [Fact]
    public void A_plan_without_a_price_or_a_night_still_gives_every_sheet()
    {
        var plan = SyntheticPlan.Tiny();
        plan = plan with
        {
            Scenario = plan.Scenario with { Rules = new SiteRules() },
            Batches = [.. plan.Batches.Select(batch => batch with { Tables = [] })],
        };
        var book = new SmallWorkbook(Workbook.Write(PaperSample.Of(plan)));
        Assert.Equal(5, book.Sheets.Count);
        Assert.All(book.Rows("Order")[1..], row => Assert.Null(row[10]));
    }
}
