using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Counting;

/// <summary>Shares the fuel of the houses among the growers, each house's by the place-days held in it.</summary>
internal static class FuelShares
{
    /// <summary>Share of the fuel by grower.</summary>
    /// <param name="scenario">Scenario.</param>
    /// <param name="wattHours">Heat of each house over all seasons.</param>
    /// <param name="trayDays">Place-days over all seasons: [grower][space].</param>
    /// <returns>A share from 0 to 1 for each grower; not-a-number for all when no house has burnt anything with a tray in it.</returns>
    public static double[] Of(Scenario scenario, double[] wattHours, double[][] trayDays)
    {
        // By money where every heated house has a price, else by heat.
        var priced = scenario.Houses.All(house => house.Heat is null || house.Heat.Price.HasValue);
        var shares = new double[trayDays.Length];
        double all = 0;
        for (var house = 0; house < wattHours.Length; house++)
        {
            if (scenario.Houses[house].Heat is not { } heat || wattHours[house] <= 0)
            {
                continue;
            }

            var weight = priced ? heat.Fuel.Units(wattHours[house], heat.Efficiency) * heat.Price!.Value : wattHours[house];
            ImmutableArray<int> spaces =
            [
                .. Enumerable
                    .Range(0, scenario.Spaces.Length)
                    .Where(space => string.Equals(scenario.Spaces[space].HouseId, scenario.Houses[house].Id, StringComparison.Ordinal)),
            ];
            double[] held = [.. trayDays.Select(grower => spaces.Sum(space => grower[space]))];
            var everyones = held.Sum();
            if (everyones <= 0)
            {
                continue;
            }

            all += weight;
            for (var grower = 0; grower < shares.Length; grower++)
            {
                shares[grower] += weight * held[grower] / everyones;
            }
        }

        return [.. shares.Select(share => all > 0 ? share / all : double.NaN)];
    }
}
