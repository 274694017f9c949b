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
    [Trait("Category", "Slow")]
    public void Small_sites_are_played_alike() => CompareAll(RandomSites.GenScenario, 100, 41);

    [Fact]
    [Trait("Category", "Slow")]
    public void Wide_sites_are_played_alike() => CompareAll(TwinSites.Wide, 150, 42);

    [Fact]
    public void Sites_without_luck_are_played_alike() => CompareAll(TwinSites.Wide.Select(TwinSites.WithoutLuck), 50, 43);

    [Fact]
    public void Seasons_go_on_alike_from_a_log_that_tells_of_no_luck() => CompareLogs(TwinSites.Wide, 100, 44, tells: false);

    [Fact]
    [Trait("Category", "Slow")]
    public void Seasons_go_on_alike_from_a_log() => CompareLogs(TwinSites.Wide, 200, 45, tells: true);

    private static void CompareLogs(Gen<Scenario> sites, int cases, ulong seed, bool tells)
    {
        var plans = 0;
        sites.Each(cases, seed, scenario =>
        {
            if (SeasonPlanner.Make(scenario).Plan is { } plan)
            {
                var underway = RandomLogs.Underway(plan, plans++);
                Compare(underway with { Past = underway.Past! with { TellsOfLuck = tells } });
            }
        });
        Assert.True(plans >= FixedSample.CasesOf(cases) * 9 / 10, $"only {plans} plans were compared");
    }

    private static void CompareAll(Gen<Scenario> sites, int cases, ulong seed)
    {
        var plans = 0;
        sites.Each(cases, seed, scenario =>
        {
            if (SeasonPlanner.Make(scenario).Plan is { } plan)
            {
                plans++;
                Compare(plan);
            }
        });

        // A random site may have no plan at all; those that have one must be most of them.
        Assert.True(plans >= FixedSample.CasesOf(cases) * 9 / 10, $"only {plans} plans were compared");
    }

    private static void Compare(SeasonPlan plan)
    {
        var player = new SeasonPlayer(plan, 3);
        foreach (var limits in new[] { PlaceLimits.AsGiven, PlaceLimits.None, Changed(plan) })
        {
            var original = new SeasonResult();
            player.Play(2, limits, original);
            var differences = Differences.Between(new TwinSeason(plan, 3, 2, limits).Result, original, plan).ToList();
            Assert.True(differences.Count == 0, $"{limits}: {string.Join("; ", differences)}");
        }
    }

    // One of four ways to change a part of the places, whichever falls to the plan.
    private static PlaceLimits Changed(SeasonPlan plan)
    {
        var last = plan.Scenario.Spaces.Length - 1;
        return (plan.Batches.Sum(batch => batch.Trays) % 4) switch
        {
            0 => PlaceLimits.Without(0),
            1 => PlaceLimits.Without(1, last),
            2 => PlaceLimits.Adding(1, 3),
            _ => PlaceLimits.Adding(last, -2),
        };
    }
}
