using System.Collections.Immutable;
using BenchSim.Report.Json;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Weather;

namespace BenchSim.Answers.Json;

/// <summary>What the site's weather means for a plan before a season is played.</summary>
/// <param name="Years">Years of weather it rests on.</param>
/// <param name="FrostAfter">Share of years with frost after a date.</param>
/// <param name="NightsBelow">Nights below the temperatures that hold some crop back, by fortnight.</param>
/// <param name="HoldDays">Days on which the weather alone would hold trays back, by fortnight.</param>
/// <param name="Airs">The air of each house by month.</param>
/// <param name="Fuel">Fuel expected, by house.</param>
/// <param name="Mats">Electricity of the heat mats, by the planned dates.</param>
internal sealed record JsonClimate(
    int Years,
    ImmutableArray<JsonFrost> FrostAfter,
    ImmutableArray<JsonNights> NightsBelow,
    ImmutableArray<JsonHolds> HoldDays,
    ImmutableArray<JsonHouseMonths> Airs,
    ImmutableArray<JsonHouseNeed> Fuel,
    ImmutableArray<JsonMatNeed> Mats
)
{
    public static JsonClimate Of(ClimateSummary climate) =>
        new(
            climate.Years,
            [.. climate.Frost is { } frost ? frost.FrostAfter.Select(chance => JsonFrost.Of(chance, frost.Last)) : []],
            [.. climate.Nights is { } nights ? nights.Nights.Select(JsonNights.Of) : []],
            [.. climate.Holds.Select(JsonHolds.Of)],
            [.. climate.Airs.Select(JsonHouseMonths.Of)],
            [.. climate.Houses.Select(JsonHouseNeed.Of)],
            [.. climate.Mats.Select(JsonMatNeed.Of)]
        );
}

/// <summary>Frost after a date, that is, on at least one night from then on.</summary>
/// <param name="From">The date.</param>
/// <param name="To">Last night that is looked at.</param>
/// <param name="Share">Share of the years that have one.</param>
/// <param name="Years">Years.</param>
internal sealed record JsonFrost(DateOnly From, DateOnly To, double Share, int Years)
{
    public static JsonFrost Of(FrostChance chance, DateOnly last) => new(chance.From, last, chance.Share, chance.Years);
}

/// <summary>Cold nights of a fortnight.</summary>
/// <param name="From">Its first day.</param>
/// <param name="Days">Its days.</param>
/// <param name="ThresholdC">Temperature that they are below.</param>
/// <param name="Mean">Mean number of them.</param>
/// <param name="StandardDeviation">Its standard deviation from year to year.</param>
/// <param name="Years">Years.</param>
internal sealed record JsonNights(DateOnly From, int Days, double ThresholdC, double Mean, double StandardDeviation, int Years)
{
    public static JsonNights Of(FortnightNights fortnight) =>
        new(fortnight.First, fortnight.Days, fortnight.ThresholdC, fortnight.Mean, fortnight.StandardDeviation, fortnight.Years);
}

/// <summary>Days on which the weather alone would hold trays of some crops back.</summary>
/// <param name="Kind">What they are kept from: "table", "field", or "wet" for a field that is too wet for any.</param>
/// <param name="AboveC">Temperature that every forecast night must reach; null for "wet".</param>
/// <param name="Cover">Cover of the field under which the nights are looked at: "open", "row cover", "low tunnel" or "tunnel".</param>
/// <param name="Under">Houses of the tables, an empty text for tables outdoors; empty for the field.</param>
/// <param name="Crops">Names of the crops; empty for "wet".</param>
/// <param name="Fortnights">The fortnights.</param>
internal sealed record JsonHolds(
    string Kind,
    double? AboveC,
    string Cover,
    ImmutableArray<string> Under,
    ImmutableArray<string> Crops,
    ImmutableArray<JsonHeldFortnight> Fortnights
)
{
    public static JsonHolds Of(HoldDays holds) =>
        new(
            holds.Kind switch
            {
                HoldKind.Table => "table",
                HoldKind.Field => "field",
                _ => "wet",
            },
            holds.AboveC,
            PlanFields.FieldCoverWord[holds.Cover],
            holds.Under,
            holds.Crops,
            [
                .. holds.Fortnights.Select(fortnight => new JsonHeldFortnight(
                    fortnight.First,
                    fortnight.Days,
                    fortnight.Mean,
                    fortnight.StandardDeviation,
                    fortnight.Years
                )),
            ]
        );
}

