using System.Text;
using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>
/// "size" finds how many places are enough; nothing is left to luck on the paper farm, so the answer is worked out beside each test.
/// </summary>
public sealed class SizeTests
{
    private const string NoDayLate = "late_days = 0";

    // scenarios/by-hand, where 3 days late still count as in time. Three table places: A1 to A3 go to the table on 18 March and out on the
    // 22nd; A4 and B's two follow on the 22nd and go
    // out on the 25th, 3 days late; P has it to itself from the 29th. Two places: A1 and A2 until the 22nd, A3 and A4 until the 25th, B not
    // before Monday, the 29th, 7 days
    // late: 100 of 420 plants, more than the 5 % allowed. So three are enough, one fewer than there are.
    [Fact]
    public void Three_table_places_are_enough_for_the_paper_farm()
    {
        using var folder = new TemporaryFolder();
        var size = Call.Run("size", PaperFarm.In(folder), "--space", "table", "--seasons", "40");
        Assert.Equal((0, ""), (size.Code, size.Error));
        Assert.Contains("- 3 places on \"Hardening table\" are enough, 1 fewer than there are: ", size.Sentences, StringComparison.Ordinal);
        Assert.Contains(
            "- With 2 places it fits in 0 % of 40 seasons (95 % interval 0 to 8.8 %): that is too few.",
            size.Sentences,
            StringComparison.Ordinal
        );
        Assert.Contains("40 seasons of each on the same luck", size.Sentences, StringComparison.Ordinal);
    }

    [Fact]
    public void Machines_get_the_whole_curve()
    {
        using var folder = new TemporaryFolder();
        using var json = JsonDocument.Parse(Call.Run("size", PaperFarm.In(folder), "--space", "table", "--seasons", "40", "--json").Output);
        var root = json.RootElement;
        Assert.Equal((3, 4), (root.GetProperty("places").GetInt32(), root.GetProperty("places_now").GetInt32()));
        int[] met =
        [
            .. root.GetProperty("curve")
                .EnumerateArray()
                .Where(point => point.GetProperty("meets_goal").GetBoolean())
                .Select(point => point.GetProperty("places").GetInt32()),
        ];
        Assert.Equal(Enumerable.Range(3, root.GetProperty("largest").GetInt32() - 2), met);
        Assert.Equal(40 * (root.GetProperty("curve").GetArrayLength() + 2), root.GetProperty("seasons_in_all").GetInt32());
        Assert.Equal(40, root.GetProperty("unlimited").GetProperty("fits").GetProperty("seasons").GetInt32());
    }

    // With no day late allowed B fails, for it is sown late on mats that A fills (README of scenarios/by-hand); mats and table together
    // would mend it
    // (BottlenecksTests), so the mats alone do not, and the table stands in the way.
    [Fact]
    public void No_number_is_enough_where_another_space_stands_in_the_way()
    {
        using var folder = new TemporaryFolder();
        var size = Call.Run("size", WithRules(folder), "--space", "mats", "--seasons", "40");
        Assert.Equal((0, ""), (size.Code, size.Error));
        Assert.Contains(
            "No number of places on \"Heat mats\" meets the goal of 90 %: "
                + "with no limit there the plan fits in 0 % of 40 seasons (95 % interval 0 to 8.8 %).",
            size.Sentences,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Other spaces stand in the way: with no limit on any space it would fit in 100 % of 40 seasons",
            size.Sentences,
            StringComparison.Ordinal
        );
        Assert.Contains("because every number from 0 to ", size.Sentences, StringComparison.Ordinal);
    }

    // At the best of them 54 of 60 seasons fit, which is 90 %; the Wilson interval of 54 of 60 is 79.9 to 95.3 % and holds the goal.
    [Fact]
    [Trait("Category", "Slow")]
    public void Too_few_seasons_to_tell_is_said_so()
    {
        var size = Call.Run("size", Path.Combine(Repository.Root, "scenarios", "two-house-spring"), "--space", "table", "--seasons", "60");
        Assert.Equal((0, ""), (size.Code, size.Error));
        Assert.Contains(
            "No number of places on \"Hardening table\" is sure to meet the goal of 90 %: at best, with ",
            size.Sentences,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "fits in 90 % of 60 seasons (95 % interval 79.9 to 95.3 %). Whether that is enough cannot be told; more seasons could tell.",
            size.Sentences,
            StringComparison.Ordinal
        );
        Assert.Contains("Nor can it be told of more room elsewhere: ", size.Sentences, StringComparison.Ordinal);
        Assert.DoesNotContain("What is missing", size.Sentences, StringComparison.Ordinal);
    }

