using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>Fuel and current of a played season, in whole thousandths so that sums do not depend on their order.</summary>
internal static class SeasonEnergy
{
    /// <summary>Parts of a unit counted.</summary>
    public const double Thousandths = 1000;

    private const int HoursADay = 24;

    /// <summary>Whether the fuel of a house is worked out.</summary>
    public static bool Burns(House house) => house.Heat is not null && house.IsHeated;

    /// <summary>Fuel of the houses that count, each weighed.</summary>
    /// <param name="scenario">Scenario of the season.</param>
    /// <param name="season">Season.</param>
    /// <param name="counts">Which houses count.</param>
    /// <param name="weight">Weight of a unit of fuel of a house: 1, or its price.</param>
    public static long Fuel(Scenario scenario, SeasonResult season, Func<House, bool> counts, Func<House, double> weight)
    {
        long sum = 0;
        for (var at = 0; at < scenario.Houses.Length; at++)
        {
            var house = scenario.Houses[at];
            if (Burns(house) && counts(house))
            {
                sum += Rounded(house.Heat!.Fuel.Units(season.HeatWattHours[at].Sum(), house.Heat.Efficiency) * weight(house));
            }
        }

        return sum;
    }

    /// <summary>Kilowatt-hours of the mats, each weighed.</summary>
    /// <param name="scenario">Scenario of the season.</param>
    /// <param name="season">Season.</param>
    /// <param name="weight">Weight of a kilowatt-hour: 1, or its price.</param>
    public static long MatPower(Scenario scenario, SeasonResult season, Func<MatPower, double> weight)
    {
        long sum = 0;
        for (var at = 0; at < scenario.Spaces.Length; at++)
        {
            if (scenario.Spaces[at].Power is { } power)
            {
                sum += Rounded(
                    MatElectricity.KilowattHours(power.Watts, HoursADay * (double)season.MatDays[at], power.Duty) * weight(power)
                );
            }
        }

        return sum;
    }

    /// <summary>To whole thousandths.</summary>
    public static long Rounded(double units) => (long)Math.Round(units * Thousandths, MidpointRounding.AwayFromZero);
}
