using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Answers.Check;

/// <summary>Tells the ways to the stand of each directly sown batch, side by side.</summary>
internal static class StandTelling
{
    public static void Tell(Passages words, SeasonPlan plan)
    {
        BatchPlan[] direct = [.. plan.Batches.Where(batch => batch.Flat is null)];
        if (direct.Length == 0)
        {
            words.Heading("No batch is sown directly, so there are no ways to enough plants to compare.");
            return;
        }

        words.Heading("Ways to enough plants");
        var table = words.Table(["batch", ">plants", "way", ">trays", ">seeds a cell", ">seeds", ">chance of enough plants", ">cost"]);
        var isCostMissing = false;
        foreach (var batch in direct)
        {
            foreach (var way in StandWays.Of(plan.Scenario, batch))
            {
                var can = way.Trays >= 0;
                isCostMissing |= can && way.Cost is null;
                table.Add(
                    batch.Order.Id,
                    Numbers.Whole(batch.Order.Plants),
                    way.What,
                    can ? Numbers.Whole(way.Trays) : "no number will do",
                    Numbers.Whole(way.SeedsPerCell),
                    can ? Numbers.Whole(way.Seeds) : "-",
                    can ? ChanceWords.Stand(way.Chance) : "-",
                    way.Cost is { } cost ? new Money(plan.Scenario.Rules.Prices.Currency).Amount(cost) : "-"
                );
            }
        }

        words.Sentence(
            "\"One seed a cell\" and \"two seeds a cell and thin\" take the fewest trays that bring the plants wanted "
                + $"with a chance of {ChanceWords.Setting(plan.Scenario.Rules.StandAssurance)} "
                + "or more. The cost is that of seed, potting mix and the work of sowing; thinning is not in it.",
            2
        );
        if (isCostMissing)
        {
            words.Sentence("A cost needs the prices of a thousand seeds, a litre of potting mix and an hour of work.", 2);
        }
    }
}
