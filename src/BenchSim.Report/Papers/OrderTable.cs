using BenchSim.Report.Tables;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Papers;

/// <summary>The order as CSV.</summary>
internal static class OrderTable
{
    /// <summary>One line an item.</summary>
    public static byte[] Write(SupplyNeeds needs)
    {
        var table = new CsvTable("item", "name", "packet", "sowing", "amount", "unit", "most_at_once", "price", "price_for", "cost");
        foreach (var seed in needs.Seeds)
        {
            table
                .Text("seed")
                .Text(seed.Crop.Name)
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
            .Number(needs.Carriers)
            .Text("carriers")
            .Number(needs.Carriers)
            .Number(double.NaN)
            .Text("")
            .Number(double.NaN);
        Mix(table, needs.MixLitres, "litres", needs.Prices.MixLitre, needs.MixCost);

        // The same mix once more: its cost is in the line before, and counts once.
        Mix(table, needs.MixCubicFeet, "cubic feet", needs.Prices.MixLitre * SupplyNeeds.LitresACubicFoot, null);
        return table.ToBytes();
    }

    private static void Mix(CsvTable table, double amount, string unit, double? price, double? cost) =>
        table
            .Text("mix")
            .Text("potting mix")
            .Text("")
            .Text("")
            .Number(amount)
            .Text(unit)
            .Text("")
            .Number(price ?? double.NaN)
            .Text(unit == "litres" ? "litre" : "cubic foot")
            .Number(cost ?? double.NaN);
}
