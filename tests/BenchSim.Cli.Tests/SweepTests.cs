using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"sweep" asks the same of many folders, variants and sets of values, as tasks that can be played anywhere.</summary>
public sealed class SweepTests
{
    private const string Small = "variants = \"all\"\nseasons = 30\nseasons_per_task = 8";

    // The seasons of all blocks together are those of a run, whoever plays them.
    [Theory]
    [InlineData("two-house-spring", "as planned")]
    [InlineData("two-house-spring", "more-mats")]
    [InlineData("two-house-spring", "week-later")]
    [InlineData("by-hand", "as planned")]
    public void At_the_values_as_given_the_answer_is_that_of_a_run(string example, string plan)
    {
        using var farms = new SweepFarms();
        var farm = Repository.File($"scenarios/{example}");
        farms.Sweep($"seasons = 20\nseasons_per_task = 6\nvariants = [\"{plan}\"]", $"[\"{farm}\"]");
        var sweep = farms.Run("--json");
        Assert.Equal((0, ""), (sweep.Code, sweep.Error));
        string[] with = string.Equals(plan, "as planned", StringComparison.Ordinal) ? [] : ["--with", plan];
        Assert.Equal(0, Call.Run(["run", farm, "--seasons=20", "--out", farms.In("run"), .. with]).Code);

        using var swept = JsonDocument.Parse(sweep.Output);
        using var ran = JsonDocument.Parse(File.ReadAllText(farms.In("run/result.json")));
        var one = swept.RootElement.GetProperty("folders")[0].GetProperty("plans")[0];
        foreach (var chance in new[] { "fits", "fits_weather_counted" })
        {
            Assert.True(JsonElement.DeepEquals(ran.RootElement.GetProperty(chance), one.GetProperty(chance)), chance);
        }

        foreach (var figure in new[] { "plants_in_time", "late_plant_days" })
        {
            Assert.Equal(
                ran.RootElement.GetProperty(figure).GetProperty("mean").GetRawText(),
                one.GetProperty(figure).GetProperty("mean").GetRawText()
            );
        }

        Assert.Equal(ran.RootElement.GetProperty("plants_wanted").GetRawText(), one.GetProperty("plants_wanted").GetRawText());
    }

    // 2 folders x 3 plans x 4 blocks of 8, 8, 8 and 6 seasons.
    [Fact]
    public void Shares_played_apart_and_tasks_one_by_one_give_the_same_bytes_as_one_call()
    {
        using var farms = new SweepFarms();
        farms.Sweep(Small + "\nvalue_sets = 2");
        var whole = farms.Run("--threads=3");
        Assert.Equal((0, ""), (whole.Code, whole.Error));
        var expected = TemporaryFolder.Files(farms.In("county-sweep"));
        Assert.Equal(72, expected.Keys.Count(name => name.EndsWith(".task", StringComparison.Ordinal)));

        foreach (var share in new[] { "3/3", "1/3", "2/3" })
        {
            Assert.Equal(0, farms.Run("--out", farms.In("shares"), "--shard", share, "--threads=1").Code);
        }

        Assert.Equal(0, farms.Run("--out", farms.In("shares"), "--merge").Code);
        AssertSame(expected, TemporaryFolder.Files(farms.In("shares")));

        // From the last to the first, some of them twice.
        foreach (var number in Enumerable.Range(1, 72).Reverse().Concat([7, 70, 1]))
        {
            Assert.Equal(0, farms.Run("--out", farms.In("singles"), $"--task={number}").Code);
        }

        Assert.Equal(0, farms.Run("--out", farms.In("singles"), "--merge").Code);
        AssertSame(expected, TemporaryFolder.Files(farms.In("singles")));
    }

    [Fact]
    public void What_is_there_is_not_played_again()
    {
        using var farms = new SweepFarms();
        farms.Sweep(Small);
        var first = farms.Run("--task=2");
        first.Says("Task 2, \"farms/east\" as planned, seasons 9 to 16: played.");
        Assert.EndsWith($"Result: {farms.Task(2)}\n", first.Output, StringComparison.Ordinal);
        var written = Stamp(farms.Task(2));
        farms.Run("--task=2").Says("its result is there already, and was left as it is.");
        farms.Run("--shard=2/4").Says("Share 2 of 4: 6 tasks of 24. 5 tasks played now, 1 result there before.");
        farms.Run().Says("18 tasks played now, 6 results there before.");
        Assert.Equal(written, Stamp(farms.Task(2)));
    }

