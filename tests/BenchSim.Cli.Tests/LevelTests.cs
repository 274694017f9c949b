using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Level;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Level;
using BenchSim.Study.Levelling;

namespace BenchSim.Cli.Tests;

/// <summary>
/// "level" on paper: four mats, and room elsewhere. A takes 4 trays and B 2, both sown on Monday 1 March; a tray is on the mat for 3 days,
/// so 2 trays are over
/// on 3 days, 6 place-days. B sown on Thursday 4 March, when A leaves the mats, is over on none. Played as planned B waits and is sown on
/// that Thursday all the
/// same, ready on 25 March instead of the planned 22nd: 100 plants, 3 days late.
/// </summary>
public sealed class LevelTests
{
    private const string Plan =
        "id,crop,grower,plants,sow,set_out,method,tray,germination,earlier,later\n"
        + "A,paper,Ada,200,2027-03-01,,direct,50-cell,100 %,,\n"
        + "B,paper,Ben,100,2027-03-01,,direct,50-cell,100 %,2,7\n";

    private const string Levelled =
        "id,crop,grower,plants,sow,set_out,method,tray,germination,earlier,later\n"
        + "A,paper,Ada,200,2027-03-01,,direct,50-cell,100 %,,\n"
        + "B,paper,Ben,100,2027-03-04,,direct,50-cell,100 %,2,7\n";

