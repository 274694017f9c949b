using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Bottlenecks;
using BenchSim.Answers.Opening;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Cli.Tests;

/// <summary>"bottlenecks" and "run --bottlenecks" say which space holds the plan back; nothing is left to luck on the paper farm.</summary>
public sealed class BottlenecksTests
{
    // scenarios/by-hand: B goes out 3 days late, 100 plants: 300 late plant-days. Without limit on the mats it is sown with A on 1 March;
    // both are up on 4 March,
    // A takes four of five bench places and B's two trays find one. With room on the bench alone nothing is sown sooner. With both, A and B
    // are grown on Thursday, 18 March, and
    // A takes all four table places; B follows on Monday, 22 March, and goes out on Thursday, 25 March: late again. So no space and no pair
    // saves
    // anything but with the table, and mats with table: B1 stands on the bench and B2 on the mat, both grown on 18 March; B1 goes to the
    // table then, B2 first
    // to the bench and on Friday, 19 March, to the table; after three nights both go out on 22 March, as planned.
    [Fact]
    public void The_paper_farm_needs_mats_and_table_together()
    {
        using var folder = new TemporaryFolder();
        string[] before = [.. folder.Everything(), "paper", "paper/crops.csv", "paper/plan.csv", "paper/site.toml"];
        var found = Call.Run("bottlenecks", PaperFarm.In(folder), "--seasons", "3", "--all");

        Assert.Equal((0, ""), (found.Code, found.Error));
        var one = Call.Run("bottlenecks", folder.In("paper"), "--seasons", "1", "--all");
        one.Says(
            "One season cannot tell a bottleneck from chance. In it, one space alone without limit saves at most 0 of 300 late plant-days.",
            "\"Heat mats\" and \"Hardening table\" together, without limit on both, "
                + "save 300 late plant-days in that season, 300 more than the two save apart."
        );

        var result = Find(folder.In("paper"), 3);
        Assert.Equal(300, result.LatePlantDays);
        Assert.All(result.Unlimited, trial => Assert.Equal((0.0, 0), (trial.LatePlantDays.Difference, trial.LatePlantDays.Differing)));
        var pair = Assert.Single(result.Pairs, pair => pair.HelpsTogether);
        Assert.Equal(("Heat mats", "Hardening table"), (pair.First.Name, pair.Second.Name));
        Assert.Equal((-300.0, -300.0), (pair.LatePlantDays.Difference, pair.BeyondSum.Difference));
        found.Says(BottleneckSentences.Of(result));

        // README of scenarios/by-hand: the bench refuses 1 tray from 8 to 10 March and 2 from 11 to 17 March, 17 tray-days: 3 + 4 x 2 = 11
        // in the week from 8 March, 3 x 2 = 6 in the next;
        // the mats refuse 2 sowings from 1 to 3 March: 6.
        var wait = result.Waits.MaxBy(wait => wait.TrayDays.Mean)!;
        Assert.Equal(("Heat mats", "Bench", 17.0), (wait.From!.Name, wait.By.Name, wait.TrayDays.Mean));
        Assert.Equal(23, result.Waits.Sum(each => each.TrayDays.Mean), 1e-9);
        found.Says(WaitSentences.Reading(result.Waits, result.Plan));
        Assert.Contains("2027-03-01 6 - 2027-03-08 - 11 2027-03-15 - 6 season 6 17", found.Sentences, StringComparison.Ordinal);
        Assert.Equal(before, folder.Everything());
    }

    private static BottleneckResult Find(string scenario, int seasons) =>
        new BottleneckQuestion { Scenario = ScenarioSource.Folder(scenario), Play = new PlayWish(Seasons: seasons) }
            .Ask(Asked.Unwatched)
            .Result;