    [Fact]
    public void What_is_lacking_is_named_and_nothing_is_written()
    {
        using var farms = new SweepFarms();
        farms.Sweep(Small);
        foreach (var number in new[] { 1, 2, 4, 5, 6, 10, 23 })
        {
            Assert.Equal(0, farms.Run($"--task={number}").Code);
        }

        var merge = farms.Run("--merge");
        Assert.Equal((1, ""), (merge.Code, merge.Error));
        merge.Says(
            "Nothing was written: of 24 tasks 17 have no result that can be merged: 3, 7 to 9, 11 to 22 and 24.",
            "The first is task 3, \"farms/east\" as planned, seasons 17 to 24.",
            "17 not played yet."
        );
        Assert.False(Path.Exists(farms.Answer));

        using var json = JsonDocument.Parse(farms.Run("--merge", "--json").Output);
        Assert.Equal(17, json.RootElement.GetProperty("missing").GetInt32());
        Assert.Equal(
            ["3-3", "7-9", "11-22", "24-24"],
            json.RootElement.GetProperty("ranges")
                .EnumerateArray()
                .Select(range => $"{range.GetProperty("first")}-{range.GetProperty("last")}")
                .ToArray()
        );
        farms.Run("--plan").Says("24 tasks, 180 seasons in all.", "7 results are there.");
    }

    // Cut short, changed, of another task, of another build, of other files: each is found, told apart, and played again.
    [Fact]
    public void Results_that_cannot_be_merged_are_told_apart_and_played_again()
    {
        using var farms = new SweepFarms();
        farms.Sweep(Small);
        Assert.Equal(0, farms.Run().Code);
        var expected = TemporaryFolder.Files(farms.In("county-sweep"));
        File.WriteAllBytes(farms.Task(3), File.ReadAllBytes(farms.Task(3))[..100]);
        File.WriteAllBytes(farms.Task(4), []);
        File.Copy(farms.Task(6), farms.Task(5), overwrite: true);
        using (var task = JsonDocument.Parse(File.ReadAllLines(farms.Task(8))[1]))
        {
            farms.Forge(8, task.RootElement.GetProperty("build").GetString()!, "0123456789abcdef");
            farms.Forge(9, "\"key\":\"", "\"key\":\"0");
        }

        File.Delete(farms.Task(24));
        var merge = farms.Run("--merge", "--json");
        Assert.Equal(1, merge.Code);
        using var json = JsonDocument.Parse(merge.Output);
        Assert.Equal(
            [6, 1, 3, 1, 1],
            new[] { "lacking", "missing", "damaged", "other_build", "other_files" }.Select(name =>
                json.RootElement.GetProperty(name).GetInt32()
            )
        );
        farms
            .Run("--merge")
            .Says(
                "of 24 tasks 6 have no result that can be merged: 3 to 5, 8 to 9 and 24.",
                "1 not played yet.",
                "3 damaged or cut short.",
                "1 played by another build of BenchSim, which may play otherwise.",
                "1 of other files or settings than there are now."
            );
        farms.Run().Says("6 tasks played now, 18 results there before; 5 earlier results were out of date.");
        AssertSame(expected, TemporaryFolder.Files(farms.In("county-sweep")));
    }

    [Fact]
    public void A_change_of_one_folder_plays_only_that_folder_again()
    {
        using var farms = new SweepFarms();
        farms.Sweep(Small);
        Assert.Equal(0, farms.Run().Code);
        var east = Enumerable.Range(1, 12).Select(number => Stamp(farms.Task(number))).ToArray();

        // A variant concerns its own tasks alone: those of "warmer" are the last four of the west.
        farms.Write("farms/west/variants/warmer.toml", "[[house]]\nid = \"main\"\nnight = \"66 F\"\n");
        farms.Run("--merge").Says("of 24 tasks 4 have no result that can be merged: 21 to 24.", "4 of other files or settings");
        farms.Run().Says("4 tasks played now, 20 results there before; 4 earlier results were out of date.");
        farms.Write("farms/west/plan.csv", FarmFolder.GoodPlan + "b,tomato,50,2027-03-08\n");
        farms.Run().Says("12 tasks played now, 12 results there before; 12 earlier results were out of date.");
        Assert.Equal(east, Enumerable.Range(1, 12).Select(number => Stamp(farms.Task(number))));
    }

    // The paper farm writes every value of its own: no set of values differs from those given.
    [Fact]
    public void Where_no_value_is_uncertain_all_sets_say_the_same()
    {
        using var farms = new SweepFarms();
        farms.Sweep("seasons = 10\nvalue_sets = 4", $"[\"{Repository.File("scenarios/by-hand")}\"]");
        using var json = JsonDocument.Parse(farms.Run("--json").Output);
        var folder = json.RootElement.GetProperty("folders")[0];
        Assert.Equal(0, folder.GetProperty("uncertain_values").GetInt32());
        var plan = folder.GetProperty("plans")[0];
        foreach (var end in new[] { "low", "middle", "high" })
        {
            Assert.Equal(
                plan.GetProperty("fits").GetProperty("share").GetRawText(),
                plan.GetProperty("fits_over_sets").GetProperty(end).GetRawText()
            );
        }
    }

