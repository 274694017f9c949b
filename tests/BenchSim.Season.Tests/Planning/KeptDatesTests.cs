using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using CsCheck;

namespace BenchSim.Season.Tests.Planning;

/// <summary>A plan made with what an earlier one kept is the plan made from nothing.</summary>
public class KeptDatesTests
{
    [Fact]
    public void Plans_of_random_sites_do_not_depend_on_what_is_kept()
    {
        var kept = new KeptDates();
        RandomSites.GenScenario.Each(60, seed: 41, scenario =>
        {
            foreach (var each in Changed(scenario))
            {
                var (with, without) = (SeasonPlanner.Make(each, kept), SeasonPlanner.Make(each));
                Assert.Equal(without.Faults, with.Faults);
                Assert.Equal(without.Plan is null, with.Plan is null);
                if (without.Plan is { } plan)
                {
                    Assert.Equal(string.Join("\n", plan.Warnings), string.Join("\n", with.Plan!.Warnings));
                    Assert.Equal(plan.Days, with.Plan.Days);
                    Assert.Equal(plan.Batches.Select(Told), with.Plan.Batches.Select(Told), StringComparer.Ordinal);
                }
            }
        });
    }

    // As it is, with other places, a warmer or cooler house, more slack, other plants, and as it was again.
    private static Scenario[] Changed(Scenario scenario) =>
        [
            scenario,
            scenario with
            {
                Spaces = [.. scenario.Spaces.Select(space => space with { Places = space.Places + 3 })],
            },
            scenario with
            {
                Houses = [.. scenario.Houses.Select(house => house with { NightC = house.NightC - 1.5 })],
            },
            scenario with
            {
                Rules = scenario.Rules with { SlackDays = scenario.Rules.SlackDays + 1 },
            },
            scenario with
            {
                Batches = [.. scenario.Batches.Select(batch => batch with { Plants = batch.Plants + 40, Note = "more" })],
            },
            scenario,
        ];

    // All that is planned of a batch, and whose it is.
    private static string Told(BatchPlan batch) =>
        string.Join(
            ' ',
            new object?[]
            {
                batch.Order,
                batch.Trays,
                batch.Flats,
                batch.Seeds,
                BitConverter.DoubleToInt64Bits(batch.StandChance),
                BitConverter.DoubleToInt64Bits(batch.Germination),
                BitConverter.DoubleToInt64Bits(batch.RelativeGermination),
                batch.SowOn,
                batch.EmergeOn,
                batch.OffMatOn,
                batch.PotUpOn,
                batch.FinishOn,
                batch.TableOn,
                batch.ReadyOn,
                batch.SetOutOn,
                string.Join('/', batch.Mats),
                string.Join('/', batch.Benches),
                string.Join('/', batch.Tables),
            }
        );
}
