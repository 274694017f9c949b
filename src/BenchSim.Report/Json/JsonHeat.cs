using System.Collections.Immutable;
using BenchSim.Report.Tables;
using BenchSim.Report.Words;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Json;

/// <summary>Heat lost on the coldest night.</summary>
/// <param name="Watts">Watts.</param>
/// <param name="InsideC">Temperature kept, degrees Celsius.</param>
/// <param name="OutdoorC">Outdoor temperature, degrees Celsius.</param>
public sealed record JsonLoad(double Watts, double InsideC, double OutdoorC)
{
    /// <summary>The shape of a design load; null for none.</summary>
    public static JsonLoad? Of(DesignLoad? load) => load is { } known ? new(known.Watts, known.InsideC, known.OutdoorC) : null;
}

/// <summary>A house and its fuel.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="DaysOpen">Days open.</param>
/// <param name="Fuel">Fuel id; null where no fuel is worked out, and then so are all amounts.</param>
/// <param name="Unit">Unit of the amounts.</param>
/// <param name="Price">Price of a unit.</param>
/// <param name="Amount">Fuel of the season.</param>
/// <param name="Cost">Its cost; null without a price.</param>
/// <param name="Months">Fuel by month of the play.</param>
/// <param name="DesignLoad">Heat lost on the coldest night; null where that night is not given.</param>
internal sealed record JsonHouse(
    string Id,
    string Name,
    JsonEstimate DaysOpen,
    string? Fuel,
    string? Unit,
    double? Price,
    JsonEstimate? Amount,
    JsonEstimate? Cost,
    ImmutableArray<JsonMonth> Months,
    JsonLoad? DesignLoad
)
{
    public static JsonHouse Of(HouseResult result, Scenario scenario)
    {
        var house = result.House;
        var heat = result.Fuel is null ? null : house.Heat;
        var measure = heat is null ? null : new FuelMeasure(heat.Fuel, scenario.Units);
        MonthFuel[] months = measure is null || result.Months.IsDefault ? [] : [.. result.Months];
        return new(
            house.Id,
            house.Name,
            JsonEstimate.Of(result.DaysOpen),
            heat?.Fuel.Id,
            measure?.Unit,
            heat?.Price is { } price ? measure!.Price(price) : null,
            measure is null ? null : JsonEstimate.Of(measure.Of(result.Fuel!.Value)),
            heat?.Price is { } each ? JsonEstimate.Of(Spreads.Times(result.Fuel!.Value, each)) : null,
            [.. months.Select(month => new JsonMonth(FuelTable.MonthOf(month), JsonEstimate.Of(measure!.Of(month.Fuel))))],
            JsonLoad.Of(house.Load)
        );
    }
}

/// <summary>Fuel of a month.</summary>
/// <param name="Month">Year and month, yyyy-mm.</param>
/// <param name="Amount">Fuel.</param>
internal sealed record JsonMonth(string Month, JsonEstimate Amount);

/// <summary>The heat mats of a space whose watts are given.</summary>
/// <param name="Space">Space id.</param>
/// <param name="Watts">Watts of all mats of the space.</param>
/// <param name="Price">Price of a kilowatt-hour.</param>
/// <param name="KilowattHours">Electricity of the season.</param>
/// <param name="Cost">Its cost; null without a price.</param>
/// <param name="CircuitLimitWatts">Most watts that the breaker may carry all day; null where the circuit is not given.</param>
/// <param name="CircuitWithin">Whether the mats keep that limit.</param>
internal sealed record JsonMats(
    string Space,
    double? Watts,
    double? Price,
    JsonEstimate KilowattHours,
    JsonEstimate? Cost,
    double? CircuitLimitWatts,
    bool? CircuitWithin
)
{
    public static JsonMats Of(MatPowerResult mats)
    {
        var power = mats.Space.Power;
        var check = power is null ? null : HeatFigures.CheckOf(power);
        return new(
            mats.Space.Id,
            power?.Watts,
            power?.Price,
            JsonEstimate.Of(mats.KilowattHours),
            power?.Price is { } price ? JsonEstimate.Of(Spreads.Times(mats.KilowattHours, price)) : null,
            check?.LimitWatts,
            check?.IsWithin
        );
    }
}
