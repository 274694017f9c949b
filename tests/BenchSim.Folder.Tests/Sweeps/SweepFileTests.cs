using BenchSim.Folder.Sweeps;
using static BenchSim.Folder.Tests.FaultMessageTests;

namespace BenchSim.Folder.Tests.Sweeps;

/// <summary>Sweep files: what is read of them, and what is wrong with bad ones, each with its exact message.</summary>
public sealed class SweepFileTests : TemporaryFolder
{
    private const string North = "folders = [\"north\"]\n";

    public SweepFileTests()
    {
        foreach (var folder in new[] { "north", "south/b", "south/a", "south/C" })
        {
            Write($"{folder}/site.toml", "");
        }

        Write("south/no-farm/notes.txt", "");
        Write("north/variants/warmer.toml", "");
        Write("north/variants/longer.toml", "");
        Write("south/a/variants/longer.toml", "");
    }

    [Fact]
    public void What_is_left_out_has_its_default()
    {
        var sweep = Good(North);
        Assert.Equal(
            ("sweep", 1000, 1000, null, 0, 0.9, false),
            (
                sweep.Settings.Name,
                sweep.Settings.Seasons,
                sweep.Settings.SeasonsPerTask,
                sweep.Settings.Seed,
                sweep.Settings.ValueSets,
                sweep.Settings.Goal,
                sweep.Settings.IsPlannedAnew
            )
        );
        var folder = Assert.Single(sweep.Folders);
        Assert.Equal(("north", In("north")), (folder.Name, folder.Directory));
        Assert.Equal("-", Joined(folder.Variants));
    }

    [Fact]
    public void Everything_that_is_written_is_read()
    {
        var sweep = Good(
            """
            name = "County"
            folders = ["south/*", "north/"]
            variants = "all"
            replan = true
            seasons = 30
            seasons_per_task = 7
            seed = 12
            value_sets = 64
            goal = "75 %"
            """
        );
        Assert.Equal(
            ("County", 30, 7, 12UL, 64, 0.75, true),
            (
                sweep.Settings.Name,
                sweep.Settings.Seasons,
                sweep.Settings.SeasonsPerTask,
                sweep.Settings.Seed,
                sweep.Settings.ValueSets,
                sweep.Settings.Goal,
                sweep.Settings.IsPlannedAnew
            )
        );

        // In order of name, capital letters first; folders without a site are no scenario folders.
        Assert.Equal(["south/C", "south/a", "south/b", "north"], sweep.Folders.Select(folder => folder.Name).ToArray());
        Assert.Equal("-", Joined(sweep.Folders[0].Variants));
        Assert.Equal("-, longer", Joined(sweep.Folders[1].Variants));
        Assert.Equal("-, longer, warmer", Joined(sweep.Folders[3].Variants));
    }

    [Fact]
    public void Variants_are_played_in_the_order_of_the_list() =>
        Assert.Equal(
            "warmer, -, longer",
            Joined(Assert.Single(Good(North + "variants = [\"warmer\", \"as planned\", \"longer\"]").Folders).Variants)
        );

    [Fact]
    public void A_folder_that_is_named_before_a_star_is_played_once() =>
        Assert.Equal(
            ["south/b", "south/C", "south/a"],
            Good("folders = [\"south/b\", \"south/*\"]").Folders.Select(folder => folder.Name).ToArray()
        );

    [Fact]
    public void A_block_has_no_more_seasons_than_there_are() => Assert.Equal(30, Good(North + "seasons = 30").Settings.SeasonsPerTask);

