using System.Globalization;
using System.Text;

namespace BenchSim.Cli.Tests.Hostile;

/// <summary>A farm of two batches with a text of the test's own in every field that takes one, and a variant of it.</summary>
internal static class HostileFarm
{
    /// <summary>
    /// Every field of a text or a name: the section of site.toml, or the file, and the key or column. The values are harmless ones.
    /// </summary>
    public static readonly IReadOnlyDictionary<string, string> Plain = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["site.name"] = "Farm",
        ["site.question"] = "Does it fit?",
        ["house.id"] = "house",
        ["house.name"] = "House",
        ["space.id"] = "space",
        ["space.name"] = "Space",
        ["mishap.id"] = "mishap",
        ["mishap.name"] = "Mishap",
        ["prices.currency"] = "$",
        ["plan.csv.id"] = "batch",
        ["plan.csv.variety"] = "Variety",
        ["plan.csv.grower"] = "Grower",
        ["plan.csv.packet"] = "packet",
        ["plan.csv.note"] = "note",
        ["crops.csv.id"] = "crop",
        ["crops.csv.name"] = "Crop",
        ["crops.csv.source"] = "notebook",
        ["trays.csv.id"] = "tray",
        ["trays.csv.name"] = "Tray",
        ["supplies.csv.variety"] = "Variety",
        ["supplies.csv.supplier"] = "Supplier",
        ["log.csv.by"] = "Somebody",
        ["log.csv.note"] = "note",
        ["invest.basis"] = "a guess",
    };

    /// <summary>The file in which a field stands.</summary>
    public static string FileOf(string field) =>
        field.Contains(".csv.", StringComparison.Ordinal) ? field[..(field.IndexOf(".csv", StringComparison.Ordinal) + 4)]
        : field.StartsWith("invest", StringComparison.Ordinal) ? "variants/v.toml"
        : "site.toml";

    /// <summary>Lays the farm down.</summary>
    public static string In(TemporaryFolder folder, string name, IReadOnlyDictionary<string, string> texts)
    {
        // Where a field stands several times a figure behind it tells them apart; one place says so in all.
        string Text(string field, string figure = "") => texts.GetValueOrDefault(field, Plain[field]) + figure;
        string Key(string field, string figure = "") => Toml(Text(field, figure));
        string Cell(string field, string figure = "") => Csv(Text(field, figure));
        var farm = folder.In(name);
        Directory.CreateDirectory(Path.Combine(farm, "variants"));
        File.WriteAllText(
            Path.Combine(farm, "site.toml"),
            $"""
            [site]
            name = {Key("site.name")}
            question = {Key("site.question")}
            units = "metric"
            latitude = 42
            [season]
            opens = 2027-03-01
            closes = 2027-06-15
            [[house]]
            id = {Key("house.id")}
            name = {Key("house.name")}
            night = "16 C"
            shape = "hoop"
            length = "10 m"
            width = "6 m"
            covering = "double-poly"
            fuel = "propane"
            fuel_price = 2.5
            [[space]]
            id = {Key("space.id", "1")}
            name = {Key("space.name", "1")}
            kind = "mat"
            house = {Key("house.id")}
            places = 2
            temperature = "25 C"
            watts = 40
            power_price = 0.2
            [[space]]
            id = {Key("space.id", "2")}
            name = {Key("space.name", "2")}
            kind = "bench"
            house = {Key("house.id")}
            places = 9
            [[space]]
            id = {Key("space.id", "3")}
            name = {Key("space.name", "3")}
            kind = "table"
            places = 2
            [[mishap]]
            id = {Key("mishap.id")}
            name = {Key("mishap.name")}
            chance = 1
            from = 2027-04-10
            to = 2027-04-20
            house = {Key("house.id")}
            crop = {Key("crops.csv.id")}
            loss = 0.5
            [prices]
            currency = {Key("prices.currency")}
            thousand_seeds = 40
            labour_hour = 20
            mix_litre = 0.1
            [work_minutes]
            sow = 4
            pot_up = 4
            move = 1
            set_out = 1
            carry_in = 1
            [weather]
            kind = "normals"
            low = [-5, -4, 0, 5, 10, 15, 18, 17, 13, 7, 3, -2]
            high = [3, 5, 10, 16, 22, 27, 29, 28, 24, 18, 11, 5]
            rain_days = [10, 9, 10, 11, 12, 11, 10, 9, 9, 9, 10, 10]
            rain = [78, 68, 91, 91, 89, 96, 99, 96, 89, 81, 86, 84]
            [play]
            seasons = 2
            seed = 1
            """
        );
        File.WriteAllText(
            Path.Combine(farm, "crops.csv"),
            "id,name,like,benches,mats,tray,source\n"
                + $"{Cell("crops.csv.id")},{Cell("crops.csv.name")},tomato,"
                + $"{Cell("space.id", "2")},{Cell("space.id", "1")},{Cell("trays.csv.id", "1")},{Cell("crops.csv.source")}\n"
        );
        File.WriteAllText(
            Path.Combine(farm, "trays.csv"),
            "id,name,cells,seeds_per_flat,medium_litres\n"
                + $"{Cell("trays.csv.id", "1")},{Cell("trays.csv.name", "1")},50,,3.3\n"
                + $"{Cell("trays.csv.id", "2")},{Cell("trays.csv.name", "2")},0,120,7.5\n"
        );
        File.WriteAllText(
            Path.Combine(farm, "supplies.csv"),
            "item,variety,pack,price,supplier\n"
                + $"{Cell("crops.csv.id")},{Cell("supplies.csv.variety")},100,5,{Cell("supplies.csv.supplier")}\n"
                + $"{Cell("crops.csv.id")},,100,5,{Cell("supplies.csv.supplier")}\n"
        );
        File.WriteAllText(
            Path.Combine(farm, "log.csv"),
            "date,batch,what,trays,space,by,note\n"
                + $"2027-04-02,{Cell("plan.csv.id", "1")},counted,2,{Cell("space.id", "2")},{Cell("log.csv.by")},{Cell("log.csv.note")}\n"
        );
        string Batch(string figure, string plants, string method, string flat) =>
            $"{Cell("plan.csv.id", figure)},{Cell("crops.csv.id")},{Cell("plan.csv.variety")},"
            + $"{Cell("plan.csv.grower")},{plants},2027-05-18,{method},"
            + $"{Cell("trays.csv.id", "1")},{flat},{Cell("plan.csv.packet")},{Cell("plan.csv.note")}\n";
        File.WriteAllText(
            Path.Combine(farm, "plan.csv"),
            "id,crop,variety,grower,plants,set_out,method,tray,flat,packet,note\n"
                + Batch("1", "150", "direct", "")
                + Batch("2", "90", "pot up", Cell("trays.csv.id", "2"))
        );
        File.WriteAllText(
            Path.Combine(farm, "variants", "v.toml"),
            $"""
            [[space]]
            id = {Key("space.id", "3")}
            places = 6
            [[plan]]
            batch = {Key("plan.csv.id", "2")}
            shift_days = -2
            [invest]
            capital = 500
            life_years = 5
            discount_rate = "5 %"
            plant_on_time = 1
            basis = {Key("invest.basis")}
            """
        );
        return farm;
    }

    /// <summary>A text as TOML writes it: all but plain letters by their number.</summary>
    public static string Toml(string text)
    {
        var written = new StringBuilder("\"");
        foreach (var rune in text.EnumerateRunes())
        {
            written.Append(
                Rune.IsLetterOrDigit(rune) && rune.IsAscii
                    ? rune.ToString()
                    : "\\U" + rune.Value.ToString("X8", CultureInfo.InvariantCulture)
            );
        }

        return written.Append('"').ToString();
    }

    private static string Csv(string text) => "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
}
