using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests;

/// <summary>
/// What people and spreadsheets really write. What has one meaning is read; else there is one fault, and what it says to type is accepted
/// when it is typed.
/// </summary>
public class AdviceTests
{
    private const string Site = """
        [site]
        name = "Test farm"
        units = "imperial"
        [season]
        opens = 2027-01-18
        closes = 2027-06-30
        [[house]]
        id = "main"
        night = "60 F"
        open = "when needed"
        [[space]]
        id = "mats"
        kind = "mat"
        house = "main"
        places = 10
        temperature = "77 F"
        [[space]]
        id = "bench"
        kind = "bench"
        house = "main"
        places = 60
        changes = [{ from = "2027-05-01", places = 50 }, { from = "2027-06-01", places = 40 }]
        [[space]]
        id = "table"
        kind = "table"
        places = 40
        [rules]
        work_days = ["Mon", "Tue", "Wed",
          "Thu", "Fri"]
        cover_gain = "6 F" # a medium cover
        [prices]
        currency = "$"
        thousand_seeds = "$ 18.50"
        [weather]
        kind = "constant"
        low = "54 F"
        high = "68 F"

        """;

    [Theory]
    [InlineData("TOMATO", "200-CELL")]
    [InlineData("tomato", "200")]
    [InlineData("Tomato", "200 cells")]
    [InlineData("tomato", "200 cell tray")]
    [InlineData("tomato", "200-Cell Trays")]
    [InlineData("tomato\u00A0", "200_cell ")]
    [InlineData("\u201Ctomato\u201D", "\u201E200 cells\u201C")]
    public void Crops_and_trays_by_the_names_people_use(string crop, string tray)
    {
        using var folder = new TestFolder(plan: $"id,crop,plants,sow,tray\na,{crop},100,2027-03-01,{tray}\n");
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        var batch = Assert.Single(reading.Scenario!.Batches);
        Assert.Equal(("tomato", "200-cell"), (batch.CropId, batch.TrayId));
    }

