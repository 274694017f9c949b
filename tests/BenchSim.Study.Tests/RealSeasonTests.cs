using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Tests;

/// <summary>The runner with the real player.</summary>
public class RealSeasonTests
{
    [Fact]
    public void Any_number_of_threads_gives_the_same_result()
    {
        SeasonPlan plan = Plans.Small(days: 60);
        SeasonResult first = new();
        new SeasonPlayer(plan, 3).Play(0, PlaceLimits.AsGiven, first);
        if (first.Held.Length == 0)
            return;

        string alone = Play(plan, 1);

        Assert.Equal(alone, Play(plan, 2));
        Assert.Equal(alone, Play(plan, 5));
    }

    private static string Play(SeasonPlan plan, int threads) => ResultText.Of(
        StudyRunner.Play(plan, new StudyOptions { Seasons = 40, Seed = 3, Threads = threads }, null, CancellationToken.None));
}
