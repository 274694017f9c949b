using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Air;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Check;

/// <summary>Warnings of the heaters that do not carry the coldest night.</summary>
public static class HeaterWarnings
{
    /// <summary>Those of a site.</summary>
    /// <param name="scenario">The site.</param>
    public static ImmutableArray<Fault> Of(Scenario scenario) =>
        [
            .. HouseAirNeed
                .Of(scenario)
                .Where(need => need.Heater?.Carries is false)
                .Select(need => new Fault(
                    need.House.Heat!.OutputPlace,
                    $"house \"{need.House.Id}\": its heater of {AirWords.Power(need.Heater!.OutputW!.Value, scenario.Units)} does not "
                        + $"carry the coldest night, which takes {AirWords.Power(need.Heater.Load.Watts, scenario.Units)}",
                    $"have one of {AirWords.Power(need.Heater.Wanted, scenario.Units)} chosen, or keep the house cooler that night"
                )),
        ];
}
