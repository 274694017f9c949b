using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Study.Bottlenecks;

/// <summary>The heated houses in which trays grow slower than in the warmest, each heated as that one.</summary>
internal static class WarmerHouses
{
    // Set-points are compared as those of houses and crops are: 55 F and 12.8 C are one.
    private const double Same = 0.05;

    /// <summary>Each of them with the plan that has it. The planned dates stay.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="spaces">Positions of the spaces that the plan may use.</param>
    public static IEnumerable<(House House, House Warmer, SeasonPlan Plan)> Of(SeasonPlan plan, int[] spaces)
    {
        var scenario = plan.Scenario;
        var used = spaces.Select(space => scenario.Spaces[space]).Where(space => space.Kind != SpaceKind.Table).ToArray();
        House[] houses =
        [
            .. scenario.Houses.Where(house =>
                house.IsHeated && used.Any(space => string.Equals(space.HouseId, house.Id, StringComparison.Ordinal))
            ),
        ];
        if (houses.MaxBy(house => house.NightC) is not { } warmest)
        {
            yield break;
        }

        foreach (var house in houses.Where(house => house.NightC < warmest.NightC - Same))
        {
            var warmer = house with
            {
                NightC = warmest.NightC,
                DayC = Max(house.DayC, warmest.DayC),
                VentC = Math.Max(house.VentC, warmest.VentC),
            };
            var made = VariantPlanner.Make(plan, scenario with { Houses = scenario.Houses.Replace(house, warmer) });
            if (made.Plan is { } changed)
            {
                yield return (house, warmer, changed with { Days = plan.Days });
            }
        }
    }

    private static double? Max(double? one, double? other) => one is { } here && other is { } there ? Math.Max(here, there) : one ?? other;
}
