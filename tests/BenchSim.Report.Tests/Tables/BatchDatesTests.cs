using System.Globalization;
using System.Text.Json;
using BenchSim.Report.Json;
using BenchSim.Report.Tables;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Results;
using static Support.SmallSite;

namespace BenchSim.Report.Tests.Tables;

/// <summary>The dates of a batch stand in their own columns: a batch of which no two are alike.</summary>
public class BatchDatesTests
{
    // One tray a day is sown, on days 0, 1 and 2, and one a day may be set out. Each is up three days later; the last, up on Saturday, day
    // 5, leaves the mat on Monday, day 7. The first is grown on day 17 and goes to the table. Due are the first on Monday, day 21, the
    // second then too, and the third, grown on Saturday and on the table from Monday, on day 24: out on days 21, 22 and 24, the median tray
    // on day 22.
    [Theory]
    [InlineData("sown_first", 0)]
    [InlineData("sown_last", 2)]
    [InlineData("off_mat", 7)]
    [InlineData("on_table", 17)]
    [InlineData("out_first", 21)]
    [InlineData("out_median", 22)]
    [InlineData("out_last", 24)]
    public void Each_date_stands_in_its_own_column(string column, int day)
    {
        var result = Played(Batch("a", 150, Monday));
        Assert.Equal(Iso(day), Cell(result, column + "_p50"));
        using var json = JsonDocument.Parse(ResultDocument.Write(result, []));
        Assert.Equal(
            Iso(day),
            json.RootElement.GetProperty("batches")[0].GetProperty(column).GetProperty("p50").GetString(),
            StringComparer.Ordinal
        );
    }

    // Sown on Wednesday, day 2, it is up on Saturday, leaves the mat on Monday, day 7, is grown on Saturday, day 19, goes to the table on
    // Monday, day 21, and is hardened after three nights; wanted a day later.
    [Theory]
    [InlineData("plan_sow", 2)]
    [InlineData("plan_emerge", 5)]
    [InlineData("plan_off_mat", 7)]
    [InlineData("plan_table", 21)]
    [InlineData("plan_ready", 24)]
    [InlineData("plan_set_out", 25)]
    public void Each_planned_date_stands_in_its_own_column(string column, int day) =>
        Assert.Equal(Iso(day), Cell(Played(Batch("a", 50, Monday.AddDays(2)) with { SetOut = Monday.AddDays(25) }), column));

    private static StudyResult Played(BatchOrder order) =>
        StudyRunner.Play(
            Plan(Scenario([Mat(9), Bench(9), Table(9)], [order], new SiteRules { SowTraysADay = 1, SetOutTraysADay = 1 })),
            new StudyOptions { Seasons = 1, Seed = 7 },
            null,
            CancellationToken.None
        );

    private static string Cell(StudyResult result, string column)
    {
        var rows = CsvRows.Of(BatchTable.Write(result));
        return rows[1][Array.IndexOf(rows[0], column)];
    }

    private static string Iso(int day) => Monday.AddDays(day).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
