using BenchSim.Season.Play;
using BenchSim.Study.Typical;

namespace BenchSim.Study.Tests.Typical;

/// <summary>The middling and the bad season, against seasons played one by one and counted here.</summary>
public class TypicalSeasonsTests
{
    private const int Seasons = 60;

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void Half_of_the_seasons_are_no_worse_than_the_middling_one_and_nine_of_ten_no_worse_than_the_bad_one(int threads)
    {
        var plan = Plans.Small(days: 90, plantsEach: 700);
        var late = Played(plan, season => season.Batches[^1].LatePlantDays);
        var options = new StudyOptions
        {
            Seasons = Seasons,
            Seed = 7,
            Threads = threads,
        };
        var found = TypicalSeasons.OfBatch(plan, plan.Batches.Length - 1, options, null, CancellationToken.None);
        AssertShares(late, found);
    }

    [Fact]
    public void A_week_of_a_space_is_ranked_by_what_is_refused_there()
    {
        var plan = Plans.Small(days: 90, plantsEach: 700);
        var (space, first, last) = (1, 21, 27);
        var refused = Played(plan, season => season.Waiting[space][first..(last + 1)].Sum(places => (long)places));
        var options = new StudyOptions { Seasons = Seasons, Seed = 7 };
        AssertShares(refused, TypicalSeasons.OfDays(plan, space, first, last, options, null, CancellationToken.None));
    }

    private static long[] Played(Season.Inputs.SeasonPlan plan, Func<SeasonResult, long> read)
    {
        var player = new SeasonPlayer(plan, 7);
        return
        [
            .. Enumerable
                .Range(0, Seasons)
                .Select(season =>
                {
                    var result = new SeasonResult();
                    player.Play(season, PlaceLimits.AsGiven, result);
                    return read(result);
                }),
        ];
    }

    private static void AssertShares(long[] values, TypicalSeasons found)
    {
        Assert.True(values.Count(value => value <= values[found.Middling]) >= 0.5 * Seasons);
        Assert.True(values.Count(value => value < values[found.Middling]) < 0.5 * Seasons);
        Assert.True(values.Count(value => value <= values[found.Bad]) >= 0.9 * Seasons);
        Assert.True(values.Count(value => value < values[found.Bad]) < 0.9 * Seasons);
    }
}