    [Fact]
    public void Faults_of_all_folders_are_told_in_one_pass_and_nothing_is_played()
    {
        using var farms = new SweepFarms();
        farms.Sweep(Small);
        farms.Write("farms/east/plan.csv", FarmFolder.GoodPlan.Replace("tomato", "tomatto", StringComparison.Ordinal));
        farms.Write("farms/west/variants/warmer.toml", "[[house]]\nid = \"main\"\nnight = \"66 X\"\n");
        File.Delete(farms.In("farms/west/variants/longer.toml"));
        farms.Write("farms/west/variants/longer.toml", "many = 1\n");
        foreach (var way in new[] { "--plan", "--shard=1/2", "--merge", "--json" })
        {
            var call = farms.Run(way);
            Assert.Equal(2, call.Code);
            Assert.Equal(
                [
                    $"{farms.In("farms/east/plan.csv")}:2:3: there is no crop \"tomatto\"; did you mean \"tomato\"",
                    $"{farms.In("farms/west/variants/longer.toml")}:1:1: there is no key \"many\" in a variant; ",
                    $"{farms.In("farms/west/variants/warmer.toml")}:3:9: night ",
                    "3 faults found. Mend them and try again.",
                ],
                call.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                    .Select(line =>
                        line.Contains("longer.toml", StringComparison.Ordinal) ? line[..(line.IndexOf(';', StringComparison.Ordinal) + 2)]
                        : line.Contains("warmer.toml", StringComparison.Ordinal)
                            ? line[..(line.IndexOf("night ", StringComparison.Ordinal) + 6)]
                        : line
                    )
                    .ToArray()
            );
        }

        Assert.False(Path.Exists(farms.In("county-sweep")));
    }

    // A task needs its own folder alone.
    [Fact]
    public void A_task_is_played_whatever_is_wrong_with_other_folders()
    {
        using var farms = new SweepFarms();
        farms.Sweep(Small);
        farms.Write("farms/west/plan.csv", "");
        Assert.Equal(0, farms.Run("--task=1").Code);
        Assert.Equal(2, farms.Run("--task=13").Code);
    }

    [Fact]
    public void What_is_stopped_says_how_to_go_on()
    {
        using var farms = new SweepFarms();
        farms.Sweep(Small);
        var stopped = Call.Run(new CancellationToken(canceled: true), "sweep", farms.File);
        Assert.Equal(130, stopped.Code);
        Assert.Equal("Stopped with no tasks of 24 done. They are kept: the same command goes on from there.\n", stopped.Error);
        Assert.Equal(0, farms.Run().Code);
    }

    [Fact]
    public void A_file_that_is_no_result_stays_as_it_is()
    {
        using var farms = new SweepFarms();
        farms.Sweep(Small);
        farms.Write("county-sweep/tasks/00000/00000005.task", "Our notes on the spring");
        var call = farms.Run("--task=5");
        Assert.Equal(2, call.Code);
        Assert.EndsWith(
            "is no result of a task, and stays as it is. Move it away, or name another folder with --out.\n",
            call.Error,
            StringComparison.Ordinal
        );
        Assert.Equal("Our notes on the spring", File.ReadAllText(farms.Task(5)));
        farms.Write("county", "a file");
        Assert.Equal(2, farms.Run("--out", farms.In("county"), "--task=1").Code);
        Assert.Equal(2, farms.Run("--out", farms.In("county")).Code);
    }

    [Theory]
    [InlineData("\" has no task 25; write a number from 1 to 24.", "--task=25")]
    [InlineData("--task \"0\" cannot be used; write a whole number from 1 to 10,000,000, without commas.", "--task=0")]
    [InlineData("--shard \"3/2\" cannot be used; write the number of the share and how many there are, such as 2/8", "--shard=3/2")]
    [InlineData("--task and --merge contradict each other; write one of them.", "--task=1", "--merge")]
    [InlineData("--plan and --shard contradict each other; write one of them.", "--shard=1/2", "--plan")]
    public void What_cannot_be_asked_is_one_sentence(string why, params string[] options)
    {
        using var farms = new SweepFarms();
        farms.Sweep(Small);
        var call = farms.Run(options);
        Assert.Equal(2, call.Code);
        Assert.Contains(why, call.Error, StringComparison.Ordinal);
        Assert.Equal("", call.Output);
    }

    [Fact]
    public void More_tasks_than_a_sweep_may_have_are_refused()
    {
        using var farms = new SweepFarms();
        farms.Sweep("variants = \"all\"\nseasons = 1000000\nseasons_per_task = 1\nvalue_sets = 1");
        var call = farms.Run("--plan");
        Assert.Equal(2, call.Code);
        Assert.Contains(
            "makes 12,000,000 tasks, and may make up to 10,000,000. Raise seasons_per_task, or split it into several files.",
            call.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_sweep_plays_no_more_shares_than_it_has_tasks()
    {
        using var farms = new SweepFarms();
        farms.Sweep(Small);
        farms.Run("--shard=99/100").Says("Share 99 of 100: no tasks of 24.");
    }

    private static void AssertSame(SortedDictionary<string, byte[]> expected, SortedDictionary<string, byte[]> actual)
    {
        Assert.Equal(expected.Keys, actual.Keys, StringComparer.Ordinal);
        Assert.All(expected, file => Assert.Equal(file.Value, actual[file.Key]));
    }

    private static (DateTime, string) Stamp(string file) => (File.GetLastWriteTimeUtc(file), File.ReadAllText(file));
}
