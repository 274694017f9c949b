using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Tests.Serving;
using static BenchSim.Workbench.Tests.Drafts.DeskTests;

namespace BenchSim.Workbench.Tests.Drafts;

/// <summary>Tries kept as variants of the folder.</summary>
public sealed class KeepTests
{
    private const string Plan = "id,crop,plants,sow,note\na,tomato,100,2027-03-01,\nb,kale,200,2027-03-08,\nc,leek,300,2027-03-08,\n";

    [Fact]
    public void Changes_of_the_site_the_crops_and_the_plan_stand_in_the_variant_and_the_files_stay()
    {
        using var folder = new FarmFolder(plan: Plan);
        folder.Write("crops.csv", "id,like,pot_up_days\nmine,tomato,30\n");
        using var desk = new Desk(folder.Path);
        Made(
            desk,
            Key("space", 0, "places", "12"),
            Key("rules", 0, "slack_days", "4"),
            Key("house", 0, "day", "70 F"),
            new Change(ChangeKind.AddEntry)
            {
                Section = "space",
                Values = Texts.None.Add("id", "extra").Add("kind", "bench").Add("places", "9"),
            },
            new Change(ChangeKind.Cell)
            {
                File = "crops.csv",
                Column = "pot_up_days",
                Value = "28",
            },
            Cell(0, "plants", "120"),
            Cell(0, "note", "say \"when\""),
            new Change(ChangeKind.RemoveRow) { Row = 1 }
        );
        Assert.Null(desk.KeepAsVariant(1, "more", out var said));
        Assert.Equal("Kept as variants/more.toml.", said);
        Assert.Equal(
            """
            # Kept from Try 1 of the workbench.
            replan = true

            [[house]]
            id = "main"
            day = "70 F"

            [[space]]
            id = "mats"
            places = 12

            [[space]]
            id = "extra"
            kind = "bench"
            places = 9

            [rules]
            slack_days = 4

            [crops."mine"]
            pot_up_days = "28"

            [[plan]]
            batch = "a"
            plants = "120"
            note = "say \"when\""

            [[plan]]
            batch = "b"
            drop = true

            """,
            File.ReadAllText(folder.In("variants/more.toml")),
            ignoreLineEndingDifferences: true
        );
        Assert.Equal(Plan, File.ReadAllText(folder.In("plan.csv")));
        Assert.Single(desk.State.Tries);
        Assert.Empty(ScenarioFolder.ReadVariant(folder.Path, "more").Faults);
    }

