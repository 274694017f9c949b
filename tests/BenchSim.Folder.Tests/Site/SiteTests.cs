using BenchSim.Folder.Site;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Tests.Site;

public class SiteTests
{
    // tests/Published/data/trays.csv, "trays on a 6 x 50 ft bench, whole trays only": 168 (derived). By hand with the outline of 279 x 539
    // mm: 6 ft = 1828.8 mm, 50 ft = 15240 mm; 6 across x 28 along = 168; the other way 3 x 54 = 162.
    // 4 x 8 ft = 1219.2 x 2438.4 mm: 4 x 4 = 16; the other way 2 x 8 = 16. One tray exactly: 1. Just too short: 0.
    [Theory]
    [InlineData(15.24, 1.8288, 168)]
    [InlineData(1.8288, 15.24, 168)]
    [InlineData(2.4384, 1.2192, 16)]
    [InlineData(0.539, 0.279, 1)]
    [InlineData(0.538, 0.279, 0)]
    [InlineData(1.395, 1.078, 10)] // made to measure: 5 x 2
    [InlineData(0, 0, 0)]
    public void Whole_trays_lie_all_one_way_whichever_way_holds_more(double length, double width, int places) =>
        Assert.Equal(places, BenchPlaces.Of(length, width));

    // A mat of 48 x 20 in (1219.2 x 508 mm) holds 4 trays side by side: 4 x 11.00 in = 44 in, and 21.22 in hangs over by 1.22; one of
    // 60 x 21 in holds 5: 55 in, and 0.22 in over; of 48 x 24 in 4. A mat for one tray is 10 x 20 in: 1 in and 1.22 in over. On 20 x 20 in
    // a second tray would hang 2 in over the side.
    [Theory]
    [InlineData(48, 20, 4)]
    [InlineData(20, 48, 4)]
    [InlineData(60, 21, 5)]
    [InlineData(48, 24, 4)]
    [InlineData(10, 20, 1)]
    [InlineData(20, 20, 1)]
    [InlineData(9, 20, 0)]
    public void A_mat_holds_the_trays_it_is_sold_for(double lengthIn, double widthIn, int places) =>
        Assert.Equal(places, BenchPlaces.OnMat(lengthIn * 0.0254, widthIn * 0.0254));

    [Fact]
    public void Nothing_of_a_mat_is_kept_free_to_work()
    {
        using var folder = new TestFolder(TestFolder.Site("places = 10", "length = \"60 in\"\nwidth = \"21 in\""));
        var mat = folder.Read().Scenario!.Spaces[0];
        Assert.Equal(("5", "60 in by 21 in: 5 whole trays side by side"), ($"{mat.Places}", mat.PlacesNote));
    }