    [Fact]
    public void Machines_get_every_trial_and_the_threads_do_not_matter()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var found = Call.Run("bottlenecks", spring, "--seasons", "20", "--json", "--threads", "1");
        Assert.Equal(found.Output, Call.Run("bottlenecks", spring, "--seasons", "20", "--json", "--threads", "3").Output);
        using var json = JsonDocument.Parse(found.Output);
        var root = json.RootElement.GetProperty("bottlenecks");
        var spaces = root.GetProperty("unlimited").GetArrayLength();
        Assert.Equal(spaces, root.GetProperty("larger").GetArrayLength());
        Assert.Equal(spaces * (spaces - 1) / 2, root.GetProperty("pairs").GetArrayLength());
        double[] saved =
        [
            .. root.GetProperty("unlimited")
                .EnumerateArray()
                .Select(trial => trial.GetProperty("saved").GetProperty("late_plant_days").GetDouble()),
        ];
        Assert.Equal(saved.OrderDescending(), saved);
    }

    [Fact]
    public void A_unit_of_the_site_is_used()
    {
        using var folder = new TemporaryFolder();
        var found = Call.Run("bottlenecks", PaperFarm.In(folder, mats: "unit_places = 2"), "--seasons", "2", "--all");

        var result = Find(folder.In("paper"), 2);
        Assert.Equal(
            [("bench", 1), ("mats", 2), ("table", 1)],
            result.Larger.Select(trial => (trial.Space.Id, trial.PlacesAdded!.Value)).Order()
        );
        found.Says([.. BottleneckSentences.Of(result), "One mat more for \"Heat mats\" (2 places) ", "One place more on \"Bench\" "]);
    }

    [Fact]
    public void A_run_adds_them_to_its_report_where_asked()
    {
        using var folder = new TemporaryFolder();
        var paper = PaperFarm.In(folder);
        var run = Call.Run("run", paper, "--seasons", "3", "--bottlenecks", "--out", folder.In("report"), "--all");
        Assert.Equal((0, ""), (run.Code, run.Error));
        run.Says([
            .. BottleneckSentences.Of(Find(paper, 3)),
            "What holds the plan back:",
            "\"Heat mats\" and \"Hardening table\" help only together",
        ]);
        Assert.True(File.Exists(folder.In("report/tables/bottlenecks.csv")));
        Assert.Contains("<section id=\"bottlenecks\"", File.ReadAllText(folder.In("report/report.html")), StringComparison.Ordinal);
        using var json = JsonDocument.Parse(File.ReadAllText(folder.In("report/result.json")));
        Assert.Equal(3, json.RootElement.GetProperty("bottlenecks").GetProperty("pairs").GetArrayLength());

        // Without them the run is the same but for that part.
        Assert.Equal(0, Call.Run("run", paper, "--seasons", "3", "--out", folder.In("report")).Code);
        Assert.False(File.Exists(folder.In("report/tables/bottlenecks.csv")));
        using var machine = JsonDocument.Parse(Call.Run("run", paper, "--seasons", "3", "--bottlenecks", "--no-report", "--json").Output);

        // The answer, the pair, three spaces a unit larger and three without limit.
        Assert.Equal(8, machine.RootElement.GetProperty("bottlenecks").GetArrayLength());
    }

    [Fact]
    public void A_story_has_no_bottlenecks()
    {
        using var folder = new TemporaryFolder();
        var run = Call.Run("run", PaperFarm.In(folder), "--season", "1", "--batch", "A", "--bottlenecks");
        Assert.Equal(2, run.Code);
        Assert.Contains("--bottlenecks does not go with --season and --batch", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_of_the_files_and_a_stop_leave_nothing()
    {
        using var folder = new TemporaryFolder();
        var none = Call.Run("bottlenecks", folder.In("none"));
        Assert.Equal((2, ""), (none.Code, none.Output));
        var stopped = Call.Run(new CancellationToken(canceled: true), "bottlenecks", PaperFarm.In(folder));
        Assert.Equal((130, ""), (stopped.Code, stopped.Output));
    }

    // A heated house without a bench: nothing can stand in it, so nothing changes but what it burns and costs. It is heated from the day it
    // says, and without one never, as no tray is planned in it.
    [Theory]
    [InlineData("open = 2027-03-01\n", "fuel_electricity energy_cost")]
    [InlineData("", "")]
    public void A_useless_house_changes_nothing_but_its_cost(string open, string changes)
    {
        using var folder = new TemporaryFolder();
        var paper = PaperFarm.In(folder, house: PaperFarm.HoopHouse);
        Directory.CreateDirectory(Path.Combine(paper, "variants"));
        File.WriteAllText(
            Path.Combine(paper, "variants", "spare.toml"),
            "[[house]]\nid = \"spare\"\nnight = \"15 C\"\nvent = \"25 C\"\nday_lift = \"8 C\"\n" + open + PaperFarm.HoopHouse + "\n"
        );
        var compare = Call.Run("compare", paper, "--with", "spare", "--seasons", "3", "--json");
        Assert.Equal((0, ""), (compare.Code, compare.Error));
        using var json = JsonDocument.Parse(compare.Output);
        var variant = json.RootElement.GetProperty("comparison").GetProperty("variants")[0];
        Assert.Equal(0, variant.GetProperty("fits_change").GetProperty("difference").GetDouble());
        string[] changed =
        [
            .. variant
                .GetProperty("measures")
                .EnumerateArray()
                .Where(measure => measure.GetProperty("seasons_differing").GetInt32() > 0)
                .Select(measure => measure.GetProperty("measure").GetString()!),
        ];
        Assert.Equal(changes, string.Join(' ', changed));
    }
}
