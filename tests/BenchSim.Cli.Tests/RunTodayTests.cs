using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"run --today" plays the season from a day on, the days before as the log has them.</summary>
public sealed class RunTodayTests
{
    private const string Plan = "id,crop,plants,trays,sow\na,lettuce,200,5,2027-03-01\nb,lettuce,200,5,2027-03-15\n";
    private const string Head = "date,batch,what,trays,space\n";

    // Nothing done, nothing over: the answer of run, byte for byte.
    [Theory]
    [InlineData("--all")]
    [InlineData("--json")]
    public void The_opening_day_with_an_empty_log_is_a_run(string form)
    {
        using var farm = Farm(Head);
        Assert.Equal(
            Call.Run("run", farm.Path, "--no-report", "--seasons=40", form),
            Call.Run("run", farm.Path, "--today=2027-01-18", "--no-report", "--seasons=40", form)
        );
    }

    [Fact]
    public void Says_from_which_day_what_lacks_a_line_and_how_far_the_weather_is_known()
    {
        using var farm = Farm(Head + "2027-03-01,a,sown,5,mats\n2027-03-09,a,moved,5,bench\n");
        var run = Call.Run("run", farm.Path, "--today", "2027-03-16", "--seasons=40");
        var lines = FirstScreen.Of(run, farm.Path);
        Assert.StartsWith("Test farm from 16 March 2027 on: ", lines[0], StringComparison.Ordinal);
        run.Says(
            "The days before are those of the log; 1 job is due without a line and counted as not done: 1 sowing, no others.",
            "Weather: no days observed, 57 from 18 January to 15 March taken as normal; no days forecast; then that of each season.",
            $"benchsim check {farm.Path} --today 2027-03-16"
        );
        run.Says($"Report: {farm.Path}-2027-03-16-report/report.html");
        Assert.False(Directory.Exists(farm.Path + "-report"));
    }

    [Fact]
    public void Gives_machines_the_answer_and_what_it_rests_on()
    {
        using var farm = Farm(Head + "2027-03-01,a,sown,5,mats\n");
        farm.Write("site.toml", FarmFolder.Site("kind = \"constant\"", "kind = \"constant\"\nobserved = \"seen.csv\""));
        farm.Write("seen.csv", "date,tmin,tmax,rain\n2027-03-01,1 C,9 C,0\n");
        using var document = JsonDocument.Parse(Call.Run("run", farm.Path, "--today=2027-03-03", "--seasons=5", "--json").Output);
        var root = document.RootElement;
        Assert.Equal(1, root.GetProperty("days_observed").GetInt32());
        Assert.Equal(43, root.GetProperty("days_taken_as_normal").GetArrayLength());
        Assert.Equal(5, root.GetProperty("answer").GetProperty("seasons").GetInt32());
    }

    [Fact]
    public void The_report_names_the_day_and_is_the_same_whenever_it_is_made_for_it()
    {
        using var farm = Farm(Head + "2027-03-01,a,sown,5,mats\n2027-03-09,a,moved,5,bench\n");
        farm.Write("variants/larger.toml", "[[space]]\nid = \"bench\"\nplaces = 80\n");
        foreach (var with in new[] { "", "-larger" })
        {
            string[] more = with.Length == 0 ? [] : ["--with=larger"];
            Assert.Equal(0, Call.Run(["run", farm.Path, "--today=2027-03-16", "--seasons=40", .. more]).Code);
            var report = $"{farm.Path}{with}-2027-03-16-report";
            const string Made =
                "Made for 16 March 2027: the days before are as they were, by the log; from that day on 40 seasons may come.";
            Assert.Contains(Made, File.ReadAllText(Path.Combine(report, "report.html")), StringComparison.Ordinal);
            using var document = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(report, "result.json")));
            Assert.Equal("2027-03-16", document.RootElement.GetProperty("scenario").GetProperty("today").GetString());

