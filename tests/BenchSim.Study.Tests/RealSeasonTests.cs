using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Study.Tests;

/// <summary>The runner with the real player.</summary>
public class RealSeasonTests
{
    // Three batches of 700 plants over 90 days: what happens depends on the luck of each season.
    private static readonly SeasonPlan s_plan = Plans.Small(days: 90, plantsEach: 700);

    [Fact]
    public void Any_number_of_threads_gives_the_same_result()
    {
        var alone = ResultText.Of(Play(1));

        Assert.Equal(alone, ResultText.Of(Play(2)));
        Assert.Equal(alone, ResultText.Of(Play(5)));
    }

    [Fact]
    public void The_parts_of_the_answer_agree_with_each_other()
    {
        var result = Play(0);

        Assert.True(result.Spaces[1].TrayDays.Mean > 0);
        Assert.Equal(2100, result.PlantsInTime.Mean + result.PlantsLate.Mean + result.PlantsShort.Mean, 1e-9);
        Assert.Equal(result.Spaces.Sum(space => space.TrayDays.Mean), result.Growers.Sum(grower => grower.TrayDays.Mean), 1e-9);
        Assert.Equal(1, result.Growers.Sum(grower => grower.Share), 1e-12);
        Assert.Equal(result.Seasons - result.FitsWeatherCounted.Hits, result.Causes.Values.Sum());
        Assert.Equal(result.Work.Hours.Mean, result.Work.HoursByWeek.Sum(week => week.Mean), 1e-9);
        foreach (var space in result.Spaces)
        {
            Assert.Equal(space.Held.Sum(day => day.Mean), space.TrayDays.Mean, 1e-9);
            Assert.All(space.Held.Zip(space.Places), day => Assert.InRange(day.First.Most, 0, day.Second));
        }
    }

    private static StudyResult Play(int threads) =>
        StudyRunner.Play(
            s_plan,
            new StudyOptions
            {
                Seasons = 60,
                Seed = 3,
                Threads = threads,
            },
            null,
            CancellationToken.None
        );
}
