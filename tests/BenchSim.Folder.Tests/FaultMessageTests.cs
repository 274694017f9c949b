namespace BenchSim.Folder.Tests;

/// <summary>The bad inputs that every release must answer, each with its exact message. Lines and columns were counted by hand.</summary>
public class FaultMessageTests
{
    private const string Head = "id,crop,plants,sow\n";

    [Fact]
    public void Unknown_crop() =>
        AssertFaults(
            TestFolder.Faults(plan: Head + "a,tomatto,100,2027-03-01\n"),
            "plan.csv:2:3: there is no crop \"tomatto\"; did you mean \"tomato\""
        );

    [Fact]
    public void Duplicate_batch_id() =>
        AssertFaults(
            TestFolder.Faults(plan: Head + "a,tomato,100,2027-03-01\nb,tomato,100,2027-03-01\na,tomato,50,2027-03-08\n"),
            "plan.csv:4:1: the batch id \"a\" is taken already, on line 2; give every batch an id of its own"
        );

    [Fact]
    public void Negative_plants() =>
        AssertFaults(
            TestFolder.Faults(plan: Head + "a,tomato,-100,2027-03-01\n"),
            "plan.csv:2:10: plants is -100, and cannot be negative; write a whole number, 1 or more"
        );

    [Fact]
    public void Negative_capacity() =>
        AssertFaults(
            TestFolder.Faults(TestFolder.Site("places = 60", "places = -60")),
            "site.toml:19:10: places is -60, and cannot be negative; write a whole number, from 0 to 100000"
        );

    [Fact]
    public void More_plants_than_a_plan_may_have() =>
        AssertFaults(
            TestFolder.Faults(plan: Head + "a,tomato,99999999,2027-03-01\n"),
            "plan.csv:2:10: plants is 99999999; write a whole number, from 1 to 10000000"
        );

    [Fact]
    public void A_capacity_too_large_to_be_read() =>
        AssertFaults(
            TestFolder.Faults(TestFolder.Site("places = 60", "places = 99999999999999999999")),
            "site.toml:19:10: places is \"99999999999999999999\", and no number here is that large; write a smaller number"
        );

    [Fact]
    public void A_night_without_quotation_marks_is_one_fault() =>
        AssertFaults(
            TestFolder.Faults(TestFolder.Site("night = \"60 F\"", "night = 60 F\nday = \"65 F\"")),
            "site.toml:8:9: a number with a unit is a text and goes in quotation marks; write night = \"60 F\""
        );

    // 55 C = 131 F and -60 C = -76 F; 30 C of difference = 54 F; 1000 m = 3280.840 ft; 10 C = 50 F.
    [Theory]
    [InlineData(
        "night = \"60 F\"",
        "night = 600",
        "site.toml:9:9: night is \"600\", which is 600 F; write a temperature from -76 F to 131 F, with its unit, such as 60 F"
    )]
    [InlineData(
        "night = \"60 F\"",
        "night = \"60 F\"\nday_lift = 70",
        "site.toml:10:12: day_lift is \"70\"; write a value from 0 F to 54 F"
    )]
    [InlineData(
        "night = \"60 F\"",
        "night = \"60 F\"\nvent = 50",
        "site.toml:10:8: vent leaves the vent set-point of 50 F below the heating; vent at a temperature above night and day"
    )]
    [InlineData("places = 60", "length = 4000\nwidth = 5", "site.toml:20:10: length is \"4000\"; write a value from 0 ft to 3280.84 ft")]
    [InlineData(
        "\"25 C\"",
        "25",
        "site.toml:15:15: temperature is \"25\", which is 25 F: too cold for a heat mat; write the temperature of the medium on the "
            + "mat with its unit, such as \"75 F\" or \"24 C\""
    )]
    [InlineData(
        "\"25 C\"",
        "\"9.9 C\"",
        "site.toml:15:15: temperature is \"9.9 C\", which is 49.8 F: too cold for a heat mat; write the temperature of the medium "
            + "on the mat with its unit, such as \"75 F\" or \"24 C\""
    )]
    [InlineData("\"25 C\"", "50", null)]
    public void Limits_are_in_the_units_of_the_site(string old, string replacement, string? message) =>
        AssertFaults(
            TestFolder.Faults(
                TestFolder
                    .Site(old, replacement)
                    .Replace("name = \"Test farm\"", "name = \"Test farm\"\nunits = \"imperial\"", StringComparison.Ordinal)
            ),
            message is null ? [] : [message]
        );

