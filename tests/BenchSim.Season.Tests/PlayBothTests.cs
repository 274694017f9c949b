using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Season.Tests;

/// <summary>Places without limits, got by playing again only who met one, against a whole play without limits.</summary>
public class PlayBothTests
{
    private static object Whole(SeasonResult season) =>
        (
            season.SownInTime,
            season.NoneOverHeldForPlace,
            season.PlantsInTime,
            season.PlantsInTimeWeatherCounted,
            season.PlantsOut,
            season.Fits,
            season.FitsWeatherCounted,
            season.IsShortForThrownOut
        );

    [Fact]
    [Trait("Category", "Slow")]
    public void Places_without_limits_are_those_of_a_play_without_limits()
    {
        var (apart, atLabour) = (0, 0);
        RandomSites.GenScenario.Each(600, 27, site =>
        {
            // With limits of labour other than of potting up, or reliefs that let trays go early, the season is played twice; most sites
            // are to be played the shorter way.
            var plain = site.Batches.Length % 4 > 0;
            var scenario = plain
                ? site with
                {
                    Rules = site.Rules with { SowTraysADay = null, SetOutTraysADay = null, Reliefs = [] },
                }
                : site;
            if (SeasonPlanner.Make(scenario).Plan is not { } plan)
            {
                return;
            }

            var player = new SeasonPlayer(plan, 3);
            var (given, alone, free, both) = (new SeasonResult(), new SeasonResult(), new SeasonResult(), new SeasonResult());
            for (var season = 0; season < 2; season++)
            {
                var told = player.PlayBoth(season, given, both);
                player.Play(season, PlaceLimits.None, free);
                player.Play(season, PlaceLimits.AsGiven, alone);
                Assert.Equal(free.Held, told.Held);
                Assert.Equal(Whole(free), Whole(told));
                Assert.Equivalent(alone, given, strict: true);
                apart += alone.LimitEverBit && plain ? 1 : 0;
                var meetAtLabour = scenario.Rules.PotUpTraysADay is not null && plan.Batches.Count(batch => batch.Flat is not null) > 1;
                atLabour += alone.LimitEverBit && plain && meetAtLabour ? 1 : 0;
                Assert.Same(alone.LimitEverBit ? both : given, told);
            }
        });

        // Sites on which a limit bites must be many, or the test would prove little.
        Assert.True(apart >= FixedSample.CasesOf(200), $"a limit bit in {apart} seasons");
        Assert.True(
            atLabour >= FixedSample.CasesOf(20),
            $"a limit bit in {atLabour} seasons in which several batches are potted up by limited labour"
        );
    }
}
