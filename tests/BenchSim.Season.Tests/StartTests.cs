using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Season.Tests;

/// <summary>A season played on from any of its days ends as if it had never been interrupted.</summary>
public class StartTests
{
    [Fact]
    public void The_rest_of_a_season_is_the_same_from_any_day()
    {
        var starts = 0;
        RandomSites.GenScenario.Each(400, 28, scenario =>
        {
            if (SeasonPlanner.Make(scenario).Plan is not { } plan)
            {
                return;
            }

            var player = new SeasonPlayer(plan, 3);
            var (whole, rest, watch) = (new SeasonResult(), new SeasonResult(), new Captures(every: 13));
            player.Play(1, PlaceLimits.AsGiven, whole, watch);
            foreach (var start in watch.Starts.Where(start => start.Day < plan.Days))
            {
                starts++;
                player.Another().Play(1, PlaceLimits.AsGiven, start, rest);
                rest.LimitEverBit = whole.LimitEverBit;
                Assert.Equivalent(whole, rest, strict: true);
            }
        });
        Assert.True(starts > FixedSample.CasesOf(1500), $"{starts} starts");
    }

    private sealed class Captures(int every) : ISeasonWitness
    {
        public List<SeasonStart> Starts { get; } = [];

        public void DayEnds(SeasonView season)
        {
            if (season.Day % every == every / 2)
            {
                Starts.Add(season.Capture());
            }
        }
    }
}