    [Theory]
    [InlineData("", "1:1: a sweep file has no folders; add a line such as folders = [\"north\", \"south/*\"]")]
    [InlineData("folders = []", "1:1: folders is an empty list; name one scenario folder or more")]
    [InlineData("folders = \"north\"", "1:11: folders is not a list; write a list such as [\"north\", \"south/*\"]")]
    [InlineData("folders = [\"norht\"]", "1:12: folders has \"norht\", and there is no such folder; did you mean \"north\"")]
    [InlineData(
        "folders = [\"elsewhere\"]",
        "1:12: folders has \"elsewhere\", and there is no such folder; names are from where this file stands: check the name"
    )]
    [InlineData(
        "folders = [\"north/site.toml\"]",
        "1:12: folders has \"north/site.toml\", which is a file, not a folder; name the folder that holds site.toml and plan.csv"
    )]
    [InlineData("folders = [\"north\", \"./north\"]", "1:21: folders names \"./north\" a second time; name each folder once")]
    [InlineData(
        "folders = [\"south/n*\"]",
        "1:12: folders has \"south/n*\", and * may stand only as the whole last part; write a folder and /*, such as \"south/*\", or the "
            + "name of one folder"
    )]
    [InlineData(
        "folders = [\"north/*\"]",
        "1:12: folders has \"north/*\", and no scenario folder is in there; name a folder whose folders hold site.toml and plan.csv"
    )]
    [InlineData(
        "folders = [\"east/*\"]",
        "1:12: folders has \"east/*\", and that folder cannot be listed; check its name, and that you may read it"
    )]
    [InlineData(
        "folders = [\"no\\u0007rth\"]",
        "1:12: folders is \"no[U+0007]rth\", which holds a line break or an invisible character; write the name on one line with visible "
            + "characters"
    )]
    [InlineData(North + "folder = 1", "2:1: there is no key \"folder\" in a sweep file; did you mean \"folders\"")]
    [InlineData(
        North + "variants = []",
        "2:1: variants is an empty list; write \"as planned\" in it for the plan itself, or take the line out"
    )]
    [InlineData(
        North + "variants = \"warmer\"",
        "2:12: variants is \"warmer\", which is no list; write \"all\", or a list such as [\"as planned\", \"warmer\"]"
    )]
    [InlineData(
        North + "variants = [\"all\"]",
        "2:13: variants has \"all\", and there is no variants/all.toml in \"north\"; for every variant write variants = \"all\", without "
            + "brackets"
    )]
    [InlineData(
        North + "variants = [\"warmr\"]",
        "2:13: variants has \"warmr\", and there is no variants/warmr.toml in \"north\"; did you mean \"warmer\""
    )]
    [InlineData(North + "variants = [\"warmer\", \"warmer\"]", "2:23: variants names \"warmer\" a second time; name each once")]
    [InlineData(
        "folders = [\"north\", \"south/*\"]\nvariants = [\"warmer\"]",
        "2:13: variants has \"warmer\", and there is no variants/warmer.toml in \"south/C\", \"south/a\", \"south/b\"; write that file, or "
            + "leave the name out"
    )]
    [InlineData("folders = [\"/\"]", "1:12: folders has \"/\", the root of a disk; name the folder that holds the farms")]
    [InlineData("folders = [\"/*\"]", "1:12: folders has \"/*\", the root of a disk; name the folder that holds the farms")]
    [InlineData(North + "seasons = 0", "2:11: seasons is 0; write a whole number, 1 or more")]
    [InlineData(
        North + "seasons_per_task = 1.5",
        "2:20: seasons_per_task is 1.5, which is not a whole number; write a whole number, 1 or more"
    )]
    [InlineData(North + "value_sets = 70000", "2:14: value_sets is 70000; write a whole number, from 0 to 4096")]
    [InlineData(North + "seed = -1", "2:8: seed is \"-1\"; write a whole number, 0 or more")]
    [InlineData(North + "goal = 0", "2:8: goal is \"0\"; write a share above 0 % to 100 %")]
    [InlineData(North + "replan = \"perhaps\"", "2:10: replan is \"perhaps\"; write \"yes\" or \"no\"")]
    [InlineData(
        North + "[play]\nseasons = 3",
        "2:2: there is no key \"play\" in a sweep file; the keys here are name, folders, variants, replan, seasons, seasons_per_task, "
            + "seed, value_sets and goal"
    )]
    [InlineData(North + "name = ", "2:8: \"name\" has no value; write one after the =, or take the line out")]
    public void Faults(string text, string fault) => AssertFaults(FaultsOf(text), $"{In("sweep.toml")}:{fault}");

    [Fact]
    public void All_faults_come_in_one_pass() =>
        Assert.Equal(4, FaultsOf("folders = [\"norht\", \"east/*\"]\nseasons = 0\nmany = 1\n").Length);

    [Theory]
    [InlineData("none.toml", "there is no such file; check the name")]
    [InlineData("north", "this is a folder, not a file; name the sweep file itself")]
    public void A_file_that_is_none(string name, string fault)
    {
        Assert.Null(SweepFile.Read(In(name), out var faults));
        Assert.Equal($"{In(name)}:0:0: {fault}", Assert.Single(faults).ToString());
    }

    private SweepFile Good(string text)
    {
        var sweep = SweepFile.Read(Write("sweep.toml", text), out var faults);
        Assert.Empty(faults);
        return Assert.IsType<SweepFile>(sweep);
    }

    private string[] FaultsOf(string text)
    {
        Assert.Null(SweepFile.Read(Write("sweep.toml", text), out var faults));
        return [.. faults.Select(fault => fault.ToString())];
    }

    // The plan itself is no variant.
    private static string Joined(IEnumerable<string?> variants) => string.Join(", ", variants.Select(variant => variant ?? "-"));
}
