using System.Text;
using System.Text.Json;
using BenchSim.Cli.Commands;
using BenchSim.Report.Writing;

namespace BenchSim.Cli.Tests;

/// <summary>"run" plays, prints the verdict, writes the report whole or not at all, and keeps its exit codes.</summary>
public sealed class RunTests
{
    private const string Few = "--seasons=20";

    private const string Enough = "together have places enough";

    private const string AlwaysMild = """
        kind = "constant"
        low = 12
        high = 20
        """;

    [Fact]
    public void Prints_the_verdict_and_writes_the_report_beside_the_folder()
    {
        using var folder = new TemporaryFolder();
        var run = Call.Run("run", folder.Starter(), Few, "--all");
        Assert.Equal(0, run.Code);
        Assert.Empty(run.Error);
        Assert.StartsWith("Example market garden: In a usual year ", run.Output, StringComparison.Ordinal);
        Assert.Contains("20 seasons (95 % interval ", run.Sentences, StringComparison.Ordinal);
        Assert.EndsWith($"Report: {folder.In("spring-report/report.html")}\n", run.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(folder.In("spring-report/report.html")));
        Assert.True(File.Exists(folder.In("spring-report/inputs/plan.csv")));
    }

    [Fact]
    public void Trays_in_the_aisle_come_with_a_caution()
    {
        const string caution = "Trays in the aisle: keep exits and walkways clear.";
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        foreach (var more in new[] { Array.Empty<string>(), ["--all"] })
        {
            Assert.Contains(caution, Call.Run(["run", spring, Few, "--no-report", .. more]).Sentences, StringComparison.Ordinal);
        }

        var site = Path.Combine(spring, "site.toml");
        File.WriteAllText(site, File.ReadAllText(site).Replace("\norder = [\"aisle\", ", "\norder = [", StringComparison.Ordinal));
        Assert.DoesNotContain(caution, Call.Run("run", spring, Few, "--no-report").Sentences, StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_run_replaces_the_report_with_the_same_bytes()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        Assert.Equal(0, Call.Run("run", spring, Few, "--threads=1").Code);
        var page = File.ReadAllBytes(folder.In("spring-report/report.html"));
        var result = File.ReadAllBytes(folder.In("spring-report/result.json"));
        Assert.Equal(0, Call.Run("run", spring, Few, "--threads=3").Code);
        Assert.Equal(page, File.ReadAllBytes(folder.In("spring-report/report.html")));
        Assert.Equal(result, File.ReadAllBytes(folder.In("spring-report/result.json")));
    }

    // 2,000 plants of celeriac in trays of 200 cells are more than 10 trays, and it wants 10 C at night: the cold bench's 100 places are of
    // no use to it.
    [Fact]
    public void A_full_bench_beside_an_empty_one_that_is_too_cold_is_named()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(
            folder,
            "celeriac,celeriac,2000,2027-04-01,200-cell",
            Space("bench", "warm", 10) + Space("bench", "cold", 100) + Space("table", "", 100),
            AlwaysMild
        );
        var run = Call.Run("run", farm, Few, "--all");
        Assert.Equal((0, ""), (run.Code, run.Error));
        run.Says(
            "The benches run out:",
            $"All benches {Enough}: what waits is meant for \"warm-bench\", "
                + "and may not stand in every other space (too cold for it, not on its list, or shut for a time)."
        );
        var page = File.ReadAllText(folder.In("farm-report/report.html"));
        Assert.DoesNotContain("There are places enough of every kind in all seasons played", page, StringComparison.Ordinal);
        Assert.Contains(
            "Counted together, the spaces of each kind have places enough in all seasons played, and yet trays are refused a place.",
            page,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("others take the rest", page, StringComparison.Ordinal);
    }

    // The table of 4 places holds the lettuce up, which may stand on both benches; the basil, which may not, never waits.
    [Fact]
    public void What_may_stand_everywhere_is_not_said_to_be_kept_out()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(
            folder,
            "e,basil,60,2027-03-01,128-cell\na,lettuce,3000,2027-03-08,128-cell\n"
                + "b,lettuce,3000,2027-04-12,128-cell\nc,lettuce,3000,2027-05-10,128-cell",
            Space("bench", "warm", 20) + Space("bench", "cold", 20) + Space("table", "", 4),
            AlwaysMild
        );
        var run = Call.Run("run", farm, Few, "--no-report", "--all");
        Assert.Equal((0, ""), (run.Code, run.Error));
        run.Says("The benches run out too: in all seasons");
        Assert.DoesNotContain(Enough, run.Sentences, StringComparison.Ordinal);
    }

