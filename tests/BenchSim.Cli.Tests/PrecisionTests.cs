using System.Net;
using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Run;
using BenchSim.Answers.Words;
using BenchSim.Study.Precision;

namespace BenchSim.Cli.Tests;

/// <summary>"run --precision" plays until the interval is narrow enough and says why it stopped.</summary>
public sealed class PrecisionTests
{
    // 10 points are enough for any share after 3.841 x (1 / 0.04 - 1) = 92.2, so 93 seasons; half of that, 47, is above the least asked
    // for.
    [Fact]
    [Trait("Category", "Slow")]
    public void It_says_what_was_asked_when_it_looked_and_why_it_stopped()
    {
        using var folder = new TemporaryFolder();
        var farm = folder.Starter();
        var run = Call.Run("run", farm, "--precision=10%", "--least=40", "--all");
        Assert.Equal(0, run.Code);
        Assert.Empty(run.Error);
        var found = Find(farm, new PrecisionGoal { Chance = 0.1, Least = 40 });
        Assert.True(found.IsReached);
        Assert.Equal(((int[])[47, 93])[..found.Looks.Length], found.Looks.Select(look => look.Seasons));
        var why = PrecisionWords.WhyItStopped(found);
        run.Says(why);
        Assert.Contains(why, WebUtility.HtmlDecode(File.ReadAllText(folder.In("spring-report/report.html"))), StringComparison.Ordinal);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Machines_get_the_looks_and_the_threads_do_not_matter()
    {
        using var folder = new TemporaryFolder();
        var farm = folder.Starter();
        string[] words = ["run", farm, "--precision=5%", "--precision-late=1e3", "--no-report"];
        Assert.Equal(2, Call.Run(words).Code);
        words[3] = "--precision-late=1000000";
        var run = Call.Run([.. words, "--least=40", "--json", "--threads=1"]);
        Assert.Equal(run.Output, Call.Run([.. words, "--least=40", "--json", "--threads=3"]).Output);
        using var json = JsonDocument.Parse(run.Output);
        var precision = json.RootElement.GetProperty("precision");
        Assert.Equal(
            (0.05, 1_000_000, 40, true),
            (
                precision.GetProperty("fits_half_width").GetDouble(),
                precision.GetProperty("late_plant_days_half_width").GetInt32(),
                precision.GetProperty("least").GetInt32(),
                precision.GetProperty("reached").GetBoolean()
            )
        );
        var last = precision.GetProperty("looks").EnumerateArray().Last();
        var interval = last.GetProperty("fits").GetProperty("interval");
        Assert.InRange(interval.GetProperty("high").GetDouble() - interval.GetProperty("low").GetDouble(), 0, 0.1);
        var seasons = last.GetProperty("fits").GetProperty("seasons").GetInt32();
        Assert.Equal(json.RootElement.GetProperty("seasons").GetInt32(), seasons);

        // The answer is that of a run of as many seasons.
        using var given = JsonDocument.Parse(Call.Run("run", farm, "--no-report", "--json", $"--seasons={seasons}").Output);
        Assert.Equal(given.RootElement.GetProperty("fits").GetRawText(), json.RootElement.GetProperty("fits").GetRawText());
        Assert.Equal(given.RootElement.GetProperty("verdict").GetRawText(), json.RootElement.GetProperty("verdict").GetRawText());
    }

    [Fact]
    public void It_stops_at_the_most_seasons_and_says_so()
    {
        using var folder = new TemporaryFolder();
        var farm = folder.Starter();
        var run = Call.Run("run", farm, "--precision=0.001", "--precision-late=0.001", "--most=50", "--no-report", "--all");
        Assert.Equal(0, run.Code);
        var found = Find(
            farm,
            new PrecisionGoal
            {
                Chance = 0.001,
                LatePlantDays = 0.001,
                Least = 50,
                Most = 50,
            }
        );
        Assert.False(found.IsReached);
        run.Says(PrecisionWords.WhyItStopped(found));
    }

    private static PrecisionResult Find(string farm, PrecisionGoal goal) =>
        new RunQuestion
        {
            Scenario = ScenarioSource.Folder(farm),
            Precision = goal,
            NoReport = true,
        }
            .Ask(Asked.Unwatched)
            .Precision!;

    [Theory]
    [InlineData("--precision=2", "write percentage points from 0.1% to 45%")]
    [InlineData("--precision=0", "write percentage points from 0.1% to 45%")]
    [InlineData("--precision=x", "write percentage points from 0.1% to 45%")]
    [InlineData("--precision-late=0", "write a number of late plant-days above 0")]
    [InlineData("--precision-late=5%", "write a number of late plant-days above 0")]
    [InlineData("--precision=2% --seasons=100", "--seasons does not go with --precision")]
    [InlineData("--precision=2% --season=1 --batch=a", "--batch does not go with --precision")]
    [InlineData("--least=100", "--least goes with --precision")]
    [InlineData("--precision=2% --least=300 --most=200", "--least 300 is more than --most 200")]
    public void What_cannot_be_asked_is_refused_in_words(string options, string told)
    {
        using var folder = new TemporaryFolder();
        var run = Call.Run(["run", folder.Starter(), .. options.Split(' ')]);
        Assert.Equal(2, run.Code);
        Assert.Empty(run.Output);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
    }
}