            // From the files that it keeps it can be made again.
            string[] again = ["run", Path.Combine(report, "inputs"), "--today=2027-03-16", "--seasons=40", "--out", farm.Path + "-again"];
            Assert.Equal(("", 0), (Call.Run([.. again, .. more]).Error, Call.Run([.. again, .. more]).Code));
            foreach (var file in Directory.EnumerateFiles(report, "*", SearchOption.AllDirectories).Where(IsText))
            {
                var other = Path.Combine(farm.Path + "-again", Path.GetRelativePath(report, file));
                Assert.True(File.ReadAllBytes(file).AsSpan().SequenceEqual(File.ReadAllBytes(other)), file);
            }
        }
    }

    // What was is what the log says: no figure of the days that are over has anything to do with the seasons that are played.
    [Fact]
    public void No_figure_of_the_past_depends_on_the_number_of_seasons()
    {
        using var farm = Farm(Head + "2027-03-01,a,sown,5,mats\n2027-03-09,a,moved,5,bench\n2027-03-12,a,thrown out,1,\n");
        string[][] past = [.. new[] { 7, 60 }.Select(seasons => Past(farm, seasons))];
        Assert.Equal(past[0], past[1], StringComparer.Ordinal);

        // By hand: 5 places on the mats from 1 to 8 March, on the bench from the 9th on, 4 from the 12th; in every season.
        Assert.Contains(past[0], row => row.StartsWith("2027-03-08,mats,10,5,5,5,5,5,5,", StringComparison.Ordinal));
        Assert.Contains(past[0], row => row.StartsWith("2027-03-12,bench,60,4,4,4,4,4,4,", StringComparison.Ordinal));
    }

    [Fact]
    public void Says_what_has_changed_since_an_earlier_report()
    {
        using var farm = Farm(Head + "2027-03-01,a,sown,5,mats\n2027-03-09,a,moved,5,bench\n");
        Assert.Equal(0, Call.Run("run", farm.Path, "--today=2027-03-16", "--seasons=40").Code);
        var before = farm.Path + "-2027-03-16-report";
        var same = Call.Run("run", farm.Path, "--today=2027-03-16", "--seasons=40", "--since", before);
        same.Says("Since the report of 16 March 2027 nothing has changed: the same files, and the same answer.");

        // All five trays of a are thrown out: its 200 plants never get out.
        farm.Write("log.csv", Head + "2027-03-01,a,sown,5,mats\n2027-03-09,a,moved,5,bench\n2027-03-17,a,thrown out,5,\n");
        string[] later = ["run", farm.Path, "--today=2027-03-18", "--seasons=40", "--since", before, "--no-report"];
        Call.Run([.. later, "--all"])
            .Says(
                "Since the report of 16 March 2027: log.csv changed; fits 100 % then, 0 % now; "
                    + "plants that miss their date 0 then, 200 now, a season on average.",
                "Plants that miss their date, batch by batch: a 0 then, 200 now."
            );
        using var document = JsonDocument.Parse(Call.Run([.. later, "--json"]).Output);
        var since = document.RootElement.GetProperty("answer").GetProperty("since");
        Assert.Equal("log.csv", since.GetProperty("files_changed")[0].GetString());
        Assert.Equal((false, 200.0), (since.GetProperty("nothing").GetBoolean(), since.GetProperty("plants_late_now").GetDouble()));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("{\"version\": 1}")]
    [InlineData("{\"version\": 2, \"scenario\": []}")]
    [InlineData("[[[")]
    [InlineData("{\"version\": 2, \"scenario\": {\"variant\": null}, \"seasons\": 1, \"seed\": null}")]
    [InlineData("{\"version\": 2, \"scenario\": {\"variant\": null}, \"seasons\": 1, \"seed\": \"1\", \"fits\": {\"share\": 1e999}}")]
    public void What_is_no_report_is_refused(string? result)
    {
        using var farm = Farm(Head);
        if (result is not null)
        {
            farm.Write("old/result.json", result);
        }

        var run = Call.Run("run", farm.Path, "--since", farm.In("old"));
        Assert.Equal((2, ""), (run.Code, run.Output));
        Assert.Contains("holds no report of a run that this version can read", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(farm.Path + "-report"));
    }

    // The same jobs were done. Where a, due on 29 March, is not ready on the 25th, it will be late in some seasons.
    [Fact]
    public void What_was_seen_changes_what_may_come()
    {
        const string Done = "date,batch,what,trays,space\n2027-03-01,a,sown,5,bench\n2027-03-15,b,sown,5,bench\n";
        using var farm = Farm(Done);
        using var seen = Farm(Done + "2027-03-25,a,not ready,,\n");
        Assert.Equal(40, Fits(farm));
        Assert.InRange(Fits(seen), 1, 39);

        static int Fits(FarmFolder farm)
        {
            using var document = JsonDocument.Parse(Call.Run("run", farm.Path, "--today=2027-03-25", "--seasons=40", "--json").Output);
            return document.RootElement.GetProperty("answer").GetProperty("fits").GetProperty("hits").GetInt32();
        }
    }

    // All 5 trays of a are gone: at most the 200 plants of b can be out, and 200 of 400 never get out.
    [Fact]
    public void What_is_lost_is_lost()
    {
        using var farm = Farm(Head + "2027-03-01,a,sown,5,mats\n2027-03-09,a,thrown out,5,\n");
        Call.Run("run", farm.Path, "--today=2027-03-10", "--seasons=40").Says("The plan fits in none of 40 seasons.");
    }

    [Theory]
    [InlineData("--shard=1/2")]
    [InlineData("--case")]
    public void What_cannot_be_done_from_a_day_yet_is_refused(string option)
    {
        using var farm = Farm(Head);
        var run = Call.Run("run", farm.Path, "--today=2027-03-10", option);
        Assert.Equal(2, run.Code);
        Assert.Contains(
            $"{option.Split('=')[0]} does not go with --today yet; leave one of the two out.\n",
            run.Error,
            StringComparison.Ordinal
        );
    }

    private static bool IsText(string file) => !file.EndsWith(".png", StringComparison.Ordinal);

    private static string[] Past(FarmFolder farm, int seasons)
    {
        var report = farm.Path + "-past";
        Assert.Equal(0, Call.Run("run", farm.Path, "--today=2027-03-16", $"--seasons={seasons}", "--out", report).Code);
        return
        [
            .. File.ReadAllLines(Path.Combine(report, "tables", "daily.csv"))
                .Skip(1)
                .Where(row => string.CompareOrdinal(row[..10], "2027-03-16") < 0),
        ];
    }

    private static FarmFolder Farm(string log)
    {
        var farm = new FarmFolder(plan: Plan);
        farm.Write("log.csv", log);
        return farm;
    }
}
