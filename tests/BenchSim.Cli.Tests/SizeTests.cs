using System.Globalization;
using System.Text;
using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Run;
using BenchSim.Answers.Size;
using BenchSim.Report.Words;
using BenchSim.Study.Sizing;

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
        var size = Call.Run("size", PaperFarm.In(folder), "--space", "table", "--seasons", "40", "--all");
        Assert.Equal((0, ""), (size.Code, size.Error));
        var found = Find(folder.In("paper"), "table");
        Assert.Equal((3, 4), (found.Answer!.Places, found.Space.Places));

        // None of 40 seasons fits with two places; Wilson's interval of it ends at 3.8415 / (40 + 3.8415) = 8.76 %.
        var two = found.Curve.Single(point => point.Places == 2);
        Assert.Equal((0, 40), (two.Fits.Hits, two.Fits.Seasons));
        Assert.Equal(0.0876, two.Fits.High, 5e-5);
        size.Says(
            "- 3 places on \"Hardening table\" are enough, 1 fewer than there are: ",
            "- With 2 places it fits in 0 % of 40 seasons (95 % interval 0 to 8.8 %): that is too few.",
            "40 seasons of each, the same ones"
        );
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
        var size = Call.Run("size", WithRules(folder), "--space", "mats", "--seasons", "40", "--all");
        Assert.Equal((0, ""), (size.Code, size.Error));
        var found = Find(folder.In("paper"), "mats");
        Assert.Null(found.Answer);
        Assert.True(found.IsWhole);
        Assert.Equal((0, 40), (found.Unlimited.Fits.Hits, found.Everywhere.Fits.Hits));
        size.Says(
            "- No number of places on \"Heat mats\" meets the goal of 90 %: "
                + "with no limit there the plan fits in 0 % of 40 seasons (95 % interval 0 to 8.8 %).",
            "Other spaces stand in the way: with no limit on any space it would fit in 100 % of 40 seasons",
            "because every number from 0 to "
        );
    }

    // How many of the 60 seasons fit with the best number of places is what a run of the plan with as many counts; Wilson's interval of
    // them is worked out here from his formula.
    [Fact]
    [Trait("Category", "Slow")]
    public void Too_few_seasons_to_tell_is_said_so()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.In("spring");
        foreach (var file in Directory.EnumerateFiles(Repository.File("scenarios/two-house-spring")))
        {
            folder.Write("spring/" + Path.GetFileName(file), File.ReadAllBytes(file));
        }

        var size = Call.Run("size", spring, "--space", "table", "--seasons", "60");
        Assert.Equal((0, ""), (size.Code, size.Error));
        var found = Find(spring, "table", seasons: 60);
        Assert.Null(found.Answer);
        var best = found.Curve.MaxBy(point => point.Fits.Share)!.Places!.Value;
        folder.Write("spring/variants/best.toml", $"[[space]]\nid = \"table\"\nplaces = {best}\n");
        var run = new RunQuestion
        {
            Scenario = ScenarioSource.Folder(spring),
            Variant = "best",
            NoReport = true,
            Play = new PlayWish(Seasons: 60),
        }.Ask(Asked.Unwatched);
        var share = run.Result.Fits.Hits / 60.0;
        const double z = 1.959964;
        var centre = (share + (z * z / 120)) / (1 + (z * z / 60));
        var half = z / (1 + (z * z / 60)) * Math.Sqrt((share * (1 - share) / 60) + (z * z / (4 * 60 * 60)));
        Assert.InRange(0.9, centre - half, centre + half);
        size.Says(
            string.Create(
                CultureInfo.InvariantCulture,
                $"At best, with {best} places, the plan fits in {100 * share:0.#} % of 60 seasons "
                    + $"(95 % interval {100 * (centre - half):0.#} to {100 * (centre + half):0.#} %)."
            ),
            "places on \"Hardening table\" may be enough for the goal of 90 %: 60 seasons are too few to say.",
            "Whether more room elsewhere would do it is not clear either: with no limit on any space it fits in "
        );
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
        var found = Find(paper, "mats", variant: "large");
        Assert.Equal((4, 6, 40), (found.Space.Places, found.Answer!.Places, found.Answer.Fits.Hits));
        Assert.Equal(0, found.Curve.Single(point => point.Places == 5).Fits.Hits);
        size.Says(SizeSentences.Of(found));
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
        var found = Find(folder.In("paper"), "table", seasons: 10);

        // Wilson's interval of n hits of n begins at n / (n + 3.8415): 0.8985 at 34 and 0.9011 at 35.
        Assert.Equal(35, found.FewestSeasons);
        size.Says("Even if every season fitted, 10 seasons could not show it: play 35 or more.");
    }

    [Fact]
    public void Writes_the_curve_as_table_and_chart_by_the_rules_of_report_folders()
    {
        using var folder = new TemporaryFolder();
        var paper = PaperFarm.In(folder);
        string[] call = ["size", paper, "--space", "table", "--seasons", "40", "--out", folder.In("curve")];
        var size = Call.Run([.. call, "--all"]);
        Assert.EndsWith(
            $"Chart: {folder.In("curve/charts/size.png")}\nTables: {folder.In("curve/tables")}\n",
            size.Output,
            StringComparison.Ordinal
        );
        Assert.Equal(
            [".benchsim-files", ".benchsim-report", "charts", "charts/size.png", "columns.csv", "tables", "tables/size.csv"],
            folder.Everything().Where(name => name.StartsWith("curve/", StringComparison.Ordinal)).Select(name => name["curve/".Length..]),
            StringComparer.Ordinal
        );
        var table = File.ReadAllBytes(folder.In("curve/tables/size.csv"));
        var chart = File.ReadAllBytes(folder.In("curve/charts/size.png"));
        Assert.StartsWith("table,0,0,0,", Encoding.UTF8.GetString(table).Split("\r\n")[1], StringComparison.Ordinal);
        Assert.Equal(0, Call.Run([.. call, "--threads", "3", "--all"]).Code);
        Assert.Equal(table, File.ReadAllBytes(folder.In("curve/tables/size.csv")));
        Assert.Equal(chart, File.ReadAllBytes(folder.In("curve/charts/size.png")));

        File.WriteAllText(folder.In("curve/mine.txt"), "mine");
        var refused = Call.Run([.. call, "--all"]);
        Assert.Equal((2, ""), (refused.Code, refused.Output));
        Assert.Contains("holds 'mine.txt'", refused.Error, StringComparison.Ordinal);
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

    private static SizeResult Find(string scenario, string space, int seasons = 40, string? variant = null) =>
        new SizeQuestion
        {
            Scenario = ScenarioSource.Folder(scenario),
            Space = space,
            Variant = variant,
            Goal = new SizeGoal { Share = 0.9 },
            Play = new PlayWish(Seasons: seasons),
        }
            .Ask(Asked.Unwatched)
            .Result;

    private static string WithRules(TemporaryFolder folder)
    {
        var paper = PaperFarm.In(folder);
        var site = Path.Combine(paper, "site.toml");
        File.WriteAllText(site, File.ReadAllText(site).Replace("[rules]\n", "[rules]\n" + NoDayLate + "\n", StringComparison.Ordinal));
        return paper;
    }
}
