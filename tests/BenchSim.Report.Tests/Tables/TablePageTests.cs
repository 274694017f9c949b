using BenchSim.Report.Tables;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Tables;

/// <summary>docs/report.md shows every column of the tables of a run as the program describes it, in their order, and no other.</summary>
public class TablePageTests
{
    private const string Page = "docs/report.md";
    private const string Head = "| column | unit | meaning |";

    [Fact]
    public void The_page_shows_every_column_of_the_tables_of_a_run()
    {
        var made = WithTables(File.ReadAllText(Repository.File(Page)));
        Assert.Equal(made.Split('\n'), Approved.Text(Page, made).Split('\n'));
    }

    // The page with the rows under each "### FILE" made anew; all else stays.
    private static string WithTables(string page)
    {
        var result = SyntheticStudy.Tiny();
        foreach (var (file, table) in Tables(result))
        {
            var from = page.IndexOf($"### {file}\n", StringComparison.Ordinal);
            Assert.True(from >= 0, $"{Page} has no section '{file}'.");
            var head = page.IndexOf(Head, from, StringComparison.Ordinal);
            var end = page.IndexOf("\n\n", head, StringComparison.Ordinal);
            page = page[..head] + string.Join('\n', [Head, "|---|---|---|", .. table.Columns.Select(Row)]) + page[end..];
        }

        return page;
    }

    private static (string File, CsvTable Table)[] Tables(StudyResult result) =>
        [
            ("tables/daily.csv", TableFiles.Daily(result)),
            ("tables/spaces.csv", TableFiles.Spaces(result)),
            ("tables/batches.csv", BatchTable.Write(result)),
            ("tables/growers.csv", TableFiles.Growers(result)),
            ("tables/fuel.csv", FuelTable.Write(result)),
            ("tables/waits.csv", WaitTable.Write(result)),
            ("tables/bottlenecks.csv", BottleneckTable.Write(SyntheticRoom.Bottlenecks(result.Plan))),
        ];

    private static string Row(Column column)
    {
        var name =
            column.IsBySpace ? column.Name + "_#"
            : column.Endings.IsEmpty ? column.Name
            : $"{column.Name}_{{{string.Join(',', column.Endings.Select(ending => ending.Name))}}}";
        string[] units = [.. column.Endings.Select(ending => ending.Unit).OfType<string>().Prepend(column.Unit)];
        return $"| `{name}` | {string.Join("; ", units)} | {column.Meaning} |";
    }
}
