using System.Text.Json;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests.Variants;

/// <summary>A variant changes what it says and nothing else.</summary>
public class VariantTests
{
    private const string Plan = """
        id,crop,plants,sow,set_out,every_days,times
        early,tomato,100,2027-03-01,,,
        late,tomato,200,,2027-06-01,,
        heads,lettuce,300,2027-03-05,,7,3
        """;

    [Fact]
    public void An_empty_variant_is_the_base()
    {
        using var folder = Folder("# nothing\n");
        Assert.Equal(JsonSerializer.Serialize(folder.Read().Scenario), JsonSerializer.Serialize(Read(folder)));
    }

    [Fact]
    public void A_variant_under_a_name_that_no_report_can_keep_is_refused()
    {
        using var folder = Folder("# nothing\n");
        folder.Write("variants/ blank.toml", "# nothing\n");
        var fault = Assert.Single(ScenarioFolder.ReadVariant(folder.Path, " blank").Faults).ToString();
        Assert.StartsWith("variants/ blank.toml:0:0: \" blank\" is no plain name of a file; rename it", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_variant_may_give_tolerances()
    {
        var scenario = Read("[[plan]]\nbatch = \"early\"\nearlier = 4\nlater = 2\n");
        Assert.Equal((4, 2), (scenario.Batches[0].EarlierDays, scenario.Batches[0].LaterDays));
    }

    [Fact]
    public void Keys_of_a_space_that_is_there_replace_and_the_rest_stays()
    {
        var scenario = Read("[[space]]\nid = \"mats\"\nplaces = 12\n");
        Assert.Equal(["mats", "bench", "table"], scenario.Spaces.Select(space => space.Id).ToArray());
        Assert.Equal((12, 25.0, "main"), (scenario.Spaces[0].Places, scenario.Spaces[0].MatC, scenario.Spaces[0].HouseId));
    }

    [Fact]
    public void A_new_house_and_space_come_last()
    {
        var scenario = Read(
            "[[house]]\nid = \"second\"\nnight = \"12 C\"\n[[space]]\nid = \"more\"\nkind = \"bench\"\nhouse = \"second\"\nplaces = 7\n"
        );
        Assert.Equal(["main", "second"], scenario.Houses.Select(house => house.Id).ToArray());
        Assert.Equal(("more", 7), (scenario.Spaces[^1].Id, scenario.Spaces[^1].Places));
    }

    [Fact]
    public void Places_put_length_and_width_aside()
    {
        // 2 m x 3 m: floor(3000 / 539) x floor(2000 / 279) = 5 x 7 = 35 and floor(2000 / 539) x floor(3000 / 279) = 3 x 10 = 30; 95 % of 35
        // is 33.
        using var folder = Folder(
            "[[space]]\nid = \"bench\"\nplaces = 50\n",
            TestFolder.Site("places = 60", "length = \"3 m\"\nwidth = \"2 m\"")
        );
        Assert.Equal(33, folder.Read().Scenario!.Spaces[1].Places);
        Assert.Equal(50, Read(folder).Spaces[1].Places);
    }

    [Fact]
    public void Sections_take_the_keys_given_and_a_weather_of_another_kind_takes_all()
    {
        var scenario = Read(
            """
            [rules]
            sow_wait_days = 9
            [weather]
            low = "10 C"
            """
        );
        Assert.Equal(9, scenario.Rules.SowWaitDays);
        Assert.Equal(new ConstantWeather(10, 20, 0), scenario.Weather with { Written = new() });
        Assert.Equal(
            new ConstantWeather(1, 2, 0),
            Read("[weather]\nkind = \"constant\"\nlow = \"1 C\"\nhigh = \"2 C\"\n").Weather with
            {
                Written = new(),
            }
        );
    }

    [Fact]
    public void Houses_and_spaces_can_be_removed()
    {
        using var folder = Folder("remove = [\"mats\"]\n");
        Assert.Equal(["bench", "table"], Read(folder).Spaces.Select(space => space.Id).ToArray());
    }

    [Fact]
    public void Cells_of_a_crop_replace_with_or_without_a_row_in_crops_csv()
    {
        var scenario = Read("[crops.tomato]\nflat_discard_days = 3\nbenches = [\"bench\"]\n");
        var tomato = scenario.Crops.Single(crop => crop.Id == "tomato");
        Assert.Equal((3, "bench"), (tomato.FlatDiscardDays, tomato.Benches.Single()));

        using var folder = Folder("[crops.tomato]\ndiscard_after_days = 30\n");
        folder.Write("crops.csv", "id,discard_after_days,flat_discard_days\ntomato,25,25\n");
        tomato = Read(folder).Crops.Single(crop => crop.Id == "tomato");
        Assert.Equal((30, 25), (tomato.DiscardAfterDays, tomato.FlatDiscardDays));
    }

    [Fact]
    public void Lines_of_the_plan_are_chosen_by_id_by_beginning_and_by_crop()
    {
        var scenario = Read(
            """
            [[plan]]
            batch = "early"
            plants = 150
            [[plan]]
            crop = "tomato"
            grower = "Mara"
            [[plan]]
            batch = "h*"
            shift_days = -2
            """
        );
        Assert.Equal([150, 200, 300, 300, 300], scenario.Batches.Select(batch => batch.Plants).ToArray());
        Assert.Equal(["Mara", "Mara", "site", "site", "site"], scenario.Batches.Select(batch => batch.Grower).ToArray());

        // 5 March less 2 days, then each 7 days later.
        Assert.Equal(
            [new DateOnly(2027, 3, 3), new DateOnly(2027, 3, 10), new DateOnly(2027, 3, 17)],
            scenario.Batches.Skip(2).Select(batch => batch.Sow!.Value).ToArray()
        );
    }

    [Fact]
    public void Both_dates_shift_and_an_empty_text_clears_a_cell()
    {
        var scenario = Read("[[plan]]\nbatch = \"*\"\nshift_days = 7\n[[plan]]\nbatch = \"late\"\nset_out = \"\"\nsow = 2027-04-01\n");
        Assert.Equal((new DateOnly(2027, 3, 8), null), (scenario.Batches[0].Sow, scenario.Batches[0].SetOut));
        Assert.Equal((new DateOnly(2027, 4, 1), null), (scenario.Batches[1].Sow, scenario.Batches[1].SetOut));
        Assert.Equal(new DateOnly(2027, 6, 8), Read("[[plan]]\ncrop = \"tomato\"\nshift_days = 7\n").Batches[1].SetOut);
    }

    [Fact]
    public void Dropped_lines_are_gone()
    {
        Assert.Equal(
            ["heads-1", "heads-2", "heads-3"],
            Read("[[plan]]\ncrop = \"tomato\"\ndrop = true\n").Batches.Select(batch => batch.Id).ToArray()
        );
    }

    [Fact]
    public void Variants_of_the_spring_example_read_without_faults()
    {
        var spring = Path.Combine(Repository.Root, "scenarios", "two-house-spring");
        var names = Directory.GetFiles(Path.Combine(spring, "variants")).Select(path => Path.GetFileNameWithoutExtension(path)).ToArray();
        Assert.Equal(6, names.Length);
        Assert.All(names, name => Assert.Empty(ScenarioFolder.ReadVariant(spring, name).Faults));
    }

    internal static TestFolder Folder(string variant, string site = TestFolder.GoodSite) =>
        new TestFolder(site, Plan).Write("variants/v.toml", variant);

    private static Scenario Read(string variant)
    {
        using var folder = Folder(variant);
        return Read(folder);
    }

    private static Scenario Read(TestFolder folder)
    {
        var reading = ScenarioFolder.ReadVariant(folder.Path, "v");
        Assert.Empty(reading.Faults.Select(fault => fault.ToString()));
        return reading.Scenario!;
    }
}