    [Fact]
    public void A_name_that_fits_two_crops_fits_none()
    {
        using var folder = new TestFolder(plan: "id,crop,plants,sow\na,MINE,100,2027-03-01\n");
        folder.Write("crops.csv", "id,like\nMine,tomato\nmine,cabbage\n");
        Assert.StartsWith(
            "plan.csv:2:3: there is no crop \"MINE\"; did you mean ",
            Assert.Single(folder.Read().Faults).ToString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Every_other_name_is_matched_whatever_its_case()
    {
        using var folder = new TestFolder(
            TestFolder.Site("house = \"main\"\nplaces = 60", "house = \"MAIN\"\nplaces = 60")
                + "\n[[mishap]]\nid = \"mice\"\nchance = \"5 %\"\nfrom = 2027-03-01\nto = 2027-04-01\nhouse = \"Main\"\n"
                + "space = \"Bench\"\ncrop = \"Tomato\"\nloss = \"10 %\"\n"
        );
        folder.Write("crops.csv", "id,like,benches,mats,tray\nTomato,,Bench,MATS,72 cells\nmine,CABBAGE,bench,,\n");
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        var (scenario, crop) = (reading.Scenario!, Assert.Single(reading.Scenario!.Crops));
        Assert.Equal("main", scenario.Spaces[1].HouseId);
        Assert.Equal(("main", "bench", "tomato"), (scenario.Mishaps[0].HouseId, scenario.Mishaps[0].SpaceId, scenario.Mishaps[0].CropId));
        Assert.Equal(("tomato", "bench", "mats", "72-cell"), (crop.Id, crop.Benches[0], crop.Mats[0], crop.TrayId));
    }

    [Fact]
    public void A_variant_names_crops_and_spaces_whatever_their_case()
    {
        using var folder = new TestFolder();
        folder.Write(
            "variants/more.toml",
            "[[space]]\nid = \"Bench\"\nplaces = 70\n[crops.Tomato]\nhardening_nights = 9\n[[plan]]\ncrop = \"TOMATO\"\nplants = 120\n"
        );
        var reading = ScenarioFolder.ReadVariant(folder.Path, "more");
        Assert.Empty(reading.Faults);
        Assert.Equal(
            ("bench", 70, 9, 120),
            (
                reading.Scenario!.Spaces[1].Id,
                reading.Scenario.Spaces[1].Places,
                reading.Scenario.Crops[0].HardeningNights,
                reading.Scenario.Batches[0].Plants
            )
        );
    }

    [Fact]
    public void Two_ways_to_write_a_grower_are_a_warning()
    {
        using var folder = new TestFolder(
            plan: "id,crop,grower,plants,sow\na,tomato,Ana,100,2027-03-01\nb,tomato,ana,100,2027-03-01\nc,tomato,ana,9,2027-03-01\n"
        );
        var reading = folder.Read();
        Assert.NotNull(reading.Scenario);
        Assert.Equal(
            "plan.csv:3:10: the growers \"ana\" and \"Ana\" (line 2) are counted as two; if they are one, write \"Ana\" each time",
            Assert.Single(reading.Warnings).ToString()
        );
    }

    [Theory]
    [InlineData("3,000", 3000)]
    [InlineData("3 000", 3000)]
    [InlineData("3\u00A0000", 3000)]
    [InlineData("3'000", 3000)]
    [InlineData("3,000.0", 3000)]
    [InlineData("1.234.567", 1234567)]
    [InlineData("1,234,567", 1234567)]
    [InlineData("3,0", 3)]
    [InlineData("3000.0", 3000)]
    [InlineData("3000.", 3000)]
    public void A_whole_number_as_spreadsheets_write_it(string written, int plants)
    {
        using var folder = new TestFolder(plan: $"id;crop;plants;sow\na;tomato;{written};2027-03-01\n");
        var reading = folder.Read();
        Assert.DoesNotContain(reading.Faults, fault => fault.What.Contains("plants is", StringComparison.Ordinal));
        Assert.Equal(plants, reading.Scenario?.Batches[0].Plants ?? plants);
    }

    // 3.000 is three in one country and three thousand in another.
    [Theory]
    [InlineData("3.000", "plants is \"3.000\", which may be 3000 or 3; write 3000 or 3")]
    [InlineData("3,00,0", "plants is \"3,00,0\", which is not a number; write a whole number, 1 or more")]
    [InlineData("3 00", "plants is \"3 00\", which is not a number; write a whole number, 1 or more")]
    [InlineData("2,5", "plants is 2.5, which is not a whole number; write a whole number, 1 or more")]
    public void A_whole_number_that_may_be_two_or_is_none(string written, string message) =>
        Assert.Equal(
            $"plan.csv:2:10: {message}",
            Assert.Single(TestFolder.Faults(plan: $"id;crop;plants;sow\na;tomato;{written};2027-03-01\n"))
        );

    [Theory]
    [InlineData("12.50", 12.5)]
    [InlineData("12,50", 12.5)]
    [InlineData("$12.50", 12.5)]
    [InlineData("12,50 \u20AC", 12.5)]
    [InlineData("\u00A3 12.50", 12.5)]
    [InlineData("CHF 1'250.00", 1250)]
    [InlineData("1.250,00 EUR", 1250)]
    [InlineData("0,125", 0.125)]
    public void An_amount_of_money_with_its_currency(string written, double price)
    {
        using var folder = new TestFolder(plan: $"id;crop;plants;sow;thousand_seeds\na;tomato;100;2027-03-01;{written}\n");
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Equal(price, reading.Scenario!.Batches[0].ThousandSeeds);
    }

    // What is advised for a number of two meanings is accepted, either way.
    [Fact]
    public void A_price_that_may_be_two()
    {
        const string Plan = "id;crop;plants;sow;thousand_seeds\na;tomato;100;2027-03-01;1,250\n";
        var fault = Assert.Single(TestFolder.Faults(plan: Plan));
        Assert.Equal("plan.csv:2:25: thousand_seeds is \"1,250\", which may be 1250 or 1.25; write 1250 or 1.25", fault);
        foreach (var typed in Typed(fault).Split(" or "))
        {
            Assert.Empty(TestFolder.Faults(plan: Plan.Replace("1,250", typed, StringComparison.Ordinal)));
        }
    }

    [Theory]
    [InlineData("0,85", 0.85)]
    [InlineData("85,5 %", 0.855)]
    [InlineData("85%", 0.85)]
    public void A_share_with_a_decimal_comma(string written, double share)
    {
        using var folder = new TestFolder(plan: $"id;crop;plants;sow;germination\na;tomato;100;2027-03-01;{written}\n");
        Assert.Equal(share, Assert.Single(folder.Read().Scenario!.Batches).Germination, 12);
    }

    /// <summary>Take any one quotation mark out of a site: one fault, on that line, and the file as it says is good.</summary>
    [Fact]
    public void One_missing_quotation_mark_is_one_fault_on_its_line()
    {
        Assert.Empty(TestFolder.Faults(Site));
        var marks = Enumerable.Range(0, Site.Length).Where(at => Site[at] == '"').ToArray();
        Assert.NotEmpty(marks);
        Assert.All(marks, mark => AssertMended(Site.Remove(mark, 1), mark));
    }

    [Fact]
    public void A_text_without_its_quotation_marks_is_one_fault_on_its_line()
    {
        var lines = Site.Split('\n');
        for (var line = 0; line < lines.Length; line++)
        {
            if (
                lines[line].Split('#')[0].TrimEnd() is var code
                && code.EndsWith('"')
                && code.Count(mark => mark == '"') == 2
                && code.Contains(" = \"", StringComparison.Ordinal)
                && !code.Contains('$')
            )
            {
                var bare = string.Join(
                    '\n',
                    [.. lines[..line], lines[line].Replace("\"", "", StringComparison.Ordinal), .. lines[(line + 1)..]]
                );
                AssertMended(bare, Site.Split('\n').Take(line).Sum(each => each.Length + 1));
            }
        }
    }

    [Fact]
    public void Quotation_marks_of_a_word_processor_are_read()
    {
        var isOpening = false;
        var curly = string.Concat(
            Site.Select(character => character == '"' ? ((isOpening = !isOpening) ? '\u201C' : '\u201D') : character)
        );
        Assert.Empty(TestFolder.Faults(curly));
    }

    [Fact]
    public void Lines_that_end_in_CR_alone_are_read()
    {
        Assert.Empty(TestFolder.Faults(Site.ReplaceLineEndings("\r"), TestFolder.GoodPlan.ReplaceLineEndings("\r")));
        Assert.StartsWith(
            "site.toml:9:9: ",
            Assert.Single(TestFolder.Faults(Site.Replace("\"60 F\"", "\"60 R\"", StringComparison.Ordinal).ReplaceLineEndings("\r"))),
            StringComparison.Ordinal
        );
    }

    // 2^63 = 9,223,372,036,854,775,808 is one more than TOML holds; 2^64 is one more than a seed may be.
    [Fact]
    public void A_seed_larger_than_toml_holds()
    {
        var site = Site + "[play]\nseed = 9223372036854775808\n";
        var line = site.Split('\n').Length - 1;
        var fault = Assert.Single(TestFolder.Faults(site));
        Assert.Equal(
            $"site.toml:{line}:8: seed is 9223372036854775808, and the largest number without quotation marks is 9223372036854775807; "
                + "write seed = \"9223372036854775808\"",
            fault
        );
        using var folder = new TestFolder(Site + $"[play]\n{Typed(fault)}\n");
        Assert.Equal(9223372036854775808UL, folder.Read().Scenario!.Play.Seed);
        Assert.Equal(
            $"site.toml:{line}:8: seed is \"18446744073709551616\", and no number here is that large; "
                + "write a number up to 18446744073709551615",
            Assert.Single(TestFolder.Faults(Site + "[play]\nseed = 18446744073709551616\n"))
        );
    }

    [Fact]
    public void A_text_of_several_lines_that_is_never_closed_is_told_where_it_opens() =>
        Assert.Equal(
            "site.toml:2:8: a quotation mark is missing on this line; write name = \"Test farm\"",
            Assert.Single(TestFolder.Faults(Site.Replace("\"Test farm\"", "\"\"\"Test farm\"", StringComparison.Ordinal)))
        );

    /// <summary>An open quotation mark in a plan is one fault where it opens, and the plan as it says is good.</summary>
    [Theory]
    [InlineData(
        "a,\"tomato,100,2027-03-01,\nb,tomato,50,2027-03-08,\n",
        "plan.csv:2:3: this quotation mark is never closed; write \"tomato\""
    )]
    [InlineData(
        "a,\"tomato,100,2027-03-01,\nb,\"tomato\",50,2027-03-08,\n",
        "plan.csv:2:3: this quotation mark is never closed; write \"tomato\""
    )]
    [InlineData(
        "a,tomato,100,2027-03-01,\nb,tomato,50,2027-03-08,\"one, two\n",
        "plan.csv:3:24: this quotation mark is never closed; write \"one, two\""
    )]
    [InlineData("\"a,tomato,100,2027-03-01,\n", "plan.csv:2:1: this quotation mark is never closed; write \"a\"")]
    public void An_open_quotation_mark_in_a_plan(string rows, string message)
    {
        var plan = "id,crop,plants,sow,note\n" + rows;
        var fault = Assert.Single(TestFolder.Faults(plan: plan));
        Assert.Equal(message, fault);
        var typed = Typed(fault);
        Assert.Empty(
            TestFolder.Faults(
                plan: plan.Replace(typed[..^1], typed, StringComparison.Ordinal).Replace(typed + "\"", typed, StringComparison.Ordinal)
            )
        );
    }

    [Fact]
    public void The_encoding_of_a_text_in_utf_16_is_named_without_its_mark_too()
    {
        foreach (var encoding in new[] { System.Text.Encoding.Unicode, System.Text.Encoding.BigEndianUnicode })
        {
            using var folder = new TestFolder();
            folder.Write("plan.csv", encoding.GetBytes(TestFolder.GoodPlan));
            Assert.Equal(
                "plan.csv:1:1: the text is in the UTF-16 encoding; save it as UTF-8 (in a spreadsheet: \"CSV UTF-8\")",
                Assert.Single(folder.Read().Faults).ToString()
            );
        }
    }

    private static void AssertMended(string site, int place)
    {
        var fault = Assert.Single(TestFolder.Faults(site));
        var line = site[..place].Count(character => character == '\n');
        Assert.StartsWith($"site.toml:{line + 1}:", fault, StringComparison.Ordinal);
        var lines = site.Split('\n');
        lines[line] = Typed(fault);
        Assert.Empty(TestFolder.Faults(string.Join('\n', lines)));
    }

    // What the fault says to type.
    private static string Typed(string fault) => fault[(fault.LastIndexOf("; write ", StringComparison.Ordinal) + "; write ".Length)..];
}
