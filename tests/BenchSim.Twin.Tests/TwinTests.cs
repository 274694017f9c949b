using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Season.Tests;
using CsCheck;

namespace BenchSim.Twin.Tests;

/// <summary>Two seasons written apart from docs/model.md must be the same, tray for tray and day for day.</summary>
public class TwinTests
{
    [Fact]
    public void Small_sites_are_played_alike() => RandomSites.GenScenario.Each(100, 41, Compare);

    [Fact]
    public void Wide_sites_are_played_alike() => TwinSites.Wide.Each(150, 42, Compare);

    [Fact]
    public void Sites_without_luck_are_played_alike() => TwinSites.Wide.Select(TwinSites.WithoutLuck).Each(50, 43, Compare);

    private static void Compare(Scenario scenario)
    {
        if (SeasonPlanner.Make(scenario).Plan is not { } plan)
        {
            return;
        }

        var player = new SeasonPlayer(plan, 3);
        foreach (var limits in Enum.GetValues<PlaceLimits>())
        {
            var original = new SeasonResult();
            player.Play(2, limits, original);
            var differences = Differences.Between(new TwinSeason(plan, 3, 2, limits).Result, original, plan).ToList();
            Assert.True(differences.Count == 0, $"{limits}: {string.Join("; ", differences)}");
        }
    }
}
