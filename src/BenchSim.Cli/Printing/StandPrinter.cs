using System.Text.Json;
using BenchSim.Answers.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Cli.Printing;

/// <summary>Prints the ways to the stand of each directly sown batch, side by side.</summary>
internal static class StandPrinter
{
    public static void Print(Desk desk, SeasonPlan plan)
    {
        BatchPlan[] direct = [.. plan.Batches.Where(batch => batch.Flat is null)];
        if (direct.Length == 0)
        {
            PlanPrinter.Heading(desk, "No batch is sown directly, so there are no ways to a stand to compare.");
            return;
        }

        PlanPrinter.Heading(desk, "Ways to the stand");
        var table = new TextTable(["batch", ">plants", "way", ">trays", ">seeds a cell", ">seeds", ">chance of the stand", ">cost"]);
        var isCostMissing = false;
        foreach (var batch in direct)
        {
            foreach (var way in StandWays.Of(plan.Scenario, batch))
            {
                var can = way.Trays >= 0;
                isCostMissing |= can && way.Cost is null;
                table.Add(
                    batch.Order.Id,
                    Figures.Whole(batch.Order.Plants),
                    way.What,
                    can ? Figures.Whole(way.Trays) : "no number will do",
                    Figures.Whole(way.SeedsPerCell),
                    can ? Figures.Whole(way.Seeds) : "-",
                    can ? Figures.Percent(way.Chance) : "-",
                    way.Cost is { } cost ? Figures.Money(cost, plan.Scenario.Rules.Prices.Currency) : "-"
                );
            }
        }

        table.Print(desk);
        desk.SayWrapped(
            $"\"One seed a cell\" and \"two seeds a cell and thin\" take the fewest trays that bring the plants wanted with a chance of {Figures.Setting(plan.Scenario.Rules.StandAssurance)} "
                + "or more. The cost is that of seed, potting mix and the work of sowing; thinning is not in it.",
            2
        );
        if (isCostMissing)
        {
            desk.SayWrapped("A cost needs the prices of a thousand seeds, a litre of potting mix and an hour of work.", 2);
        }
    }

    public static void Write(Utf8JsonWriter json, SeasonPlan plan)
    {
        json.WriteStartArray("stand_ways");
        foreach (var batch in plan.Batches)
        {
            foreach (var way in StandWays.Of(plan.Scenario, batch))
            {
                Write(json, batch, way);
            }
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, BatchPlan batch, StandWay way)
    {
        json.WriteStartObject();
        json.WriteString("batch", batch.Order.Id);
        json.WriteString("way", way.What);
        WriteIfThere(json, "trays", way.Trays >= 0 ? way.Trays : null);
        json.WriteNumber("seeds_per_cell", way.SeedsPerCell);
        WriteIfThere(json, "seeds", way.Trays >= 0 ? way.Seeds : null);
        WriteIfThere(json, "chance", way.Trays >= 0 ? way.Chance : null);
        WriteIfThere(json, "cost", way.Cost);
        json.WriteEndObject();
    }

    private static void WriteIfThere(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
