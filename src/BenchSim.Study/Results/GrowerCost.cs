using System.Collections.Immutable;

namespace BenchSim.Study.Results;

/// <summary>What of the season's cost of fuel and of the mats' electricity falls to one grower.</summary>
/// <param name="Amount">Mean cost of a season, in the site's currency; not-a-number where a price is missing.</param>
/// <param name="Share">Share of what falls to all growers, 0 to 1; not-a-number where a price is missing or nothing costs anything.</param>
public readonly record struct GrowerCost(double Amount, double Share)
{
    /// <summary>
    /// Shares the mean cost of a season among the growers: that of each house by the place-days they hold in it, that of each bank of mats
    /// by the place-days they hold on it.
    /// </summary>
    /// <returns>One for each of <see cref="StudyResult.Growers"/>, in that order.</returns>
    public static ImmutableArray<GrowerCost> Of(StudyResult result)
    {
        var amounts = new double[result.Growers.Length];
        foreach (var house in result.Houses)
        {
            if (house is { Fuel: { Mean: > 0 } fuel, House.Heat: { } heat })
            {
                Divide(result, amounts, fuel.Mean * (heat.Price ?? double.NaN), space =>
                    string.Equals(space.HouseId, house.House.Id, StringComparison.Ordinal)
                );
            }
        }

        foreach (var mats in result.MatPower)
        {
            if (mats.KilowattHours.Mean > 0)
            {
                Divide(result, amounts, mats.KilowattHours.Mean * (mats.Space.Power?.Price ?? double.NaN), space =>
                    string.Equals(space.Id, mats.Space.Id, StringComparison.Ordinal)
                );
            }
        }

        var all = amounts.Sum();
        return [.. amounts.Select(amount => new GrowerCost(amount, all > 0 ? amount / all : double.NaN))];
    }

    private static void Divide(StudyResult result, double[] amounts, double cost, Func<Season.Inputs.Space, bool> isIn)
    {
        int[] spaces =
        [
            .. Enumerable.Range(0, result.Plan.Scenario.Spaces.Length).Where(space => isIn(result.Plan.Scenario.Spaces[space])),
        ];
        double[] held = [.. result.Growers.Select(grower => spaces.Sum(space => grower.TrayDaysBySpace[space].Mean))];
        var everyones = held.Sum();
        if (everyones <= 0)
        {
            return;
        }

        for (var grower = 0; grower < amounts.Length; grower++)
        {
            amounts[grower] += cost * held[grower] / everyones;
        }
    }
}