    // The variant has table places enough; then the mats must hold what is sown on 1 March: A's four trays and B's two.
    [Fact]
    public void A_variant_can_be_sized()
    {
        using var folder = new TemporaryFolder();
        var paper = WithRules(folder);
        Directory.CreateDirectory(Path.Combine(paper, "variants"));
        File.WriteAllText(
            Path.Combine(paper, "variants", "large.toml"),
            "[[space]]\nid = \"table\"\nplaces = 10\n[[space]]\nid = \"bench\"\nplaces = 10\n"
        );
        var size = Call.Run("size", paper, "--space", "mats", "--with", "large", "--seasons", "40");
        Assert.Equal((0, ""), (size.Code, size.Error));
        Assert.Contains(
            "- 6 places on \"Heat mats\" are enough, 2 more than there are: "
                + "the plan then fits in 100 % of 40 seasons (95 % interval 91.2 to 100 %), so in at least the 90 % asked for.",
            size.Sentences,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "- With 5 places it fits in 0 % of 40 seasons (95 % interval 0 to 8.8 %): that is too few.",
            size.Sentences,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("A house more", size.Sentences, StringComparison.Ordinal);
    }

    [Fact]
    public void A_space_is_found_however_its_accents_are_written()
    {
        // The e with an acute accent as one character in the site, and as two on the command line.
        using var folder = new TemporaryFolder();
        var paper = PaperFarm.In(folder);
        var site = Path.Combine(paper, "site.toml");
        File.WriteAllText(site, File.ReadAllText(site).Replace("id = \"table\"", "id = \"t\u00e9\"", StringComparison.Ordinal));
        Assert.Equal(
            (0, ""),
            (
                Call.Run("size", paper, "--space", "te\u0301", "--seasons", "2").Code,
                Call.Run("size", paper, "--space", "te\u0301", "--seasons", "2").Error
            )
        );
    }

    [Fact]
    public void Too_few_seasons_to_show_the_goal_are_told()
    {
        using var folder = new TemporaryFolder();
        var size = Call.Run("size", PaperFarm.In(folder), "--space", "table", "--seasons", "10");
        Assert.Contains(
            "Even if every season fitted, 10 seasons could not show it: play 35 or more.",
            size.Sentences,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Writes_the_curve_as_table_and_chart_by_the_rules_of_report_folders()
    {
        using var folder = new TemporaryFolder();
        var paper = PaperFarm.In(folder);
        string[] call = ["size", paper, "--space", "table", "--seasons", "40", "--out", folder.In("curve")];
        var size = Call.Run(call);
        Assert.EndsWith(
            $"Chart: {folder.In("curve/charts/size.png")}\nTables: {folder.In("curve/tables")}\n",
            size.Output,
            StringComparison.Ordinal
        );
        Assert.Equal(
            [".benchsim-report", "charts", "charts/size.png", "tables", "tables/size.csv"],
            folder.Everything().Where(name => name.StartsWith("curve/", StringComparison.Ordinal)).Select(name => name["curve/".Length..]),
            StringComparer.Ordinal
        );
        var table = File.ReadAllBytes(folder.In("curve/tables/size.csv"));
        var chart = File.ReadAllBytes(folder.In("curve/charts/size.png"));
        Assert.StartsWith("table,0,0,0,", Encoding.UTF8.GetString(table).Split("\r\n")[1], StringComparison.Ordinal);
        Assert.Equal(0, Call.Run([.. call, "--threads", "3"]).Code);
        Assert.Equal(table, File.ReadAllBytes(folder.In("curve/tables/size.csv")));
        Assert.Equal(chart, File.ReadAllBytes(folder.In("curve/charts/size.png")));

        File.WriteAllText(folder.In("curve/mine.txt"), "mine");
        var refused = Call.Run(call);
        Assert.Equal((2, ""), (refused.Code, refused.Output));
        Assert.Contains("holds 'mine.txt'", refused.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Does_not_take_the_place_of_a_run()
    {
        using var folder = new TemporaryFolder();
        var paper = PaperFarm.In(folder);
        Assert.Equal(0, Call.Run("run", paper, "--seasons", "1", "--out", folder.In("report")).Code);
        var before = folder.Everything();
        var size = Call.Run("size", paper, "--space", "table", "--seasons", "1", "--out", folder.In("report"));
        Assert.Equal((2, ""), (size.Code, size.Output));
        Assert.Contains("a report of another kind", size.Error, StringComparison.Ordinal);
        Assert.Equal(before, folder.Everything());
    }

    [Theory]
    [InlineData("There is no space \"tabel\" in site.toml; did you mean \"table\"?", "--space", "tabel")]
    [InlineData("There is no space \"x\" in site.toml; its spaces are \"mats\", \"bench\" and \"table\".", "--space", "x")]
    [InlineData("--space", "--seasons", "1")]
    [InlineData("write a share above 0 and below 1", "--space", "table", "--goal", "100%")]
    [InlineData("write a share above 0 and below 1", "--space", "table", "--confidence", "0")]
    [InlineData("--goal \"much\" cannot be used; write a share above 0 and below 1, such as 0.9", "--space", "table", "--goal", "much")]
    [InlineData("there is no variant \"none\"", "--space", "table", "--with", "none")]
    public void Faults_say_what_would_be_right(string words, params string[] asked)
    {
        using var folder = new TemporaryFolder();
        var size = Call.Run(["size", PaperFarm.In(folder), .. asked]);
        Assert.Equal((2, ""), (size.Code, size.Output));
        Assert.Contains(words, size.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stop_leaves_nothing()
    {
        using var folder = new TemporaryFolder();
        var paper = PaperFarm.In(folder);
        var stopped = Call.Run(new CancellationToken(canceled: true), "size", paper, "--space", "table", "--out", folder.In("curve"));
        Assert.Equal((130, ""), (stopped.Code, stopped.Output));
        Assert.False(Directory.Exists(folder.In("curve")));
    }

    private static string WithRules(TemporaryFolder folder)
    {
        var paper = PaperFarm.In(folder);
        var site = Path.Combine(paper, "site.toml");
        File.WriteAllText(site, File.ReadAllText(site).Replace("[rules]\n", "[rules]\n" + NoDayLate + "\n", StringComparison.Ordinal));
        return paper;
    }
}