/// <summary>Days of a fortnight that hold trays back.</summary>
/// <param name="From">Its first day.</param>
/// <param name="Days">Its days.</param>
/// <param name="Mean">Mean number of days that hold.</param>
/// <param name="StandardDeviation">Its standard deviation from year to year.</param>
/// <param name="Years">Years.</param>
internal sealed record JsonHeldFortnight(DateOnly From, int Days, double Mean, double StandardDeviation, int Years);

/// <summary>The air of a house by month.</summary>
/// <param name="House">House id.</param>
/// <param name="Months">By month.</param>
internal sealed record JsonHouseMonths(string House, ImmutableArray<JsonMonthInHouse> Months)
{
    public static JsonHouseMonths Of(HouseMonths house) =>
        new(
            house.House.Id,
            [
                .. house.Months.Select(month => new JsonMonthInHouse(
                    month.First,
                    month.NoonShutC,
                    month.NoonC,
                    month.VentShare,
                    house.House.IsHeated ? month.HeatedHours : null
                )),
            ]
        );
}

/// <summary>A month in a house, means over its days and the years.</summary>
/// <param name="From">Its first day in the season.</param>
/// <param name="NoonShutC">Air at noon were the vents kept shut, degrees Celsius.</param>
/// <param name="NoonC">Air at noon, vents used, degrees Celsius.</param>
/// <param name="VentShare">Share of the days on which the vents open.</param>
/// <param name="HeatedHours">Hours in the month in which the heater runs; null in an unheated house.</param>
internal sealed record JsonMonthInHouse(DateOnly From, double NoonShutC, double NoonC, double VentShare, double? HeatedHours);

/// <summary>Fuel expected of a house.</summary>
/// <param name="House">House id.</param>
/// <param name="Fuel">Fuel id.</param>
/// <param name="Unit">Unit of the amounts.</param>
/// <param name="Mean">Mean of the season.</param>
/// <param name="Least">Mildest of the years.</param>
/// <param name="Most">Coldest of the years.</param>
/// <param name="Months">By month.</param>
/// <param name="DesignLoad">Heat lost on the coldest night; null where that night is not given.</param>
internal sealed record JsonHouseNeed(
    string House,
    string Fuel,
    string Unit,
    double Mean,
    double Least,
    double Most,
    ImmutableArray<JsonMonthNeed> Months,
    JsonLoad? DesignLoad
)
{
    public static JsonHouseNeed Of(HouseNeed need)
    {
        var fuel = need.House.Heat!.Fuel;
        return new(
            need.House.Id,
            fuel.Id,
            fuel.Unit,
            need.Mean,
            need.Least,
            need.Most,
            [.. need.Months.Select(month => new JsonMonthNeed(month.First, month.Units))],
            JsonLoad.Of(need.Load)
        );
    }
}

/// <summary>Fuel expected of a month.</summary>
/// <param name="From">Its first day in the season.</param>
/// <param name="Mean">Mean.</param>
internal sealed record JsonMonthNeed(DateOnly From, double Mean);

/// <summary>Electricity of the mats of a space, by the planned dates.</summary>
/// <param name="Space">Space id.</param>
/// <param name="Watts">Watts of all mats of the space.</param>
/// <param name="Days">Days in use.</param>
/// <param name="KilowattHours">Electricity of those days.</param>
/// <param name="CircuitLimitWatts">Most watts that the breaker may carry all day; null where the circuit is not given.</param>
/// <param name="CircuitWithin">Whether the mats keep that limit.</param>
internal sealed record JsonMatNeed(
    string Space,
    double Watts,
    int Days,
    double KilowattHours,
    double? CircuitLimitWatts,
    bool? CircuitWithin
)
{
    public static JsonMatNeed Of(MatNeed need) =>
        new(need.Space.Id, need.Space.Power!.Watts, need.Days, need.KilowattHours, need.Circuit?.LimitWatts, need.Circuit?.IsWithin);
}
