using BenchSim.Folder.Files;
using BenchSim.Folder.Reference;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests.Variants;

/// <summary>Every key and column that a variant may change: changed by one, it is among what the variant changes.</summary>
public class EveryFieldTests
{
    private const string Constant = "kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"";
    private const string Record = "kind = \"record\"\nfile = \"w.csv\"\nyear = 2015\ntemperature_unit = \"C\"\nrain_unit = \"mm\"";

    private static readonly string s_normals =
        $"kind = \"normals\"\nlow = {Twelve("5")}\nhigh = {Twelve("15")}\nrain = {Twelve("60")}\nrain_days = {Twelve("9")}\n"
        + $"low_sd = {Twelve("3")}\nhigh_sd = {Twelve("4")}";

    private const string Site = """
        [site]
        name = "Test farm"
        latitude = 42
        [season]
        opens = 2027-01-18
        closes = 2027-06-30
        [[house]]
        id = "main"
        night = "16 C"
        shape = "hoop"
        length = "10 m"
        width = "6 m"
        covering = "glass"
        fuel = "gas"
        [[house]]
        id = "gable"
        night = "16 C"
        shape = "gable"
        length = "10 m"
        width = "6 m"
        eave = "2 m"
        ridge = "4 m"
        u_value = 4
        fuel = "gas"
        [[space]]
        id = "mats"
        kind = "mat"
        house = "main"
        places = 10
        temperature = "25 C"
        watts = 100
        circuit_volts = 120
        circuit_amps = 20
        [[space]]
        id = "bench"
        kind = "bench"
        house = "main"
        length = "20 m"
        width = "2 m"
        [[space]]
        id = "other"
        kind = "bench"
        places = 60
        [[space]]
        id = "table"
        kind = "table"
        places = 40
        [[mishap]]
        id = "mice"
        chance = 0.2
        from = 2027-03-10
        to = 2027-03-20
        loss = 0.1
        [seed]
        moisture = "8 %"
        storage = "10 C"
        [weather]

        """;

    private const string Plan = """
        id,crop,plants,sow,set_out,method,flat,packet
        a,tomato,100,2027-03-01,2027-05-10,,,
        p,own,100,2027-03-01,,pot up,open-flat,
        """;

    private const string Crops = "id,like,harvest_after_days,harvest_days\nown,tomato,20,30\n";