    // Twenty places of benches, in one or two, that every crop may use: late celeriac and the lettuce want 22 in a few seasons.
    [Theory]
    [InlineData(20, 0)]
    [InlineData(10, 10)]
    public void Benches_that_are_short_in_a_few_seasons_are_called_short_and_not_forbidden(int first, int second)
    {
        using var folder = new TemporaryFolder();
        var more = second > 0 ? Space("bench", "warm", second).Replace("warm-bench", "second", StringComparison.Ordinal) : "";
        var farm = Farm(
            folder,
            "a,celeriac,2000,2027-02-15,200-cell\nb,lettuce,1500,2027-05-15,128-cell",
            Space("bench", "warm", first) + more + Space("table", "", 200),
            """
            kind = "normals"
            low = [-5, -4, 0, 5, 9, 13, 15, 14, 10, 5, 1, -3]
            high = [2, 4, 9, 15, 20, 24, 26, 25, 20, 14, 8, 3]
            rain = [60, 60, 60, 60, 60, 60, 60, 60, 60, 60, 60, 60]
            rain_days = [10, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10]
            """
        );
        var run = Call.Run("run", farm, "--seasons", "100", "--all");
        Assert.Equal((0, ""), (run.Code, run.Error));
        run.Says("The benches run out:");
        Assert.DoesNotContain(Enough, run.Sentences, StringComparison.Ordinal);
        var page = File.ReadAllText(folder.In("farm-report/report.html"));
        Assert.Contains("In most seasons there are places enough of every kind; in some there are not.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void No_report_writes_nothing()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var before = folder.Everything();
        Assert.Equal(0, Call.Run("run", spring, Few, "--no-report").Code);
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void Refuses_a_report_folder_it_did_not_make_before_it_plays()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        Directory.CreateDirectory(folder.In("mine"));
        File.WriteAllText(folder.In("mine/note.txt"), "mine");
        var run = Call.Run("run", spring, Few, "--out", folder.In("mine"));
        Assert.Equal(2, run.Code);
        Assert.Empty(run.Output);
        Assert.Equal(FolderRefusals.NotOurs(folder.In("mine")) + "\n", run.Error);
        Assert.Equal("mine", File.ReadAllText(folder.In("mine/note.txt")));
    }

    [Theory]
    [InlineData("0", 0)]
    [InlineData("0%", 0)]
    [InlineData("1", 1)]
    [InlineData("100%", 1)]
    public void Only_a_missed_requirement_gives_exit_code_1(string required, int code)
    {
        // The starter plan asks for peppers a week before they can be ready, so it cannot fit in all seasons.
        using var folder = new TemporaryFolder();
        var run = Call.Run("run", folder.Starter(), Few, "--no-report", "--require", required);
        Assert.Equal(code, run.Code);
        Assert.Contains(code == 0 ? ": met." : ": not met.", run.Sentences, StringComparison.Ordinal);
    }

    [Fact]
    public void Machines_get_one_json_object()
    {
        using var folder = new TemporaryFolder();
        var run = Call.Run("run", folder.Starter(), Few, "--json", "--seed", "7", "--require", "100%");
        Assert.Equal(1, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        var root = json.RootElement;
        Assert.Equal(2, root.GetProperty("version").GetInt32());
        Assert.Equal(20, root.GetProperty("seasons").GetInt32());
        Assert.Equal("7", root.GetProperty("seed").GetString());
        Assert.False(root.GetProperty("require").GetProperty("met").GetBoolean());
        Assert.Equal(folder.In("spring-report"), root.GetProperty("report").GetString());
        Assert.NotEqual(0, root.GetProperty("verdict").GetProperty("sentences").GetArrayLength());
    }

    [Fact]
    public void Faults_stop_the_run_with_exit_code_2()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        File.Delete(Path.Combine(spring, "plan.csv"));
        var run = Call.Run("run", spring);
        Assert.Equal(2, run.Code);
        Assert.StartsWith("plan.csv:0:0: ", run.Error, StringComparison.Ordinal);
        Assert.EndsWith("1 fault found. Mend it and try again.\n", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(spring + "-report"));
    }

    [Fact]
    public void Cancelled_before_it_begins_it_leaves_nothing_behind()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var before = folder.Everything();
        var run = Call.Run(new CancellationToken(canceled: true), "run", spring, Few);
        Assert.Equal(130, run.Code);
        Assert.Equal("Stopped. Nothing was left half-written.\n", run.Error);
        Assert.Empty(run.Output);
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void Cancelled_while_the_bar_is_drawn_it_leaves_nothing_behind()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var before = folder.Everything();
        using var stop = new CancellationTokenSource();
        using var error = new StoppingWriter(stop);
        var code = CommandLine.Run(["run", spring, "--seasons=1000000"], TextWriter.Null, error, terminal: true, stop.Token);
        Assert.Equal(130, code);
        Assert.Equal(before, folder.Everything());
    }

