using BenchSim.Report.Words;
using BenchSim.Season.Air;

namespace BenchSim.Answers.Json;

/// <summary>Heater, fans and vents that a house takes by the rules of the trade.</summary>
/// <param name="House">House id.</param>
/// <param name="SummerFans">Exhaust fans for summer together, cubic metres an hour.</param>
/// <param name="ChangesAMinute">How often these change the air, times a minute.</param>
/// <param name="Inlets">Inlets for these, square metres.</param>
/// <param name="WinterFans">Exhaust fans of the winter stage together, cubic metres an hour.</param>
/// <param name="Vents">Instead of fans: openings of both sides together, and as much again along the ridge, square metres.</param>
/// <param name="RollUp">Height to which both sides are rolled up for that, metres.</param>
/// <param name="Circulation">Circulation fans together, cubic metres an hour.</param>
/// <param name="CirculationFans">Number of circulation fans.</param>
/// <param name="Heater">Its heater; null where it is not heated or its coldest night is not given.</param>
internal sealed record JsonAir(
    string House,
    JsonRuled SummerFans,
    JsonRuled ChangesAMinute,
    JsonRuled Inlets,
    JsonRuled WinterFans,
    JsonRuled Vents,
    JsonRuled RollUp,
    JsonRuled Circulation,
    int CirculationFans,
    JsonHeater? Heater
)
{
    public static JsonAir Of(HouseAirNeed need) =>
        new(
            need.House.Id,
            JsonRuled.Of(need.SummerFans, AirRules.SummerFans),
            JsonRuled.Of(need.ChangesAMinute, AirRules.SummerFans),
            JsonRuled.Of(need.Inlets, AirRules.Inlet),
            JsonRuled.Of(need.WinterFans, AirRules.WinterFans),
            JsonRuled.Of(need.Vents, AirRules.Vents),
            JsonRuled.Of(need.RollUp, AirRules.Vents),
            JsonRuled.Of(new AirRange(need.Circulation, need.Circulation), AirRules.Circulation),
            need.CirculationFans,
            need.Heater is { } heater ? JsonHeater.Of(heater) : null
        );
}

/// <summary>The heater of a house on its coldest night.</summary>
/// <param name="LossWatts">Heat lost on that night, watts.</param>
/// <param name="WantedWatts">Output it should have, margin and all, watts.</param>
/// <param name="OutputWatts">Output of the heaters there, watts; null where it is not given.</param>
/// <param name="Carries">Whether they keep the house warm on that night; null where their output is not given.</param>
/// <param name="HoldsToC">Coldest air outdoors against which they do, degrees Celsius; null where their output is not given.</param>
/// <param name="FreezesAfterHours">Hours from the stop of the heater to freezing; null where it is not as cold outdoors.</param>
internal sealed record JsonHeater(
    double LossWatts,
    JsonRuled WantedWatts,
    double? OutputWatts,
    bool? Carries,
    double? HoldsToC,
    JsonRuled? FreezesAfterHours
)
{
    public static JsonHeater Of(HeaterNeed heater) =>
        new(
            heater.Load.Watts,
            JsonRuled.Of(heater.Wanted, AirRules.HeaterOverLoss),
            heater.OutputW,
            heater.Carries,
            heater.HoldsToC,
            heater.FreezesAfter is { } hours ? JsonRuled.Of(hours, AirRules.FloorWattHours) : null
        );
}

/// <summary>A size by a rule of the trade.</summary>
/// <param name="From">By the lowest figure of the rule.</param>
/// <param name="To">By the highest.</param>
/// <param name="Trust">How far the rule may be trusted.</param>
/// <param name="Source">Where it comes from.</param>
internal sealed record JsonRuled(double From, double To, string Trust, string Source)
{
    public static JsonRuled Of(AirRange range, AirRule rule) =>
        new(range.Low, range.High, Trade.Words(rule.Source.Trust), rule.Source.Source);
}