    /// <summary>Another value of each key that the kind alone does not give, with what must be said beside it.</summary>
    private static readonly Dictionary<string, string> s_special = new(StringComparer.Ordinal)
    {
        ["site.question"] = "\"Does it fit?\"",
        ["season.closes"] = "2027-06-20",
        ["house.day"] = "\"20 C\"",
        ["house.vent"] = "\"30 C\"",
        ["house.open"] = "2027-02-01",
        ["house.shape"] = "\"gable\"\neave = 2\nridge = 4",
        ["house.length"] = "\"12 m\"",
        ["house.eave"] = "\"1 m\"",
        ["house.ridge"] = "\"5 m\"",
        ["house.covering"] = "\"double-poly\"",
        ["house.u_value"] = "5",
        ["house.fuel"] = "\"oil\"",
        ["house.efficiency"] = "\"90 %\"",
        ["house.design_low"] = "\"-10 C\"",
        ["mishap.from"] = "2027-03-12",
        ["mishap.to"] = "2027-03-25",
        ["mishap.house"] = "\"main\"",
        ["mishap.space"] = "\"bench\"",
        ["mishap.crop"] = "\"tomato\"",
        ["space.kind"] = "\"table\"",
        ["space.house"] = "\"gable\"",
        ["space.temperature"] = "\"20 C\"",
        ["space.changes"] = "[{ from = 2027-05-01, places = 5 }]",
        ["rules.work_days"] = "[\"Mon\"]",
        ["rules.days_off"] = "[2027-03-01]",
        ["rules.sow_give_up_days"] = "9",
        ["rules.hold_warning_days"] = "9",
        ["rules.light"] = Twelve("0.5"),
        ["relief.order"] = "[\"aisle\"]",
        ["seed.storage"] = "\"5 C\"",
        ["seed.moisture"] = "\"9 %\"",
        ["mix.sold_in"] = "\"bag\"",
        ["mix.loose_yield"] = "\"2 yd3\"",
        ["prices.currency"] = "\"$\"",
        ["weather.kind"] = "\"constant\"\nlow = 1\nhigh = 2",
        ["weather.low"] = "\"11 C\"",
        ["weather.high"] = "\"21 C\"",
        ["weather.rain_days"] = Twelve("8"),
        ["weather.low_sd"] = Twelve("2"),
        ["weather.high_sd"] = Twelve("2"),
        ["weather.file"] = "\"v.csv\"",
        ["weather.year"] = "2016",
        ["weather.temperature_unit"] = "\"F\"",
        ["weather.rain_unit"] = "\"in\"",
        ["plan.csv.sow"] = "2027-03-02",
        ["plan.csv.set_out"] = "2027-05-11",
        ["plan.csv.every_days"] = "7\ntimes = 2",
        ["plan.csv.times"] = "2\nevery_days = 7",
        ["plan.csv.method"] = "\"pot up\"\nflat = \"open-flat\"",
        ["plan.csv.tray"] = "\"72-cell\"",
        ["plan.csv.flat"] = "\"wide\"",
        ["plan.csv.field_cover"] = "\"low tunnel\"",
        ["plan.csv.tested_on"] = "2027-01-01",
        ["plan.csv.thousand_seeds"] = "5",
        ["crops.csv.like"] = "\"pepper\"",
        ["crops.csv.hardiness"] = "\"hardy\"",
        ["crops.csv.emerge_base"] = "\"9 C\"",
        ["crops.csv.emerge_optimum"] = "\"29 C\"",
        ["crops.csv.emerge_plateau"] = "\"31 C\"",
        ["crops.csv.emerge_ceiling"] = "\"41 C\"",
        ["crops.csv.emerge_sigma"] = "0.3",
        ["crops.csv.emerge_cv"] = "0.3",
        ["crops.csv.germination_curve"] = "\"10 C 61 % | 15 C 80 %\"",
        ["crops.csv.germinate_at"] = "\"24 C\"",
        ["crops.csv.max_mat"] = "\"35 C\"",
        ["crops.csv.growth_base"] = "\"9 C\"",
        ["crops.csv.growth_cap"] = "\"33 C\"",
        ["crops.csv.reference"] = "\"18 C\"",
        ["crops.csv.days_to_ready"] = "60",
        ["crops.csv.counted_from"] = "\"emergence\"",
        ["crops.csv.includes_hardening"] = "\"no\"",
        ["crops.csv.weeks_min"] = "5",
        ["crops.csv.weeks_max"] = "9",
        ["crops.csv.bottom_heat"] = "\"no\"",
        ["crops.csv.stand_loss_correlation"] = "0.3",
        ["crops.csv.growth_cv"] = "0.3",
        ["crops.csv.pot_up_days"] = "9",
        ["crops.csv.pot_up_check_days"] = "9",
        ["crops.csv.min_night"] = "\"9 C\"",
        ["crops.csv.benches"] = "[\"other\"]",
        ["crops.csv.mats"] = "[\"mats\"]",
        ["crops.csv.finish"] = "[\"other\"]",
        ["crops.csv.finish_at"] = "\"40 %\"\nfinish = [\"other\"]",
        ["crops.csv.finish_after_days"] = "7\nfinish = [\"other\"]",
        ["plan.csv.finish"] = "[\"other\"]",
        ["plan.csv.finish_at"] = "\"40 %\"\nfinish = [\"other\"]",
        ["plan.csv.finish_after_days"] = "7\nfinish = [\"other\"]",
        ["crops.csv.hardening_nights"] = "12",
        ["crops.csv.leave_mat_at"] = "\"60 %\"",
        ["crops.csv.table_above"] = "\"11 C\"",
        ["crops.csv.damage_below"] = "\"1 C\"",
        ["crops.csv.field_above"] = "\"12 C\"",
        ["crops.csv.discard_after_days"] = "40",
        ["crops.csv.flat_discard_days"] = "40",
        ["crops.csv.tray"] = "\"72-cell\"",
    };

    public static TheoryData<string, string> Changeable => Named(ChangeableFields());

