using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;

namespace BenchSim.Answers.Check;

/// <summary>Tells the mishaps of the site.</summary>
internal static class MishapTelling
{
    public static void Tell(Passages words, Scenario scenario)
    {
        if (scenario.Mishaps.IsEmpty)
        {
            return;
        }

        words.Heading("Mishaps");
        var table = words.Table(["mishap", ">chance a season", "from", "to", "strikes", ">plants lost"]);
        foreach (var mishap in scenario.Mishaps)
        {
            table.Add(
                mishap.Name,
                ChanceWords.Setting(mishap.Chance),
                Dates.Iso(mishap.From),
                Dates.Iso(mishap.To),
                MishapWords.Struck(scenario, mishap),
                ChanceWords.Setting(mishap.Loss)
            );
        }
    }
}
