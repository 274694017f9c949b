using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Season.Tests;

/// <summary>
/// What must follow from a change, whatever the site (docs/verification.md; it also lists what need not follow). Random sites of a fixed
/// seed; no chance of a false alarm.
/// </summary>
public class MustHoldTests
{
    private const int Cases = 120;

    [Fact]
    public void Without_limits_nothing_waits() =>
        RandomSites.GenScenario.Each(Cases, 51, scenario =>
            ForPlan(scenario, plan =>
                Assert.All(Play(plan, PlaceLimits.None).Waiting, space => Assert.All(space, waiting => Assert.Equal(0, waiting)))
            )
        );

    // A tray's luck is one number, read at the tray's own chance: a better chance never brings fewer plants.
    [Fact]
    [Trait("Category", "Slow")]
    public void Less_loss_never_brings_fewer_plants_without_limits() =>
        RandomSites.GenScenario.Each(Cases, 52, scenario => ForPlan(scenario, plan =>
            {
                var better = plan with
                {
                    Batches =
                    [
                        .. plan.Batches.Select(batch => batch with { Crop = batch.Crop with { StandLoss = batch.Crop.StandLoss / 2 } }),
                    ],
                };
                Assert.All(Play(plan, PlaceLimits.None).Batches.Zip(Play(better, PlaceLimits.None).Batches), pair =>
                    Assert.True(pair.First.PlantsOut <= pair.Second.PlantsOut)
                );
            }));

    [Fact]
    [Trait("Category", "Slow")]
    public void More_days_of_grace_never_make_a_plant_late_nor_a_season_fail() =>
        RandomSites.GenScenario.Each(Cases, 53, scenario => ForPlan(scenario, plan =>
            {
                var strict = Play(plan, PlaceLimits.AsGiven);
                var mild = Play(With(plan, rules => rules with { LateDays = rules.LateDays + 3 }), PlaceLimits.AsGiven);
                Assert.Equal(strict.Held, mild.Held);
                Assert.All(strict.Batches.Zip(mild.Batches), pair => Assert.True(pair.First.PlantsInTime <= pair.Second.PlantsInTime));
                Assert.True(!strict.Fits || mild.Fits);
            }));

    [Fact]
    public void A_lower_goal_changes_no_tray_and_never_makes_a_season_fail() =>
        RandomSites.GenScenario.Each(Cases, 54, scenario => ForPlan(scenario, plan =>
            {
                var high = Play(plan, PlaceLimits.AsGiven);
                var low = Play(With(plan, rules => rules with { ServiceGoal = rules.ServiceGoal / 2 }), PlaceLimits.AsGiven);
                Assert.Equal(high.Held, low.Held);
                Assert.True(!high.Fits || low.Fits);
            }));

    // Batches meet only in places and labour: with neither short, a batch goes its way whatever stands beside it.
    [Fact]
    public void A_batch_taken_away_or_renamed_changes_no_luck_of_another() =>
        RandomSites.GenScenario.Each(Cases, 55, scenario =>
            ForPlan(
                scenario with
                {
                    Rules = scenario.Rules with { SowTraysADay = null, PotUpTraysADay = null, SetOutTraysADay = null },
                },
                plan =>
                {
                    var all = Play(plan, PlaceLimits.None);
                    var without = Play(plan with { Batches = [.. plan.Batches.Skip(1)] }, PlaceLimits.None);
                    var renamed = Play(plan with { Batches = Renamed(plan.Batches) }, PlaceLimits.None);
                    for (var index = 1; index < plan.Batches.Length; index++)
                    {
                        Assert.Equivalent(all.Batches[index], without.Batches[index - 1], strict: true);
                        Assert.Equivalent(all.Batches[index], renamed.Batches[index], strict: true);
                    }
                }
            )
        );

    private static ImmutableArray<BatchPlan> Renamed(ImmutableArray<BatchPlan> batches) =>
        batches.SetItem(0, batches[0] with { Order = batches[0].Order with { Id = "another name" } });

    private static void ForPlan(Scenario scenario, Action<SeasonPlan> check)
    {
        if (SeasonPlanner.Make(scenario).Plan is { } plan)
        {
            check(plan);
        }
    }

    private static SeasonPlan With(SeasonPlan plan, Func<SiteRules, SiteRules> change) =>
        plan with
        {
            Scenario = plan.Scenario with { Rules = change(plan.Scenario.Rules) },
        };

    private static SeasonResult Play(SeasonPlan plan, PlaceLimits limits)
    {
        var result = new SeasonResult();
        new SeasonPlayer(plan, 9).Play(1, limits, result);
        return result;
    }
}
