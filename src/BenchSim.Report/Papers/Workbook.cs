using System.Collections.Immutable;
using BenchSim.Report.Labels;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;
using MiniExcelLibs;
using MiniExcelLibs.Attributes;
using MiniExcelLibs.OpenXml;

namespace BenchSim.Report.Papers;

/// <summary>
/// The papers as a workbook: work, nights, batches, order and labels, each a sheet whose header stays in view and can be filtered. Numbers
/// are numbers, dates are dates, and text is text whatever it begins with.
/// </summary>
internal static class Workbook
{
    private const int LongestText = 2000;

    /// <summary>Writes the workbook.</summary>
    public static byte[] Write(PaperContent content)
    {
        Dictionary<string, object> sheets = new(StringComparer.Ordinal)
        {
            ["Work"] = Work(content),
            ["Nights"] = Nights(content),
            ["Batches"] = Batches(content),
            ["Order"] = Order(content.Needs),
            ["Labels"] =
                content.Labels.Length > MostRows
                    ? [Row(("Labels", (object?)"There are more labels than a sheet has rows: see labels.csv."))]
                    : Labels(content),
        };
        if (!content.Purchases.IsEmpty)
        {
            sheets.Add("To buy", ToBuy(content.Purchases));
        }

        var settings = new OpenXmlConfiguration
        {
            FreezeRowCount = 1,
            AutoFilter = true,
            FastMode = true,
            EnableAutoWidth = true,
            MinWidth = 8,
            MaxWidth = 60,
            DynamicColumns = [.. s_dates.Select(name => new DynamicExcelColumn(name) { Format = "yyyy-mm-dd", Width = 12 })],
        };
        using var stream = new MemoryStream();
        stream.SaveAs(sheets, configuration: settings);
        return ZipIdentity.Fixed(stream.ToArray());
    }

    // Rows of a sheet less the heading (ECMA-376).
    private const int MostRows = 1_048_575;

    private static readonly ImmutableArray<string> s_dates =
    [
        "Week from",
        "Date",
        "Evening",
        "Filled",
        "Sow",
        "Half up",
        "Off the mat",
        "Pot up",
        "To the table",
        "Ready",
        "Set out",
        "Needed by",
        "Order by",
    ];

    private static IEnumerable<Dictionary<string, object?>> ToBuy(ImmutableArray<Purchase> purchases) =>
        purchases.Select(purchase =>
            Row(
                ("Supplier", Text(purchase.Supply.Supplier)),
                ("Item", Text(purchase.Name)),
                ("Variety", Text(purchase.Supply.Variety)),
                ("Needed", purchase.Needed),
                ("Unit", purchase.Unit),
                ("On hand", purchase.Supply.OnHand),
                ("Pack of", purchase.Supply.Pack),
                ("Packs", purchase.Packs),
                ("Left over", purchase.LeftOver),
                ("Price", purchase.Supply.Price),
                ("Cost", purchase.Cost is { } cost ? Math.Round(cost, 6) : null),
                ("Needed by", Date(purchase.NeededBy)),
                ("Order by", Date(purchase.OrderBy)),
                ("For", Text(PurchaseTable.Growers(purchase)))
            )
        );

    private static IEnumerable<Dictionary<string, object?>> Work(PaperContent content) =>
        content.Tasks.Select(task =>
            Row(
                ("Week from", Date(TableNights.MondayOf(task.On))),
                ("Date", Date(task.On)),
                ("Job", TaskWords.Job(task.Kind)),
                ("Batch", Text(task.Batch.Order.Id)),
                ("Crop", Text(task.Batch.Crop.Name)),
                ("Variety", Text(task.Batch.Order.Variety)),
                ("Grower", Text(task.Batch.Order.Grower)),
                ("Pieces", task.Pieces),
                ("Unit", task.AreFlats ? "flats" : "trays"),
                ("Hours", task.Hours is { } hours ? Math.Round(hours, 4) : null),
                ("What", Text(TaskWords.Detail(content.Plan, task)))
            )
        );

    private static IEnumerable<Dictionary<string, object?>> Nights(PaperContent content)
    {
        var isImperial = content.Plan.Scenario.Units == UnitSystem.Imperial;
        var unit = isImperial ? "F" : "C";
        double Degrees(double celsius) => UnitWords.Degrees(celsius, content.Plan.Scenario.Units);
        return content.Nights.SelectMany(week =>
            week.Nights.Select(night =>
                Row(
                    ("Week from", Date(week.Monday)),
                    ("Evening", Date(night.On)),
                    ("Crop", Text(week.Crop.Name)),
                    ("Table", Text(week.Table.Name)),
                    ("Trays", night.Trays),
                    ($"Cold below, {unit}", Degrees(week.Crop.TableAboveC)),
                    ("Years", week.Years),
                    ("Cold years", night.ColdYears),
                    ($"Carry in below, {unit}", Degrees(week.Crop.DamageBelowC)),
                    ("Carry-in years", night.DamagingYears)
                )
            )
        );
    }

