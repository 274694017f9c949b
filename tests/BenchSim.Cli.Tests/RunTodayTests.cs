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

    private static FarmFolder Farm(string log)
    {
        var farm = new FarmFolder(plan: Plan);
        farm.Write("log.csv", log);
        return farm;
    }
}
