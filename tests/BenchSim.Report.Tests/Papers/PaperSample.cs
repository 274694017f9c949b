using BenchSim.Report.Papers;
using BenchSim.Report.Tests.Pdf;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Tests.Papers;

/// <summary>Plans whose papers are tested.</summary>
internal static class PaperSample
{
    /// <summary>The papers of a plan, all dates.</summary>
    public static PaperContent Of(SeasonPlan plan) => PaperContent.Of(plan, null, null, null);

    /// <summary>Twelve batches, each with hostile text in every field a user writes.</summary>
    public static SeasonPlan Hostile()
    {
        var plan = SyntheticPlan.Spring();
        string[] names = [.. HostileNames.All.Cast<object[]>().Select(row => (string)row[0])];
        return plan with
        {
            Scenario = plan.Scenario with
            {
                Name = HostileNames.Script + HostileNames.Breaks,
                Spaces = [.. plan.Scenario.Spaces.Select((space, at) => space with { Name = names[at] })],
                Rules = plan.Scenario.Rules with { Prices = plan.Scenario.Rules.Prices with { Currency = "<b>&=" } },
            },
            Batches =
            [
                .. plan.Batches.Select(
                    (batch, at) =>
                        batch with
                        {
                            Order = batch.Order with
                            {
                                Id = names[at % names.Length] + at,
                                Grower = names[at % names.Length],
                                Variety = names[at % names.Length],
                                PacketId = names[at % names.Length],
                                Note = names[at % names.Length],
                            },
                            Crop = batch.Crop with { Name = names[at % names.Length] },
                            Tray = batch.Tray with { Name = names[at % names.Length] },
                        }
                ),
            ],
        };
    }
}