    [Fact]
    public void Moves_the_sowing_that_collides_and_says_to_adopt_it()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Plan);
        var before = folder.Everything();
        Assert.Equal(0, Call.Run("level", farm, "--seasons", "20", "--all").Code);
        Assert.Equal(before, folder.Everything());
        var level = Call.Run("level", farm, "--seasons", "20", "--write", "--all");
        Assert.Equal((0, ""), (level.Code, level.Error));
        Assert.Contains("2 sowings, of which 1 may move.", level.Sentences, StringComparison.Ordinal);
        Assert.Contains("B Ben 2027-03-01 2027-03-04 3 later 2027-03-22 becomes 2027-03-25", level.Sentences, StringComparison.Ordinal);
        var result = Found(farm, 20);
        Assert.Equal((LevelVerdict.Adopt, 6.0, 0.0), (result.Verdict, result.OverBefore, result.OverAfter));
        Assert.Equal((true, true), (result.IsOverProved, result.IsShiftProved));
        level.Says(
            "6.0 in all as planned, 0.0 levelled.",
            "No choice of days within the tolerances leaves fewer place-days over: this is proved. None as good moves fewer days in all.",
            "Use the levelled plan: in the same seasons there are 300 fewer late plant-days a season",
            "In the levelled plan Ben moves 1 sowing."
        );
        Assert.Equal(Levelled, File.ReadAllText(Path.Combine(farm, "plan-levelled.csv")));
        Assert.Equal(Plan, File.ReadAllText(Path.Combine(farm, "plan.csv")));

        // The new plan can take the place of the old one.
        File.Copy(Path.Combine(farm, "plan-levelled.csv"), Path.Combine(farm, "plan.csv"), overwrite: true);
        Assert.Equal(0, Call.Run("check", farm).Code);
    }

    [Fact]
    public void Machines_get_the_same()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Plan);
        using var json = JsonDocument.Parse(Call.Run("level", farm, "--seasons", "20", "--write", "--json").Output);
        var root = json.RootElement;
        Assert.Equal("adopt", root.GetProperty("verdict").GetString());
        Assert.Equal(
            (6.0, 0.0, 0.0),
            (
                root.GetProperty("over_before").GetDouble(),
                root.GetProperty("over_after").GetDouble(),
                root.GetProperty("over_bound").GetDouble()
            )
        );
        Assert.Equal((3, 3), (root.GetProperty("shift_days").GetInt32(), root.GetProperty("shift_bound").GetInt32()));
        var mats = root.GetProperty("groups")[0];
        Assert.Equal(
            (6.0, 4.0),
            (
                mats.GetProperty("expected_before").GetProperty("peak").GetDouble(),
                mats.GetProperty("expected_after").GetProperty("peak").GetDouble()
            )
        );
        Assert.Equal(-2.0, mats.GetProperty("played_peak").GetProperty("difference").GetDouble());
        var late = root.GetProperty("trial")
            .GetProperty("variants")[0]
            .GetProperty("measures")
            .EnumerateArray()
            .Single(measure => measure.GetProperty("measure").GetString() is "late_plant_days");
        Assert.Equal((300.0, 0.0), (late.GetProperty("base").GetDouble(), late.GetProperty("variant").GetDouble()));
        Assert.EndsWith("plan-levelled.csv", root.GetProperty("file").GetString(), StringComparison.Ordinal);
    }

    // A was sown on the Monday, B was not: on Tuesday it is due. Sown that day 2 trays are over on the 2nd and the 3rd, 4 place-days; on
    // Monday, which is over, nothing can be moved. Sown on Thursday, none.
    [Fact]
    public void In_mid_season_moves_what_is_still_to_come()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Plan);
        File.WriteAllText(Path.Combine(farm, "log.csv"), "date,batch,what,trays,space\n2027-03-01,A,sown,4,mats\n");
        var level = Call.Run("level", farm, "--today", "2027-03-02", "--seasons", "20", "--all");
        Assert.Equal(("", 0), (level.Error, level.Code));
        level.Says(
            "2 sowings, of which 1 may move.",
            "4.0 in all as planned, 0.0 levelled.",
            "B Ben 2027-03-01 2027-03-04 3 later 2027-03-22 becomes 2027-03-25"
        );
    }

    // Wanted on the 25th B is in time either way: nothing gained.
    [Fact]
    public void Keeps_the_plan_where_the_play_shows_no_gain()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Plan.Replace("100,2027-03-01,,", "100,2027-03-01,2027-03-25,", StringComparison.Ordinal));
        var level = Call.Run("level", farm, "--seasons", "20");
        Assert.Equal(0, level.Code);
        var result = Found(farm, 20);
        Assert.Equal(LevelVerdict.Keep, result.Verdict);
        level.Says(LevelWords.Verdict(result));
        Assert.False(File.Exists(Path.Combine(farm, "plan-levelled.csv")));
        Assert.Equal(0, Call.Run("level", farm, "--seasons", "20", "--out", folder.In("mine.csv")).Code);
        Assert.Contains("B,paper,Ben,100,2027-03-04,2027-03-25,", File.ReadAllText(folder.In("mine.csv")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(",2,7", ",,", LevelVerdict.NothingMayMove)]
    [InlineData("Ada,200", "Ada,300", LevelVerdict.NothingHelps, "Ben,100,2027-03-01", "Ben,100,2027-03-08")]
    [InlineData("Ada,200", "Ada,100", LevelVerdict.NothingIsOver)]
    public void Says_why_nothing_moves(string old, string changed, LevelVerdict verdict, string older = "x", string newer = "x")
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Plan.Replace(old, changed, StringComparison.Ordinal).Replace(older, newer, StringComparison.Ordinal));
        var before = folder.Everything();
        var level = Call.Run("level", farm, "--seasons", "5");
        Assert.Equal(0, level.Code);
        Assert.Equal(before, folder.Everything());
        var result = Found(farm, 5);
        Assert.Equal(verdict, result.Verdict);
        level.Says(LevelWords.Verdict(result));
    }

    [Fact]
    public void A_share_to_leave_free_moves_more()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Plan.Replace("Ada,200", "Ada,100", StringComparison.Ordinal));
        Assert.Contains(
            "B Ben 2027-03-01 2027-03-04 3 later",
            Call.Run("level", farm, "--seasons", "5", "--fill", "50%", "--all").Sentences,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_earlier_levelled_plan_is_replaced_and_anything_else_stays()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Plan);
        var target = Path.Combine(farm, "plan-levelled.csv");
        File.WriteAllText(target, Levelled.Replace("2027-03-04", "2027-03-03", StringComparison.Ordinal));
        Assert.Equal(0, Call.Run("level", farm, "--seasons", "5", "--write").Code);
        Assert.Equal(Levelled, File.ReadAllText(target));

        File.WriteAllText(target, Levelled.Replace("Ben,100", "Ben,120", StringComparison.Ordinal));
        var everything = folder.Everything();
        var refused = Call.Run("level", farm, "--seasons", "5", "--write");
        Assert.Equal((2, ""), (refused.Code, refused.Output));
        Assert.Contains("is not a levelled form of this plan and stays as it is.", refused.Error, StringComparison.Ordinal);
        Assert.Contains("Ben,120", File.ReadAllText(target), StringComparison.Ordinal);
        Assert.Equal(everything, folder.Everything());
    }

    [Fact]
    public void The_plan_itself_is_never_written_over()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Plan);
        var level = Call.Run("level", farm, "--out", Path.Combine(farm, "plan.csv"));
        Assert.Equal(2, level.Code);
        Assert.Contains("is a plan in use and stays as it is.", level.Error, StringComparison.Ordinal);
        Assert.Equal(Plan, File.ReadAllText(Path.Combine(farm, "plan.csv")));
        Assert.Equal(2, Call.Run("level", farm, "--out", farm).Code);
        Assert.Equal(2, Call.Run("level", farm, "--out", folder.In("none/levelled.csv")).Code);
    }

    [Fact]
    public void Stopped_it_leaves_nothing_behind()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Plan);
        var before = folder.Everything();
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Equal(130, Call.Run(stop.Token, "level", farm).Code);
        Assert.Equal(before, folder.Everything());
    }

    [Theory]
    [InlineData("0")]
    [InlineData("0%")]
    [InlineData("101%")]
    [InlineData("much")]
    public void A_share_that_is_none_is_refused(string share)
    {
        using var folder = new TemporaryFolder();
        var level = Call.Run("level", Farm(folder, Plan), "--fill", share);
        Assert.Equal(2, level.Code);
        Assert.Contains("--fill", level.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_of_the_plan_come_with_their_places()
    {
        using var folder = new TemporaryFolder();
        var level = Call.Run("level", Farm(folder, Plan.Replace(",2,7", ",2,a week", StringComparison.Ordinal)));
        Assert.Equal(2, level.Code);
        Assert.StartsWith(
            "plan.csv:3:52: later is \"a week\", which is not a number; write a whole number, from 0 to 60\n",
            level.Error,
            StringComparison.Ordinal
        );
    }

    private static LevelResult Found(string farm, int seasons) =>
        new LevelQuestion { Scenario = ScenarioSource.Folder(farm), Play = new PlayWish(Seasons: seasons) }
            .Ask(new Leveller(), Asked.Unwatched)
            .Result;

    private static string Farm(TemporaryFolder folder, string plan)
    {
        var farm = PaperFarm.In(folder);
        var site = Path.Combine(farm, "site.toml");
        File.WriteAllText(
            site,
            File.ReadAllText(site)
                .Replace("kind = \"table\"\nplaces = 4", "kind = \"table\"\nplaces = 20", StringComparison.Ordinal)
                .Replace("places = 5", "places = 20", StringComparison.Ordinal)
        );
        File.WriteAllText(Path.Combine(farm, "plan.csv"), plan);
        return farm;
    }
}
