using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Study.Review;

/// <summary>The fuel of a house in a season that is over, in the unit it is bought by.</summary>
/// <param name="House">The house.</param>
/// <param name="Rows">Rows of the log that count it.</param>
/// <param name="Counted">
/// What they count: deliveries added up, and of a meter the last reading less the first; null where there is no row.
/// </param>
/// <param name="AsItWas">What the model says it took, by the places and days of the log and the weather observed.</param>
/// <param name="Expected">What the agreed plan was to take; null where it has no such house.</param>
public sealed record FuelSpent(House House, int Rows, double? Counted, double AsItWas, Estimate? Expected)
{
    /// <summary>The houses that burn fuel.</summary>
    /// <param name="now">The plan, with its log.</param>
    /// <param name="agreed">The agreed plan, played.</param>
    /// <param name="wattHours">Heat that each house of the plan took.</param>
    /// <param name="unread">Rows of fuel that name no house of these, or no unit of its fuel.</param>
    internal static ImmutableArray<FuelSpent> Of(SeasonPlan now, StudyResult agreed, long[] wattHours, out int unread)
    {
        var scenario = now.Scenario;
        var spent = ImmutableArray.CreateBuilder<FuelSpent>();
        for (var at = 0; at < scenario.Houses.Length; at++)
        {
            var house = scenario.Houses[at];
            if (!SeasonEnergy.Burns(house))
            {
                continue;
            }

            var rows = FuelRow.Of(scenario, house);
            double[] readings = [.. rows.Where(row => row.IsReading).Select(row => row.Amount)];
            var expected = agreed.Houses.FirstOrDefault(each => string.Equals(each.House.Id, house.Id, StringComparison.Ordinal));
            spent.Add(
                new FuelSpent(
                    house,
                    rows.Length,
                    rows.Length == 0
                        ? null
                        : rows.Where(row => !row.IsReading).Sum(row => row.Amount) + (readings.Length > 1 ? readings[^1] - readings[0] : 0),
                    house.Heat!.Fuel.Units(wattHours[at], house.Heat.Efficiency),
                    expected?.Fuel
                )
            );
        }

        unread = FuelRow.CountOf(scenario) - spent.Sum(each => each.Rows);
        return spent.ToImmutable();
    }
}
