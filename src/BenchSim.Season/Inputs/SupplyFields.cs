using BenchSim.Season.Fields;

namespace BenchSim.Season.Inputs;

/// <summary>The columns of supplies.csv.</summary>
public static class SupplyFields
{
    /// <summary>Name of the file.</summary>
    public const string File = "supplies.csv";

    /// <summary>Most of a thing in a pack, and on hand.</summary>
    public const int Most = 100_000_000;

    /// <summary>A line of which nothing is said.</summary>
    public static Supply Nothing { get; } = new() { Item = "" };

    /// <summary>The columns, in the order of the reference.</summary>
    public static FieldTable<Supply> Table { get; } =
        FieldTable
            .Of(File, File, Nothing)
            .Key(
                "item",
                new TextKind("crop id, tray type id or carrier"),
                supply => supply.Item,
                (supply, item) => supply with { Item = item }
            )
            .Means("Crop whose seed it is, tray type, or \"carrier\" for the solid trays under cell trays.")
            .Required("name a crop or a tray type, or write carrier")
            .Key("variety", Kinds.Title, supply => supply.Variety, (supply, variety) => supply with { Variety = variety })
            .Means("Variety, as the plan writes it; only for seed.", leftOut: "every variety without a line of its own")
            .Key("pack", new WholeKind(1, Most), supply => supply.Pack, (supply, pack) => supply with { Pack = pack })
            .Means("Seeds, trays or carriers in the pack you buy.", Why.Ours)
            .Key("price", Kinds.Money.OrNone("not given"), supply => supply.Price, (supply, price) => supply with { Price = price })
            .Means("Price of a pack.", leftOut: "its cost is not worked out")
            .Key("on_hand", new WholeKind(0, Most), supply => supply.OnHand, (supply, count) => supply with { OnHand = count })
            .Means("Seeds, trays or carriers you have.", Why.Ours)
            .Key("supplier", Kinds.Title, supply => supply.Supplier, (supply, name) => supply with { Supplier = name })
            .Means("Who sells it: the order is put together by supplier.", leftOut: "none")
            .Key("delivery_days", Kinds.Days, supply => supply.DeliveryDays, (supply, days) => supply with { DeliveryDays = days })
            .Means("Days from ordering to having it.", Why.Ours)
            .Key("reused", Kinds.YesNo, supply => supply.IsReused, (supply, isReused) => supply with { IsReused = isReused })
            .Means("Whether trays are washed and used again as they come back empty; carriers always are.", Why.Ours)
            .Table();
}