    // The report is written first: whoever stops it while it prints has the whole of it.
    [Fact]
    public void Cancelled_while_it_prints_it_keeps_the_report()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        using var stop = new CancellationTokenSource();
        using var output = new StoppingWriter(stop);
        using var error = new StringWriter();
        var code = CommandLine.Run(["run", spring, Few], output, error, terminal: false, stop.Token);
        Assert.Equal(0, code);
        Assert.True(File.Exists(folder.In("spring-report/report.html")));
    }

    // The folder that the report grows in shows that the writing has begun. Should the whole report be written before this thread sees
    // it, the run ends well, and another is tried.
    [Fact]
    public void Cancelled_while_it_writes_the_report_it_leaves_nothing_behind_and_says_no_verdict()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var before = folder.Everything();
        var code = 0;
        for (var tries = 0; code == 0 && tries < 20; tries++)
        {
            using var stop = new CancellationTokenSource();
            using var output = new StringWriter();
            using var error = new StringWriter();
            var isOver = false;
            var watcher = new Thread(() =>
            {
                while (!Volatile.Read(ref isOver) && !Directory.EnumerateDirectories(folder.In(""), ".benchsim-partial-*").Any())
                {
                    Thread.Yield();
                }

                stop.Cancel();
            });
            watcher.Start();
            code = CommandLine.Run(["run", spring, Few], output, error, terminal: false, stop.Token);
            Volatile.Write(ref isOver, true);
            watcher.Join();
            if (code != 0)
            {
                Assert.Equal(("", "Stopped. Nothing was left half-written.\n"), (output.ToString(), error.ToString()));
                Assert.Equal(before, folder.Everything());
            }
            else
            {
                Directory.Delete(folder.In("spring-report"), recursive: true);
            }
        }

        Assert.Equal(130, code);
    }

    [Fact]
    public void A_fault_of_the_program_is_one_sentence_without_a_trace()
    {
        using var folder = new TemporaryFolder();
        using var error = new StringWriter();
        var code = CommandLine.Run(["new", folder.In("a")], new BrokenWriter(), error, terminal: false, CancellationToken.None);
        Assert.Equal(70, code);
        Assert.Equal(
            "BenchSim stopped on a fault of its own, not of your files. "
                + "Run it again with BENCHSIM_DEBUG=1 to see the details, and report them.\n",
            error.ToString()
        );
    }

    [Fact]
    public void A_full_disk_is_one_sentence()
    {
        using var folder = new TemporaryFolder();
        using var error = new StringWriter();
        var code = CommandLine.Run(["check", folder.Starter()], new FullWriter(), error, terminal: false, CancellationToken.None);
        Assert.Equal(2, code);
        Assert.Equal("The answer could not be printed: No space left on device\n", error.ToString());
    }

    private sealed class StoppingWriter(CancellationTokenSource stop) : StringWriter(new StringBuilder())
    {
        public override void Write(string? value)
        {
            stop.Cancel();
            base.Write(value);
        }

        public override void Write(char[] buffer, int index, int count)
        {
            stop.Cancel();
            base.Write(buffer, index, count);
        }
    }

    private sealed class BrokenWriter : StringWriter
    {
        public override void Write(string? value) => throw new InvalidOperationException("broken on purpose");
    }

    private sealed class FullWriter : StringWriter
    {
        public override void Write(string? value) => throw new IOException("No space left on device");
    }

    /// <summary>A farm with a warm house of 18 C and a cold one of 8 C at night.</summary>
    private static string Farm(TemporaryFolder folder, string sowings, string spaces, string weather)
    {
        var farm = Directory.CreateDirectory(folder.In("farm")).FullName;
        File.WriteAllText(Path.Combine(farm, "plan.csv"), $"id,crop,plants,sow,tray\n{sowings}\n");
        File.WriteAllText(
            Path.Combine(farm, "site.toml"),
            $"""
            [site]
            name = "Two houses"
            units = "metric"
            [season]
            opens = 2027-02-01
            closes = 2027-07-31
            [[house]]
            id = "warm"
            night = 18
            [[house]]
            id = "cold"
            night = 8
            {spaces}
            [weather]
            {weather}
            """
        );
        return farm;
    }

    private static string Space(string kind, string house, int places) =>
        $"[[space]]\nid = \"{house}-{kind}\"\nkind = \"{kind}\"\n{(house.Length > 0 ? $"house = \"{house}\"\n" : "")}places = {places}\n";
}