    [Theory]
    [MemberData(nameof(Changeable))]
    public void A_key_that_a_variant_changes_is_among_what_it_changes(string section, string key)
    {
        var field = FolderReference.All.SelectMany(table => table.Fields).Single(each => each.Section == section && each.Name == key);
        InputFile[] files =
        [
            InputFile.Of("site.toml", Site + WeatherFor(section, key)),
            InputFile.Of("plan.csv", Plan),
            InputFile.Of("crops.csv", Crops),
            InputFile.Of("trays.csv", "id,cells,seeds_per_flat,medium_litres\nwide,0,150,5\n"),
            InputFile.Of("w.csv", Days()),
            InputFile.Of("v.csv", Days()),
            InputFile.Of("variants/v.toml", Variant(field)),
        ];
        var before = ScenarioFolder.ReadKept(files);
        var after = ScenarioFolder.ReadKept(files, variant: "v");
        Assert.Empty(before.Faults);
        Assert.Empty(after.Faults);
        var changes = ScenarioPart.Changes(before.Scenario!, after.Scenario!).ToArray();
        if (section == PlanFields.File && key is "every_days" or "times")
        {
            // These make more batches of a line, which are new.
            Assert.NotEqual(before.Scenario!.Batches.Length, after.Scenario!.Batches.Length);
        }
        else if (section == CropFields.File && key is "like")
        {
            // The values of the relative are others.
            Assert.Contains(changes, change => change.Field.Section == section);
        }
        else
        {
            var change = Assert.Single(changes, change => ReferenceEquals(change.Field, field));
            Assert.NotEqual(change.Before, change.After, StringComparer.Ordinal);
        }
    }

    [Fact]
    public void A_variant_that_changes_nothing_changes_nothing()
    {
        InputFile[] files =
        [
            InputFile.Of("site.toml", Site + s_normals),
            InputFile.Of("plan.csv", Plan),
            InputFile.Of("crops.csv", Crops),
            InputFile.Of("variants/v.toml", "[rules]\n"),
        ];
        Assert.Empty(
            ScenarioPart.Changes(ScenarioFolder.ReadKept(files).Scenario!, ScenarioFolder.ReadKept(files, variant: "v").Scenario!)
        );
    }

    private static IEnumerable<Field> ChangeableFields() =>
        FolderReference
            .Site.Where(table => table.Section is not "space.changes")
            .Append(PlanFields.Table)
            .Append(CropFields.Table)
            .SelectMany(table => table.Fields)
            .Where(each => each.FixedBecause.Length == 0);

    private static TheoryData<string, string> Named(IEnumerable<Field> fields)
    {
        var data = new TheoryData<string, string>();
        foreach (var each in fields)
        {
            data.Add(each.Section, each.Name);
        }

        return data;
    }

    private static string Variant(Field field)
    {
        var line = $"{field.Name} = {Another(field)}\n";
        return field.Section switch
        {
            "house" => $"[[house]]\nid = \"{(field.Name is "eave" or "ridge" ? "gable" : "main")}\"\n{line}",
            "space" => $"[[space]]\nid = \"{SpaceFor(field)}\"\n{line}",
            "mishap" => $"[[mishap]]\nid = \"mice\"\n{line}",
            PlanFields.File => $"[[plan]]\nbatch = \"{(field.Name.Contains("flat", StringComparison.Ordinal) ? "p" : "a")}\"\n{line}",
            CropFields.File => $"[crops.own]\n{line}",
            _ => $"[{field.Section}]\n{line}",
        };
    }

    private static string SpaceFor(Field field) =>
        field.Name switch
        {
            "length" or "width" or "usable" => "bench",
            "kind" => "other",
            _ => "mats",
        };

    private static string WeatherFor(string section, string key) =>
        section != "weather" ? Constant
        : key is "rain_days" or "low_sd" or "high_sd" ? s_normals
        : key is "kind" or "file" or "year" or "temperature_unit" or "rain_unit" ? Record
        : Constant;

    // Another value than the base has, by its kind where that is enough.
    private static string Another(Field field) =>
        s_special.TryGetValue($"{field.Section}.{field.Name}", out var value)
            ? value
            : field.Kind.What switch
            {
                "whole number" or "whole number, or none" => "7",
                "number" => "3",
                "share" => "\"50 %\"",
                "temperature" => "\"17 C\"",
                "difference" => "\"3 C\"",
                "depth" or "depth, or list of 12" => "\"9 mm\"",
                "length" => "\"4 m\"",
                "output" => "\"9 kW\"",
                "time" => "\"09:30\"",
                "yes or no" => "true",
                "text" or "name" => "\"Another\"",
                "work round or any time" => "\"any time\"",
                var what => throw new InvalidOperationException(
                    $"another {what} for {field.Section}.{field.Name} is not said in this test"
                ),
            };

    private static string Twelve(string number) => $"[{string.Join(", ", Enumerable.Repeat(number, 12))}]";

    // Two whole years, whose values say their own units.
    private static string Days() =>
        "date,tmin,tmax,rain\n"
        + string.Concat(
            Enumerable
                .Range(0, 731)
                .Select(day => $"{new DateOnly(2015, 1, 1).AddDays(day):yyyy-MM-dd},{5 + (day % 2)} C,{20 + (day % 3)} C,1 mm\n")
        );
}
