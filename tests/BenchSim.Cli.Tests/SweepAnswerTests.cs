using System.Xml.Linq;

namespace BenchSim.Cli.Tests;

/// <summary>What a sweep says: its first screen, its page and its tables.</summary>
public sealed class SweepAnswerTests
{
    [Fact]
    public void The_answer_comes_first_and_fits_a_screen()
    {
        using var farms = new SweepFarms();
        farms.Sweep("name = \"County\"\nvariants = \"all\"\nseasons = 40\nvalue_sets = 4");
        var first = farms.Run();
        _ = FirstScreen.Of(first, farms.In(""));
        Assert.StartsWith("County: of 2 folders ", first.Output, StringComparison.Ordinal);
        first.Says("Least of all fits \"farms/east\" at best, ", "All plans: tables/plans.csv.");
        Assert.Equal(first.Output, farms.Run("--merge").Output);

        var all = farms.Run("--merge", "--all");
        all.Says("farms/east as planned", "farms/west warmer");
    }

    // 7 plans of the spring and 1 of the paper farm, 4 blocks each.
    [Fact]
    public void The_example_can_be_played()
    {
        using var folder = new TemporaryFolder();
        var example = Repository.File("scenarios/examples.toml");
        Call.Run("sweep", example, "--plan", "--out", folder.In("out"))
            .Says("The examples: 32 tasks, 1,600 seasons in all. No folder has faults.", "2 folders, 8 plans", "No results are there yet.");
        Call.Run("sweep", example, "--task=32", "--out", folder.In("out"))
            .Says("Task 32, \"by-hand\" as planned, seasons 151 to 200: played.");
    }

    // Sixty folders, each with a long name: the screen shows the first, the table has all.
    [Fact]
    public void Many_folders_are_cut_to_the_screen_with_the_name_of_the_table()
    {
        using var farms = new SweepFarms();
        foreach (var number in Enumerable.Range(1, 60))
        {
            farms.Write($"many/a-farm-of-a-long-name-beside-the-river-{number:00}/site.toml", FarmFolder.GoodSite);
            farms.Write($"many/a-farm-of-a-long-name-beside-the-river-{number:00}/plan.csv", FarmFolder.GoodPlan);
        }

        farms.Sweep("seasons = 2", "[\"many/*\"]");
        var call = farms.Run();
        Assert.Equal((0, ""), (call.Code, call.Error));
        _ = FirstScreen.Of(call, farms.In(""));
        call.Says("All plans: tables/plans.csv.");
        Assert.Equal(61, CsvRows.In(farms.In("county-sweep/answer/tables/plans.csv")).Length);
        Assert.Equal(60, Panels(farms).Length);
    }

    // Each plan of each folder stands on the page, with what the table says.
    [Fact]
    public void The_page_has_a_small_chart_a_folder_and_a_row_a_plan()
    {
        using var farms = new SweepFarms();
        farms.Sweep("variants = \"all\"\nseasons = 40");
        Assert.Equal(0, farms.Run().Code);
        var panels = Panels(farms);
        Assert.Equal(
            ["farms/east", "farms/west"],
            panels.Select(panel => panel.Element("h3")!.Value).Order(StringComparer.Ordinal).ToArray()
        );
        Assert.All(panels, panel => Assert.Equal(3, panel.Descendants("circle").Count()));
        Assert.Equal(
            ["as planned", "longer", "warmer"],
            panels[0].Descendants("g").Select(row => row.Elements("text").First().Value).ToArray()
        );
        string[] files =
        [
            .. Directory
                .EnumerateFiles(farms.Answer, "*", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(farms.Answer, file).Replace('\\', '/'))
                .Where(file => !file.StartsWith('.'))
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(["charts/plans.png", "columns.csv", "sweep.html", "sweep.json", "tables/plans.csv", "tables/spaces.csv"], files);

        var rows = CsvRows.In(Path.Combine(farms.Answer, "tables/plans.csv"));
        var described = CsvRows.In(Path.Combine(farms.Answer, "columns.csv"));
        Assert.Equal(
            rows[0],
            described.Where(row => string.Equals(row[0], "tables/plans.csv", StringComparison.Ordinal)).Select(row => row[1]),
            StringComparer.Ordinal
        );
        Assert.Equal(2, rows.Count(row => string.Equals(row[3], "yes", StringComparison.Ordinal)));
    }

    // Names from a file or a disk are text wherever they stand.
    [Fact]
    public void Hostile_names_are_text_on_the_screen_the_page_and_in_tables()
    {
        const string Folder = "=<script>alert('1')&amp;[bold]";
        using var farms = new SweepFarms();
        farms.Write($"odd/{Folder}/site.toml", FarmFolder.Site("\"Test farm\"", "\"<b>=Farm</b>\""));
        farms.Write($"odd/{Folder}/plan.csv", FarmFolder.GoodPlan);
        farms.Write($"odd/{Folder}/variants/<i>v.toml", "");
        farms.Write($"odd/{Folder}/variants/v'&.toml", "[[space]]\nid = \"table\"\nname = \"<u>table\"\nplaces = 1\n");
        farms.Sweep("name = \"<img src=x> [red] =1\"\nseasons = 2\nvariants = [\"as planned\", \"v'&\"]", "[\"odd/*\"]");
        foreach (var options in new[] { new[] { "--plan" }, ["--task=2"], [], ["--merge", "--all"], ["--merge", "--json"] })
        {
            var call = farms.Run(options);
            Assert.Equal((0, ""), (call.Code, call.Error));
            Assert.DoesNotContain(call.Output, c => char.IsControl(c) && c != '\n');
        }

        farms.Run("--merge").Says("<img src=x> [red] =1: of 1 folder");
        var page = File.ReadAllText(Path.Combine(farms.Answer, "sweep.html"));
        foreach (var tag in new[] { "<script", "<img", "<b>=", "<u>", "<i>v" })
        {
            Assert.DoesNotContain(tag, page, StringComparison.Ordinal);
        }

        Assert.Contains("&lt;script&gt;alert(&#39;1&#39;)&amp;amp;[bold]", page, StringComparison.Ordinal);
        var rows = CsvRows.In(Path.Combine(farms.Answer, "tables/plans.csv"));
        Assert.All(rows.Skip(1), row => Assert.StartsWith("odd/=<script>", row[0], StringComparison.Ordinal));
    }

    private static XElement[] Panels(SweepFarms farms)
    {
        var page = File.ReadAllText(Path.Combine(farms.Answer, "sweep.html"));
        var start = page.IndexOf("<ul class=\"panels\">", StringComparison.Ordinal);
        var end = page.IndexOf("</ul>", start, StringComparison.Ordinal) + "</ul>".Length;
        return [.. XElement.Parse(page[start..end]).Elements("li")];
    }
}
