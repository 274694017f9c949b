using System.Collections.Immutable;
using BenchSim.Report.Tables;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Report.Papers;

/// <summary>The order as CSV.</summary>
internal static class OrderTable
{
    private static readonly ImmutableArray<Column> s_columns =
    [
        new("item", "text", "seed, tray, flat, carrier or mix"),
        new("name", "text", "crop, tray type or what it is"),
        new("variety", "text", "variety; blank where the plan names none"),
        new("packet", "text", "packet; blank where the plan names none"),
        new("sowing", "text", "line of the plan, where it names neither variety nor packet"),
        new("amount", "see unit", "how much is needed"),
        new("unit", "text", "unit of the amount"),
        new("most_at_once", "see unit", "most that stand on one day of the plan; blank for seed and mix"),
        new("price", "money", "price; blank where none is given"),
        new("price_for", "text", "what the price is for"),
        new("cost", "money", "what it costs; of mix in the line of litres alone"),
    ];

    /// <summary>One line an item.</summary>
    public static CsvTable Write(SupplyNeeds needs)
    {
        var table = new CsvTable(s_columns);
        foreach (var seed in needs.Seeds)
        {
            table
                .Text("seed")
                .Text(seed.Crop.Name)
                .Text(seed.Variety)
                .Text(seed.PacketId ?? "")
                .Text(seed.Sowing ?? "")
                .Number(seed.Seeds)
                .Text("seeds")
                .Text("")
                .Number(seed.ThousandSeeds ?? double.NaN)
                .Text("1000 seeds")
                .Number(seed.Cost ?? double.NaN);
        }

        foreach (var tray in needs.Trays)
        {
            var unit = tray.Type.IsFlat ? "flats" : "trays";
            table
                .Text(tray.Type.IsFlat ? "flat" : "tray")
                .Text(tray.Type.Name)
                .Text("")
                .Text("")
                .Text("")
                .Number(tray.Filled)
                .Text(unit)
                .Number(tray.MostAtOnce)
                .Number(double.NaN)
                .Text("")
                .Number(double.NaN);
        }

        table
            .Text("carrier")
            .Text("carrier for a cell tray")
            .Text("")
            .Text("")
            .Text("")
            .Number(needs.Carriers)
            .Text("carriers")
            .Number(needs.Carriers)
            .Number(double.NaN)
            .Text("")
            .Number(double.NaN);
        Mix(table, needs.MixLitres, "litres", needs.Prices.MixLitre, needs.MixCost);

        // The same mix twice more: its cost is in the line of litres, and counts once.
        Mix(table, needs.MixCubicFeet, "cubic feet", needs.Prices.MixLitre * Volumes.LitresACubicFoot, null);
        Mix(table, needs.MixUnits, $"{needs.Mix.SoldIn}s", null, null);
        return table;
    }

    private static void Mix(CsvTable table, double amount, string unit, double? price, double? cost) =>
        table
            .Text("mix")
            .Text("potting mix")
            .Text("")
            .Text("")
            .Text("")
            .Number(amount)
            .Text(unit)
            .Text("")
            .Number(price ?? double.NaN)
            .Text(
                unit switch
                {
                    "litres" => "litre",
                    "cubic feet" => "cubic foot",
                    _ => "",
                }
            )
            .Number(cost ?? double.NaN);
}
