using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Air;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Check;

/// <summary>Tells the heater, fans and vents that each house of a given size takes, and warns of a heater that is too small.</summary>
internal static class AirTelling
{
    public static void Tell(Passages words, Scenario scenario)
    {
        var houses = HouseAirNeed.Of(scenario);
        if (houses.IsEmpty)
        {
            return;
        }

        words.Heading("Air and heat of the houses: sizes for planning");
        Each(need => AirWords.Heater(need, scenario.Units));
        Each(AirWords.Stops);
        if (houses.Any(need => need.Heater?.FreezesAfter is not null))
        {
            words.Sentence(AirWords.Cooling, 2);
        }

        var table = words.Table(["house", "what", ">from", ">to", "unit", "rule"]);
        foreach (var need in houses)
        {
            foreach (var line in AirWords.Lines(need, scenario.Units))
            {
                table.Add(need.House.Name, line.What, line.From, line.To, line.Unit, line.Trust);
            }
        }

        Each(need => AirWords.Fans(need, scenario.Units));
        words.Sentence(AirWords.Ranges, 2);
        if (houses.Any(need => need.House.IsHeated))
        {
            words.Sentence(AirWords.Alarm, 2);
        }

        words.Sentence("Caution: " + HeatCautions.Air, 2);

        void Each(Func<HouseAirNeed, string?> say)
        {
            foreach (var need in houses)
            {
                if (say(need) is { } sentence)
                {
                    words.Sentence($"{PlainText.Short(need.House.Name, 40)}: {sentence}", 2);
                }
            }
        }
    }

    /// <summary>Warnings of the heaters that do not carry the coldest night.</summary>
    public static ImmutableArray<Fault> Warnings(Scenario scenario) =>
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