    private static IEnumerable<Dictionary<string, object?>> Batches(PaperContent content) =>
        content.Plan.Batches.Select(batch =>
            Row(
                ("Batch", Text(batch.Order.Id)),
                ("Crop", Text(batch.Crop.Name)),
                ("Variety", Text(batch.Order.Variety)),
                ("Grower", Text(batch.Order.Grower)),
                ("Plants wanted", batch.Order.Plants),
                ("Sow", Date(batch.SowOn)),
                ("Half up", Date(batch.EmergeOn)),
                ("Off the mat", Date(batch.OffMatOn)),
                ("Pot up", Date(batch.PotUpOn)),
                ("To the table", Date(batch.TableOn)),
                ("Ready", Date(batch.ReadyOn)),
                ("Set out", Date(batch.SetOutOn)),
                ("Tray", Text(batch.Tray.Name)),
                ("Trays", batch.Trays),
                ("Flat", Text(batch.Flat?.Name ?? "")),
                ("Flats", batch.Flats),
                ("Seeds", batch.Seeds),
                ("Germination", Math.Round(batch.Germination, 6)),
                ("Chance of enough plants", Math.Round(batch.StandChance, 6)),
                ("Note", Text(batch.Order.Note))
            )
        );

    private static IEnumerable<Dictionary<string, object?>> Order(SupplyNeeds needs)
    {
        foreach (var seed in needs.Seeds)
        {
            yield return Item(
                "seed",
                seed.Crop.Name,
                seed.Variety,
                seed.PacketId ?? "",
                seed.Sowing ?? "",
                seed.Seeds,
                "seeds",
                null,
                seed.ThousandSeeds,
                "1000 seeds",
                seed.Cost
            );
        }

        foreach (var tray in needs.Trays)
        {
            yield return Item(
                tray.Type.IsFlat ? "flat" : "tray",
                tray.Type.Name,
                "",
                "",
                "",
                tray.Filled,
                tray.Type.IsFlat ? "flats" : "trays",
                tray.MostAtOnce,
                null,
                "",
                null
            );
        }

        yield return Item("carrier", "carrier for a cell tray", "", "", "", needs.Carriers, "carriers", needs.Carriers, null, "", null);
        var cubicFoot = needs.Prices.MixLitre * Volumes.LitresACubicFoot;
        yield return Item(
            "mix",
            "potting mix",
            "",
            "",
            "",
            Math.Round(needs.MixLitres, 6),
            "litres",
            null,
            needs.Prices.MixLitre,
            "litre",
            needs.MixCost
        );
        yield return Item(
            "mix",
            "potting mix",
            "",
            "",
            "",
            Math.Round(needs.MixCubicFeet, 6),
            "cubic feet",
            null,
            cubicFoot,
            "cubic foot",
            null
        );
        yield return Item("mix", "potting mix", "", "", "", needs.MixUnits, $"{needs.Mix.SoldIn}s", null, null, "", null);
    }

    private static Dictionary<string, object?> Item(
        string item,
        string name,
        string variety,
        string packet,
        string sowing,
        object amount,
        string unit,
        int? most,
        double? price,
        string priceFor,
        double? cost
    ) =>
        Row(
            ("Item", item),
            ("Name", Text(name)),
            ("Variety", Text(variety)),
            ("Packet", Text(packet)),
            ("Sowing", Text(sowing)),
            ("Amount", amount),
            ("Unit", unit),
            ("Most at once", most),
            ("Price", price is { } each ? Math.Round(each, 6) : null),
            ("Price for", price is null ? "" : priceFor),
            ("Cost", cost is { } all ? Math.Round(all, 6) : null)
        );

    private static IEnumerable<Dictionary<string, object?>> Labels(PaperContent content) =>
        content.Labels.Select(label =>
            Row(
                ("Batch", Text(label.Batch.Order.Id)),
                ("Crop", Text(label.Batch.Crop.Name)),
                ("Variety", Text(label.Batch.Order.Variety)),
                ("Grower", Text(label.Batch.Order.Grower)),
                ("Kind", label.What),
                ("Number", label.Number),
                ("Of", label.Of),
                ("Filled", Date(label.FilledOn)),
                ("Sow", Date(label.Batch.SowOn)),
                ("Pot up", Date(label.Batch.PotUpOn)),
                ("Set out", Date(label.Batch.SetOutOn)),
                ("Code", Text(label.Code)),
                ("Short code", Text(label.Short))
            )
        );

    private static Dictionary<string, object?> Row(params ReadOnlySpan<(string Column, object? Value)> cells)
    {
        var row = new Dictionary<string, object?>(cells.Length, StringComparer.Ordinal);
        foreach ((var column, var value) in cells)
        {
            row.Add(column, value);
        }

        return row;
    }

    private static DateTime? Date(DateOnly? date) => date?.ToDateTime(TimeOnly.MinValue);

    private static string Text(string text) => PlainText.Short(text, LongestText);
}
