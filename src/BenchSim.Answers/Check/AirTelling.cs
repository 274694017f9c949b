using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Air;
using BenchSim.Season.Inputs;

namespace BenchSim.Answers.Check;

/// <summary>Tells the heater, fans and vents that each house of a given size takes.</summary>
internal static class AirTelling
{
    public static void Tell(Passages words, Scenario scenario)
    {
        var houses = HouseAirNeed.Of(scenario);
        if (houses.IsEmpty)
        {
            return;
        }

        words.Heading(AirWords.Title);
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
        foreach (var note in AirWords.Notes(houses))
        {
            words.Sentence(note, 2);
        }

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
}
