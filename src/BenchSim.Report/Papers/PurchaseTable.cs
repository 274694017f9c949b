using System.Collections.Immutable;
using BenchSim.Report.Tables;
using BenchSim.Report.Words;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Papers;

/// <summary>What to buy as CSV: a line for each thing, by supplier.</summary>
internal static class PurchaseTable
{
    private static readonly ImmutableArray<Column> s_columns =
    [
        new("supplier", "text", "supplier; blank where supplies.csv names none"),
        new("item", "text", "id of the crop, for its seed, or of the tray type; or carrier"),
        new("name", "text", "name of the crop or tray type"),
        new("variety", "text", "variety; blank for any"),
        new("needed", "see unit", "what the plan needs"),
        new("unit", "text", "unit of the amounts"),
        new("on_hand", "see unit", "what is there"),
        new("pack", "see unit", "what one pack holds"),
        new("packs", "packs", "packs to buy"),
        new("left_over", "see unit", "what is left when all is used as planned"),
        new("price", "money", "price of a pack; blank where none is given"),
        new("cost", "money", "what the packs cost"),
        new("needed_by", "date", "first day on which it is sown or filled"),
        new("order_by", "date", "that day less the days of delivery"),
        new("growers", "text", "how much of it is for whom"),
    ];

    /// <summary>One line a thing.</summary>
    public static CsvTable Write(ImmutableArray<Purchase> purchases)
    {
        var table = new CsvTable(s_columns);
        foreach (var purchase in purchases)
        {
            table
                .Text(purchase.Supply.Supplier)
                .Text(purchase.Supply.Item)
                .Text(purchase.Name)
                .Text(purchase.Supply.Variety)
                .Number(purchase.Needed)
                .Text(purchase.Unit)
                .Number(purchase.Supply.OnHand)
                .Number(purchase.Supply.Pack)
                .Number(purchase.Packs)
                .Number(purchase.LeftOver)
                .Number(purchase.Supply.Price ?? double.NaN)
                .Number(purchase.Cost ?? double.NaN)
                .Date(purchase.NeededBy)
                .Date(purchase.OrderBy)
                .Text(Growers(purchase));
        }

        return table;
    }

    /// <summary>Whose it is: "Ana 1,200; Mara 300".</summary>
    public static string Growers(Purchase purchase) =>
        string.Join("; ", purchase.Growers.Select(each => $"{each.Grower} {Numbers.Whole(each.Count)}"));
}
