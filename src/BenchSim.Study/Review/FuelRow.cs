using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Review;

/// <summary>A row of a log that counts the fuel of a house.</summary>
/// <param name="Day">The day.</param>
/// <param name="IsReading">Whether a meter was read, rather than fuel delivered.</param>
/// <param name="Amount">Amount, in the unit the fuel is bought by.</param>
internal sealed record FuelRow(DateOnly Day, bool IsReading, double Amount)
{
    /// <summary>The rows of a scenario that count fuel, readable or not.</summary>
    public static int CountOf(Scenario scenario) => scenario.Log.Count(IsFuel);

    /// <summary>The rows of a house, in order of the day; those without a unit of its fuel are left out.</summary>
    public static ImmutableArray<FuelRow> Of(Scenario scenario, House house) =>
        [
            .. scenario
                .Log.Where(row => IsFuel(row) && HouseOf(scenario, row) == house)
                .OrderBy(row => row.Date)
                .Select(row =>
                    FuelWords.Bought(house.Heat!.Fuel, row.Count!.Value, row.Note) is { } amount
                        ? new FuelRow(row.Date, FuelWords.IsReading(row.Note), amount)
                        : null
                )
                .OfType<FuelRow>(),
        ];

    private static bool IsFuel(LogEntry row) => row is { What: LogKind.Fuel, Count: not null };

    private static House? HouseOf(Scenario scenario, LogEntry row)
    {
        if (row.Space is not { } id)
        {
            House[] burning = [.. scenario.Houses.Where(SeasonEnergy.Burns)];
            return burning.Length == 1 ? burning[0] : null;
        }

        var house = scenario.Spaces.FirstOrDefault(space => string.Equals(space.Id, id, StringComparison.Ordinal))?.HouseId ?? id;
        return scenario.Houses.FirstOrDefault(each => string.Equals(each.Id, house, StringComparison.Ordinal));
    }
}