    [Fact]
    public void Fractional_capacity() =>
        AssertFaults(
            TestFolder.Faults(TestFolder.Site("places = 60", "places = 60.5")),
            "site.toml:19:10: places is 60.5, which is not a whole number; write a whole number, from 0 to 100000"
        );

    // 800 seeds a flat over 50 cells a tray: 16 trays from one flat.
    [Fact]
    public void A_pot_up_that_fills_more_trays_from_one_flat_than_all_its_benches_hold() =>
        AssertFaults(
            TestFolder.Faults(
                TestFolder.Site("places = 60", "places = 15"),
                "id,crop,plants,sow,method,tray,flat,seeds_per_flat\na,tomato,100,2027-03-01,pot up,50-cell,open-flat,800\n"
            ),
            "plan.csv:2:50: one flat of 800 seeds may fill 16 trays of 50 cells, and the benches for \"tomato\" hold 15; "
                + "sow fewer seeds in a flat, or give the crop more bench places"
        );

    // 600 plants in 50 cells: at least 12 trays, and the mats have 10 places. The planner says so, which knows how many trays there are.
    [Fact]
    public void Of_a_batch_larger_than_the_mats_the_reader_says_nothing()
    {
        using var folder = new TestFolder(plan: "id,crop,plants,sow,tray\na,tomato,600,2027-03-01,50-cell\n");
        Assert.Empty(folder.Read().Warnings);
    }

    [Theory]
    [InlineData(
        "work_days = [\"\"]",
        "site.toml:25:14: work_days has an empty text in its list; write a value between the quotation marks, or take them out"
    )]
    [InlineData(
        "days_off = [2027-03-01, \" \"]",
        "site.toml:25:25: days_off has an empty text in its list; write a value between the quotation marks, or take them out"
    )]
    [InlineData(
        "light = [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, \"\"]",
        "site.toml:25:43: light has an empty text in its list; write 12, one for each month, January first"
    )]
    [InlineData(
        "round_at = 08:59:59",
        "site.toml:25:12: round_at is \"08:59:59\", which is not a time of the day; write hours and minutes such as 08:00"
    )]
    [InlineData("round_at = 08:59:00", null)]
    public void Rules_that_would_be_read_for_less_than_they_say(string line, string? message) =>
        AssertFaults(TestFolder.Faults(TestFolder.Site("[weather]", $"[rules]\n{line}\n[weather]")), message is null ? [] : [message]);