    [Fact]
    public async Task The_page_is_told_what_was_kept_and_what_could_not_be()
    {
        using var folder = new FarmFolder();
        await using var visitor = await Visitor.InsideAsync(folder.Path);
        const string Edit = """
            {"what":"x","changes":[
                {"do":"Cell","row":0,"column":"plants","value":"120"},
                {"do":"Key","section":"rules","key":"late_days","value":"9"}]}
            """;
        await visitor.SayAsync("/api/edit", Edit);
        var kept = await visitor.SayAsync("/api/keep", """{"id":1,"name":"more"}""");
        Assert.Contains(
            "\"said\":\"Kept as variants/more.toml. A variant cannot hold late_days of [rules].\"",
            kept,
            StringComparison.Ordinal
        );
        Assert.True(File.Exists(folder.In("variants/more.toml")));
        var again = await visitor.SayAsync("/api/keep", """{"id":1,"name":"more"}""");
        Assert.Contains("There is a variant", again, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("site", "units", "metric", "units of [site]")]
    [InlineData("season", "opens", "2027-01-11", "opens of [season]")]
    [InlineData("play", "seed", "7", "seed of [play]")]
    [InlineData("play", "seasons", "50", "seasons of [play]")]
    [InlineData("rules", "late_days", "9", "late_days of [rules]")]
    [InlineData("rules", "service_goal", "95 %", "service_goal of [rules]")]
    public void What_a_variant_cannot_hold_is_said_and_the_rest_is_kept(string section, string key, string value, string named)
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        Made(desk, Key(section, 0, key, value));
        var fault = desk.KeepAsVariant(1, "none", out _);
        Assert.Equal($"There is nothing to keep as a variant. A variant cannot hold {named}.", fault?.Why);
        Assert.False(Directory.Exists(folder.In("variants")));

        Made(desk, Cell(0, "plants", "120"));
        Assert.Null(desk.KeepAsVariant(1, "rest", out var said));
        Assert.Equal($"Kept as variants/rest.toml. A variant cannot hold {named}.", said);
        Assert.DoesNotContain(key, File.ReadAllText(folder.In("variants/rest.toml")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_is_new_a_key_that_is_gone_and_another_table_are_said()
    {
        using var folder = new FarmFolder(FarmFolder.Site("places = 60", "places = 60\nname = \"Old\"\naisle_places = 5"));
        folder.Write("trays.csv", "id,cells\n50-cell,55\n");
        using var desk = new Desk(folder.Path);
        Made(
            desk,
            Key("space", 1, "aisle_places", ""),
            new Change(ChangeKind.AddRow)
            {
                Row = 1,
                Values = Texts.None.Add("id", "b").Add("crop", "kale").Add("plants", "10").Add("sow", "2027-03-08"),
            },
            new Change(ChangeKind.Cell)
            {
                File = "trays.csv",
                Column = "cells",
                Value = "60",
            },
            Key("space", 1, "places", "72")
        );
        Assert.Null(desk.KeepAsVariant(1, "rest", out var said));
        Assert.Equal(
            "Kept as variants/rest.toml. A variant cannot hold aisle_places of the space bench, which was taken out; "
                + "the line b of plan.csv, which is new; trays.csv.",
            said
        );
    }

    [Fact]
    public void Length_and_width_instead_of_places_are_held()
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        Made(desk, Key("space", 1, "length", "20 m"), Key("space", 1, "width", "1.5 m"));
        Assert.Null(desk.KeepAsVariant(1, "sides", out var said));
        Assert.Equal("Kept as variants/sides.toml.", said);
        var scenario = ScenarioFolder.ReadVariant(folder.Path, "sides").Scenario!;
        Assert.Equal(20, scenario.Spaces.Single(space => space is { Kind: SpaceKind.Bench }).Size.LengthM);
    }

    [Theory]
    [InlineData("../outside", "is no plain name of a variant")]
    [InlineData("a/b", "is no plain name of a variant")]
    [InlineData("", "is no plain name of a variant")]
    [InlineData("there", "There is a variant \"there\" already")]
    public void A_name_that_cannot_be_is_refused_and_nothing_is_written(string name, string why)
    {
        using var folder = new FarmFolder();
        folder.Write("variants/there.toml", "# mine\n");
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(0, "plants", "120"));
        Assert.Contains(why, desk.KeepAsVariant(1, name, out _)?.Why, StringComparison.Ordinal);
        Assert.Equal("# mine\n", File.ReadAllText(folder.In("variants/there.toml")));
        Assert.Single(Directory.EnumerateFiles(folder.In("variants")));
    }

    [Fact]
    public void A_folder_of_variants_that_is_a_link_is_not_written_through()
    {
        using var outside = new TemporaryFolder();
        using var folder = new FarmFolder();
        Directory.CreateSymbolicLink(folder.In("variants"), outside.Path);
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(0, "plants", "120"));
        Assert.Contains("links are not followed", desk.KeepAsVariant(1, "more", out _)?.Why, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(outside.Path));
    }

    [Fact]
    public void A_try_with_faults_is_not_kept()
    {
        using var folder = new FarmFolder();
        using var desk = new Desk(folder.Path);
        Made(desk, Cell(0, "plants", "none"));
        Assert.Equal("Mend the faults of this try first, then keep it.", desk.KeepAsVariant(1, "more", out _)?.Why);
    }
}