    [Fact]
    public void The_usable_share_is_not_for_a_mat()
    {
        var site = TestFolder.Site("places = 10", "length = \"60 in\"\nwidth = \"21 in\"\nusable = 0.9");
        Assert.EndsWith(
            "usable is not for a mat, on which trays lie side by side; take it out",
            Assert.Single(TestFolder.Faults(site)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("", 159)] // 168 x 0.95 = 159.6
    [InlineData("usable = 1.0", 168)]
    [InlineData("usable = \"50 %\"", 84)]
    public void Places_from_length_and_width_leave_room_to_work(string usable, int places)
    {
        using var folder = new TestFolder(TestFolder.Site("places = 60", $"length = \"50 ft\"\nwidth = \"6 ft\"\n{usable}"));
        var bench = folder.Read().Scenario!.Spaces[1];
        Assert.Equal(places, bench.Places);
        Assert.StartsWith("50 ft by 6 ft: 168 whole trays", bench.PlacesNote, StringComparison.Ordinal);
    }

    [Fact]
    public void A_site_is_read_into_the_units_of_the_model()
    {
        using var folder = new TestFolder(
            """
            site = { name = "Two houses", question = "Does it fit?", units = "imperial" }
            season.opens = 2027-01-18
            season.closes = "2027-06-30"
            [[house]]
            id = "main"
            name = "Main house"
            night = 59
            vent = 77
            day_lift = 9
            [[house]]
            id = "over"
            open = "when needed"
            [[house]]
            id = "late"
            night = "59 F"
            day = "68 F"
            open = 2027-03-01
            [[space]]
            id = "mat"
            kind = "mat"
            house = "main"
            places = 10
            temperature = 77
            [[space]]
            id = "bench"
            kind = "bench"
            house = "late"
            places = 50
            aisle_places = 4
            unit_places = 25
            changes = [
              { from = 2027-05-01, places = 20 },
              { from = 2027-04-01, places = 30 },
            ]
            [[space]]
            id = "table"
            kind = "table"
            places = 40
            [weather]
            kind = "constant"
            low = 50
            high = 68
            rain = 0.5
            [play]
            seasons = 25
            seed = 9
            """
        );
        var scenario = folder.Read().Scenario!;
        Assert.Equal(("Two houses", "Does it fit?", UnitSystem.Imperial), (scenario.Name, scenario.Question, scenario.Units));
        Assert.Equal(new SeasonWindow(new DateOnly(2027, 1, 18), new DateOnly(2027, 6, 30)), scenario.Window);

        // 59 F = 15 C, 68 F = 20 C, 77 F = 25 C, 50 F = 10 C; a difference of 9 F = 5 C; 0.5 in = 12.7 mm.
        Assert.Equal(
            new House
            {
                Id = "main",
                Name = "Main house",
                NightC = 15,
                DayC = 15,
                VentC = 25,
                DayLiftK = 5,
            },
            scenario.Houses[0]
        );
        Assert.Equal(
            new House
            {
                Id = "over",
                Name = "over",
                Opening = HouseOpening.WhenNeeded,
            },
            scenario.Houses[1]
        );
        Assert.Equal(
            new House
            {
                Id = "late",
                Name = "late",
                NightC = 15,
                DayC = 20,
                Opening = HouseOpening.FromDate,
                OpensOn = new DateOnly(2027, 3, 1),
            },
            scenario.Houses[2]
        );
        Assert.Equal(25, scenario.Spaces[0].MatC);
        Assert.Equal(("late", 50, 4), (scenario.Spaces[1].HouseId, scenario.Spaces[1].Places, scenario.Spaces[1].AislePlaces));
        Assert.Equal(
            [new PlacesFrom(new DateOnly(2027, 4, 1), 30), new PlacesFrom(new DateOnly(2027, 5, 1), 20)],
            scenario.Spaces[1].Changes.ToArray()
        );
        Assert.Equal((null, 25), (scenario.Spaces[0].UnitPlaces, scenario.Spaces[1].UnitPlaces));
        Assert.Null(scenario.Spaces[2].HouseId);
        Assert.Equal(new ConstantWeather(10, 20, 12.7), scenario.Weather with { Written = new() });
        Assert.Equal(new PlaySettings(25, 9), scenario.Play);
    }

    [Theory]
    [InlineData(
        "id = \"bench\"",
        "id = \"mats\"",
        "site.toml:16:6: id \"mats\" is taken already, on line 10; give every house and space an id of its own"
    )]
    [InlineData(
        "id = \"bench\"",
        "id = \"a|b\"",
        "site.toml:16:6: id is \"a|b\", which holds a |; leave the | out: it separates ids in crops.csv"
    )]
    [InlineData("temperature = \"25 C\"\n", "", "site.toml:9:1: this mat has no temperature; add a line such as temperature = \"75 F\"")]
    [InlineData(
        "places = 60",
        "places = 60\ntemperature = 20",
        "site.toml:20:15: temperature is only for a mat; take it out, or write kind = \"mat\""
    )]
    [InlineData(
        "places = 60",
        "places = 60\nlength = 3",
        "site.toml:20:10: length is given together with places; write places, or length and width, not both"
    )]
    [InlineData("places = 60\n", "", "site.toml:15:1: [[space]] has no places; add a line such as places = 40, or length and width")]
    [InlineData("kind = \"bench\"", "kind = \"bunch\"", "site.toml:17:8: kind is \"bunch\"; did you mean \"bench\"")]
    [InlineData(
        "night = \"60 F\"",
        "night = 60",
        "site.toml:8:9: night is \"60\", which is 60 C; write a temperature from -60 C to 55 C, with its unit, such as 60 F"
    )]
    [InlineData(
        "night = \"60 F\"",
        "day = \"60 F\"",
        "site.toml:8:7: day is given but night is not; add night, or leave both out for an unheated house"
    )]
    [InlineData(
        "night = \"60 F\"",
        "night = \"60 F\"\nvent = \"50 F\"",
        "site.toml:9:8: vent leaves the vent set-point of 10 C below the heating; vent at a temperature above night and day"
    )]
    [InlineData(
        "night = \"60 F\"",
        "night = \"60 F\"\nopen = \"all saeson\"",
        "site.toml:9:8: open is \"all saeson\"; did you mean \"all season\""
    )]
    [InlineData(
        "night = \"60 F\"",
        "night = \"60 F\"\nopen = 2027-01-01",
        "site.toml:9:8: open is 2027-01-01, outside the season; the season runs from 2027-01-18 to 2027-06-30"
    )]
    [InlineData(
        "closes = 2027-06-30",
        "closes = 2026-06-30",
        "site.toml:5:10: closes is 2026-06-30, before the season opens on 2027-01-18; write a later date"
    )]
    [InlineData("closes = 2027-06-30\n", "", "site.toml:3:1: [season] has no closes; add a line such as closes = 2027-06-30")]
    [InlineData(
        "kind = \"table\"",
        "kind = \"bench\"",
        "site.toml:1:1: there is no hardening table, so no tray can reach the field; add a [[space]] with kind = \"table\" and its places"
    )]
    [InlineData(
        "places = 40",
        "places = 0",
        "site.toml:1:1: no hardening table has any places, so no tray can reach the field; give a table its places"
    )]
    [InlineData(
        "low = \"12 C\"",
        "low = \"22 C\"",
        "site.toml:27:8: high is 20 C, below low, which is 22 C; write the lowest temperature in low and the highest in high"
    )]
    [InlineData(
        "kind = \"constant\"",
        "kind = \"constant\"\nfile = \"x.csv\"",
        "site.toml:26:1: file is not for kind = \"constant\"; take it out, or write kind = \"record\""
    )]
    [InlineData("[weather]", "[play]\nseasons = 0\n[weather]", "site.toml:25:11: seasons is 0; write a whole number, 1 or more")]
    [InlineData("[weather]", "[play]\nseed = -1\n[weather]", "site.toml:25:8: seed is \"-1\"; write a whole number, 0 or more")]
    [InlineData(
        "[weather]",
        "[rules]\nlight = [1, 1]\n[weather]",
        "site.toml:25:1: light has 2 numbers; write 12, one for each month, January first"
    )]
    [InlineData(
        "[weather]",
        "[rules]\nwork_days = [\"Mon\", \"Tues\"]\n[weather]",
        "site.toml:25:21: work_days is \"Tues\"; did you mean \"Tue\""
    )]
    [InlineData(
        "[weather]",
        "[rules]\nwork_days = []\n[weather]",
        "site.toml:25:1: work_days has no day; list the days that are worked, such as [\"Mon\", \"Wed\", \"Fri\"]"
    )]
    [InlineData(
        "[weather]",
        "[rules]\nsow_give_up_days = 2\n[weather]",
        "site.toml:25:20: sow_give_up_days makes a sowing be given up after 2 days, before it has waited 3 days; let "
            + "sow_give_up_days be at least sow_wait_days"
    )]
    [InlineData(
        "[weather]",
        "[relief]\norder = [\"aisle\", \"aisle\"]\n[weather]",
        "site.toml:25:19: order names \"aisle\" a second time; list each relief once"
    )]
    [InlineData(
        "[weather]",
        "[rules]\nplaces = 3\n[weather]",
        "site.toml:25:1: there is no key \"places\" in [rules]; it belongs in [[space]] or changes of [[space]]"
    )]
    [InlineData("[[house]]", "[house]", "site.toml:6:1: [house] has single brackets; write [[house]]: there may be several")]
    [InlineData("name = \"Test farm\"", "name = \"\"", "site.toml:2:8: name is empty; write a value, or take the line out")]
    [InlineData("name = \"Test farm\"", "name = [\"Test farm\"]", "site.toml:2:8: name is a list; write one value")]
    public void A_bad_site_says_where_and_what(string old, string replacement, string message) =>
        Assert.Equal(message, Assert.Single(TestFolder.Faults(TestFolder.Site(old, replacement))));

    [Fact]
    public void Missing_sections_are_all_named() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults("[site]\nname = \"x\"\n"),
            "site.toml:1:1: there is no section [season]; add a line [season] with its keys below it",
            "site.toml:1:1: there is no bench, so no tray can grow on; add a [[space]] with kind = \"bench\" and its places",
            "site.toml:1:1: there is no hardening table, so no tray can reach the field; add a [[space]] with kind = \"table\" and "
                + "its places",
            "site.toml:1:1: there is no section [weather]; add a line [weather] with its keys below it"
        );

    // One house and three spaces stand in the good site. Each added one is two lines; the first too many is number 501.
    [Theory]
    [InlineData("house", 499, 0)]
    [InlineData("house", 500, 1)]
    [InlineData("house", 9999, 1)]
    [InlineData("space", 497, 0)]
    [InlineData("space", 498, 1)]
    public void A_site_has_a_stated_number_of_houses_and_spaces(string section, int added, int faults)
    {
        var more = section == "house" ? "" : "kind = \"bench\"\nplaces = 1\n";
        var site = FarmFolder.GoodSite.TrimEnd() + "\n";
        var found = TestFolder.Faults(
            site + string.Concat(Enumerable.Range(0, added).Select(number => $"[[{section}]]\nid = \"x{number}\"\n{more}"))
        );
        Assert.Equal(faults, found.Length);
        var (has, lines, alike) = section == "house" ? (1, 2, "houses that are kept alike") : (3, 4, "spaces that are used alike");
        var line = site.Count(letter => letter == '\n') + ((500 - has) * lines) + 1;
        Assert.All(found, fault =>
            Assert.Equal(
                $"site.toml:{line}:1: the site has {has + added} [[{section}]], and may have up to 500; put {alike} into one",
                fault
            )
        );
    }
}