    // 1000 m hold 1855 trays of 539 mm and 3584 of 279 mm the other way round; more than 100,000 in any case.
    [Fact]
    public void A_bench_as_large_as_a_village()
    {
        var fault = Assert.Single(TestFolder.Faults(TestFolder.Site("places = 60", "length = 1000\nwidth = 1000")));
        Assert.StartsWith("site.toml:19:10: length and width make ", fault, StringComparison.Ordinal);
        Assert.EndsWith(" places; write the sizes of one space, of at most 100000 places", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void A_side_without_a_unit_is_told_with_that_of_the_site()
    {
        using var folder = new TestFolder(TestFolder.Site("places = 60", "length = 9\nwidth = \"170 cm\""));
        Assert.StartsWith("9 m by 170 cm: ", folder.Read().Scenario!.Spaces[1].PlacesNote, StringComparison.Ordinal);
    }

    [Fact]
    public void A_weather_record_with_the_name_of_another_input_but_for_its_case() =>
        AssertFaults(
            TestFolder.Faults(
                TestFolder.Site("kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"", "kind = \"record\"\nfile = \"Plan.csv\"")
            ),
            "site.toml:26:8: file is \"Plan.csv\", and plan.csv is another file of the scenario; give the weather record a name of "
                + "its own, such as \"weather.csv\""
        );

    [Fact]
    public void A_line_of_blanks_before_the_heading_does_not_decide_what_separates_the_cells() =>
        AssertFaults(TestFolder.Faults(plan: "   \nid;crop;plants;sow\na;tomato;100;2027-03-01\n"));

    // 10,000,000 plants, a plant a tray, 2 places a tray.
    [Fact]
    public void Trays_that_want_more_places_than_there_can_be()
    {
        using var folder = new TestFolder();
        folder
            .Write("plan.csv", "id,crop,plants,sow,tray\na,tomato,10000000,2027-03-01,big\n")
            .Write("trays.csv", "id,cells,medium_litres,places_each\nbig,1,10,2\n");
        Assert.Equal(
            "plan.csv:2:1: the trays of the plan want 20,000,000 places at least, the most of them here; "
                + "a plan may want up to 10,000,000: check the columns plants, trays and times, and cells and places_each of the tray",
            Assert.Single(folder.Read().Faults).ToString()
        );
    }

    // c0 borrows from the library, c1 from c0 and so on: c4 borrows through four others and the library's, c5 would through six.
    [Theory]
    [InlineData(5, false)]
    [InlineData(5, true)]
    [InlineData(6, false)]
    [InlineData(6, true)]
    public void A_long_line_of_crops_that_borrow_from_each_other(int crops, bool isBackward)
    {
        var lines = Enumerable.Range(0, crops).Select(number => $"c{number},{(number == 0 ? "tomato" : $"c{number - 1}")}");
        using var folder = new TestFolder();
        folder.Write("crops.csv", "id,like\n" + string.Join('\n', isBackward ? lines.Reverse() : lines) + "\n");
        var faults = folder.Read().Faults;
        if (crops == 5)
        {
            Assert.Empty(faults);
            return;
        }

        Assert.Equal(
            $"crops.csv:{(isBackward ? 2 : 7)}:4: like makes \"c5\" borrow through more than 5 others; name the one that the values "
                + "come from",
            Assert.Single(faults).ToString()
        );
    }

    [Fact]
    public void A_site_without_mats_is_a_warning()
    {
        using var folder = new TestFolder(TestFolder.Site("places = 10", "places = 0"));
        var reading = folder.Read();
        Assert.NotNull(reading.Scenario);
        Assert.Equal(
            "site.toml:1:1: there is no heat mat for tomato; "
                + "each sowing waits sow_wait_days, then starts on a bench; add a mat, or write bottom_heat no in crops.csv",
            Assert.Single(reading.Warnings).ToString()
        );
    }

    [Fact]
    public void Dates_out_of_season() =>
        AssertFaults(
            TestFolder.Faults(plan: Head + "a,tomato,100,2027-01-17\nb,tomato,100,2027-07-01\n"),
            "plan.csv:2:14: sow is 2027-01-17, outside the season; the season runs from 2027-01-18 to 2027-06-30",
            "plan.csv:3:14: sow is 2027-07-01, outside the season; the season runs from 2027-01-18 to 2027-06-30"
        );

    [Fact]
    public void Thirty_first_of_February() =>
        AssertFaults(
            TestFolder.Faults(TestFolder.Site("opens = 2027-01-18", "opens = 2027-02-31"), Head + "a,tomato,100,2027-02-31\n"),
            "plan.csv:2:14: sow is 2027-02-31, which is not in the calendar; February 2027 has 28 days",
            "site.toml:4:9: opens is 2027-02-31, which is not in the calendar; February 2027 has 28 days"
        );

    [Fact]
    public void Missing_column() =>
        AssertFaults(
            TestFolder.Faults(plan: "id,plants,sow\na,100,2027-03-01\n"),
            "plan.csv:1:1: there is no column \"crop\"; add a column named crop to the first line"
        );

    [Fact]
    public void Text_in_a_number() =>
        AssertFaults(
            TestFolder.Faults(plan: Head + "a,tomato,many,2027-03-01\n"),
            "plan.csv:2:10: plants is \"many\", which is not a number; write a whole number, 1 or more"
        );

    [Fact]
    public void Two_faults_on_one_line() =>
        AssertFaults(
            TestFolder.Faults(plan: Head + "a,tomatto,-4,2027-03-01\n"),
            "plan.csv:2:3: there is no crop \"tomatto\"; did you mean \"tomato\"",
            "plan.csv:2:11: plants is -4, and cannot be negative; write a whole number, 1 or more"
        );

    [Fact]
    public void A_file_that_is_a_folder()
    {
        using var folder = new TestFolder(plan: null);
        folder.Write("plan.csv/inside.txt", "");
        AssertFaults(
            [.. folder.Read().Faults.Select(fault => fault.ToString())],
            "plan.csv:0:0: this is a folder, not a file; put a file named plan.csv in its place"
        );
    }

    [Fact]
    public void A_file_of_200_megabytes()
    {
        using var folder = new TestFolder();
        using (var stream = File.OpenWrite(Path.Combine(folder.Path, "plan.csv")))
        {
            stream.SetLength(200_000_000);
        }

        AssertFaults(
            [.. folder.Read().Faults.Select(fault => fault.ToString())],
            "plan.csv:0:0: the file is 200 MB and was not read; a scenario file may be up to 50 MB: check that it is the right file"
        );
    }

    [Fact]
    public void Toml_syntax_errors() =>
        AssertFaults(
            TestFolder.Faults(
                TestFolder.GoodSite
                    + "\n[rules]\nmove_back = yes\nwet_limit = 25 mm\nlate_days =\nsow_wait_days 3\nlight = 0,5\nround_at = \"08:00\n"
            ),
            "site.toml:29:13: the text \"yes\" is not in quotation marks; write move_back = \"yes\"",
            "site.toml:30:13: a number with a unit is a text and goes in quotation marks; write wet_limit = \"25 mm\"",
            "site.toml:31:12: \"late_days\" has no value; write one after the =, or take the line out",
            "site.toml:32:15: this line cannot be read; write key = value, with texts in quotation marks",
            "site.toml:33:9: light is not a list; write 12 numbers between square brackets, one for each month, January first",
            "site.toml:34:12: a quotation mark is missing on this line; write round_at = \"08:00\""
        );

    [Fact]
    public void Unknown_key_with_a_near_name() =>
        AssertFaults(
            TestFolder.Faults(TestFolder.Site("night = ", "nigth = ")),
            "site.toml:8:1: there is no key \"nigth\" in [[house]]; did you mean \"night\""
        );

    [Fact]
    public void Duplicate_toml_key_and_section() =>
        AssertFaults(
            TestFolder.Faults(TestFolder.Site("night = \"60 F\"", "night = \"60 F\"\nnight = \"61 F\"") + "\n[weather]\nrain = 0\n"),
            "site.toml:9:1: the key \"night\" is here a second time (first on line 8); keep one of the two",
            "site.toml:29:1: the section [weather] is here a second time (first on line 25); put all its keys under one heading"
        );

    [Fact]
    public void Unknown_unit() =>
        AssertFaults(
            TestFolder.Faults(TestFolder.Site("night = \"60 F\"", "night = \"60 R\"")),
            "site.toml:8:9: night is \"60 R\", and \"R\" is not a unit of temperature; write C or F, for example 60 F or 15.5 C"
        );

    [Fact]
    public void Germination_above_all() =>
        AssertFaults(
            TestFolder.Faults(plan: "id,crop,plants,sow,germination\na,tomato,100,2027-03-01,140 %\nb,tomato,100,2027-03-01,85\n"),
            "plan.csv:2:25: germination is \"140 %\"; write a share from 0 % to 100 %, such as 85 % or 0.85",
            "plan.csv:3:25: germination is 85, which is more than all; write 85 % or 0.85"
        );

    [Fact]
    public void Tested_after_sowing() =>
        AssertFaults(
            TestFolder.Faults(plan: "id,crop,plants,sow,tested_on\na,tomato,100,2027-03-01,2027-03-02\n"),
            "plan.csv:2:25: tested_on is 2027-03-02, after sow, which is 2027-03-01; write the date of a test made before sowing"
        );

    [Fact]
    public void Space_in_an_unknown_house() =>
        AssertFaults(
            TestFolder.Faults(TestFolder.Site("house = \"main\"\nplaces = 60", "house = \"mian\"\nplaces = 60")),
            "site.toml:18:9: there is no house \"mian\"; did you mean \"main\""
        );

    [Fact]
    public void A_plan_with_no_rows() =>
        AssertFaults(
            TestFolder.Faults(plan: "id,crop,plants,sow\n,,,\n\n"),
            "plan.csv:1:1: the plan has no rows; add a line for each batch below the column names"
        );

    internal static void AssertFaults(string[] actual, params string[] expected) => Assert.Equal(expected, actual);

    [Theory]
    [InlineData("\\")]
    [InlineData("\\u")]
    [InlineData("\\u12")]
    [InlineData("\\U0011")]
    public void A_site_cut_off_within_an_escape_is_a_fault_of_its_line(string end) =>
        Assert.Contains(TestFolder.Faults(site: TestFolder.GoodSite + "\nnote = \"a" + end), fault =>
            fault.StartsWith("site.toml:28:", StringComparison.Ordinal)
        );
}
