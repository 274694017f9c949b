using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Sweeps;

namespace BenchSim.Study.Tests.Sweeps;

/// <summary>What tasks add up to, on seasons written by hand and on a plan that is played.</summary>
public sealed class SweepSumTests
{
    // Seasons of 300, 300, 290 and 310 plants in time: mean 300, squares about the mean 200, variance 200/3, standard error
    // sqrt(200/3/4) = 4.0825, t(0.975, 3) = 3.1824: half width 12.992.
    [Fact]
    public void Seasons_are_counted_as_by_hand()
    {
        var plan = Plans.Small();
        var first = new SweepCounts(4);
        var second = new SweepCounts(4);
        first.Add(Season(plan, fits: true, weather: true, inTime: 300));
        first.Add(Season(plan, fits: true, weather: false, inTime: 300));
        var tight = Season(plan, fits: false, weather: false, inTime: 290);
        tight.Waiting[1][2] = 3;
        tight.Waiting[1][5] = 7;
        tight.Waiting[3][5] = 2;
        second.Add(tight);
        second.Add(Season(plan, fits: true, weather: true, inTime: 310));

        var sum = new SweepSum(plan, sets: 1);
        sum.Add(0, second);
        sum.Add(0, first);
        var row = sum.ToRow(new SweepCell(5, 2, 0, 0));
        Assert.Equal((5, 2, 300), (row.Folder, row.Plan, row.PlantsWanted));
        Assert.Equal((3, 4), (row.Fits.Hits, row.Fits.Seasons));
        Assert.Equal(2, row.FitsWeatherCounted.Hits);
        Assert.Equal(300, row.PlantsInTime.Mean, 9);
        Assert.Equal(12.992, row.PlantsInTime.HalfWidth, 3);
        Assert.Equal([0, 1, 0, 1], row.Short.Select(chance => chance.Hits));
        Assert.Equal([0, 7.0 / 4, 0, 0.5], row.WorstShort.ToArray());
        Assert.Equal(1, row.Tightest);
        Assert.Null(row.FitsOverSets);
    }

    // Twenty sets that fit in 0, 1, ... 19 of 20 seasons: the nearest to 5, 50 and 95 % of the way from the first to the last are those of
    // 1, 10 (9.5 to the even one) and 18.
    [Fact]
    public void Sets_of_values_are_told_apart_from_luck()
    {
        var plan = Plans.Small();
        var sum = new SweepSum(plan, sets: 21);
        sum.Add(0, Counts(20, 12, 100));
        foreach (var set in Enumerable.Range(1, 20).Reverse())
        {
            sum.Add(set, Counts(8, Math.Min(8, set - 1), 10 * set));
            sum.Add(set, Counts(12, Math.Max(0, set - 1 - 8), 10 * set));
        }

        var row = sum.ToRow(default);
        Assert.Equal((12, 20), (row.Fits.Hits, row.Fits.Seasons));
        var fits = Assert.NotNull(row.FitsOverSets);
        Assert.Equal((1 / 20.0, 10 / 20.0, 18 / 20.0), (fits.Low, fits.Middle, fits.High));
        var plants = Assert.NotNull(row.PlantsOverSets);
        Assert.Equal((20.0, 110.0, 190.0), (plants.Low, plants.Middle, plants.High));
    }

    [Fact]
    public void Blocks_of_seasons_are_those_of_the_run()
    {
        var plan = Plans.Small(days: 90, plantsEach: 700);
        StudyOptions options = new() { Seasons = 23, Seed = 3 };
        var run = StudyRunner.Play(plan, options, null, CancellationToken.None);
        var sum = new SweepSum(plan, sets: 1);
        foreach (var (first, count) in new[] { (20, 3), (0, 10), (10, 10) })
        {
            sum.Add(0, new SweepPlayer(plan, 3).Play(first, count, CancellationToken.None));
        }

        var row = sum.ToRow(default);
        Assert.Equal(run.Fits, row.Fits);
        Assert.Equal(run.FitsWeatherCounted, row.FitsWeatherCounted);
        Assert.Equal(run.PlantsInTime.Mean, row.PlantsInTime.Mean, 9);
        Assert.Equal(run.PlantsInTime.HalfWidth, row.PlantsInTime.HalfWidth, 9);
        Assert.Equal(run.LatePlantDays.Mean, row.LatePlantDays.Mean, 9);
    }

    private static SweepCounts Counts(int seasons, int fits, long plants) =>
        new(4)
        {
            Seasons = seasons,
            Fits = fits,
            PlantsInTime = Moments.Of(plants, seasons),
            LatePlantDays = Moments.Of(0, seasons),
        };

    private static SeasonResult Season(BenchSim.Season.Inputs.SeasonPlan plan, bool fits, bool weather, long inTime)
    {
        var season = Seasons.Quiet(plan);
        (season.Fits, season.FitsWeatherCounted, season.PlantsInTime) = (fits, weather, inTime);
        return season;
    }
}
