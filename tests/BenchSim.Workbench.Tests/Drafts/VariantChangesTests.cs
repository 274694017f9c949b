using System.Collections.Immutable;
using BenchSim.Answers.Laying;
using BenchSim.Answers.Mend;
using BenchSim.Answers.Opening;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Report.Json;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;
using BenchSim.Study;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Tests.Drafts;

/// <summary>
/// A variant taken as changes of the texts is the scenario that the reader makes of the variant: both are planned anew and played on the
/// same luck.
/// </summary>
public sealed class VariantChangesTests : IDisposable
{
    private readonly FarmFolder _folder = Example();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("[[space]]\nid = \"mats\"\nplaces = 70\n")]
    [InlineData("[[space]]\nid = \"table\"\nlength = \"96 ft\"\n")]
    [InlineData("[[house]]\nid = \"overflow\"\nopen = 2027-02-15\n")]
    [InlineData("[[house]]\nid = \"main\"\nnight = \"65 F\"\nday = \"75 F\"\n")]
    [InlineData("[rules]\ncover_gain = \"4 F\"\nslack_days = 5\n")]
    [InlineData("[relief]\norder = [\"table early\", \"aisle\"]\n")]
    [InlineData("[[plan]]\nbatch = \"tomato-main\"\nsow = 2027-04-09\nset_out = 2027-06-01\n")]
    [InlineData("[[plan]]\nbatch = \"broccoli\"\nshift_days = 7\n")]
    [InlineData("[[plan]]\nbatch = \"tomato-main\"\nplants = 825\ntrays = \"\"\nflats = \"\"\n")]
    [InlineData("[[plan]]\ncrop = \"kale\"\nfinish = [\"overflow-bench\"]\nfinish_at = 0.6\n")]
    [InlineData("[[space]]\nid = \"mats\"\nplaces = 70\n\n[[plan]]\nbatch = \"okra\"\nsow = 2027-05-03\n")]
    [InlineData("replan = true\n\n[[plan]]\nbatch = \"tomato-*\"\nplants = 400\n")]
    public void The_texts_make_the_scenario_of_the_variant(string variant) => AssertSame(_folder, variant);

    [Theory]
    [InlineData("more-mats")]
    [InlineData("longer-table")]
    [InlineData("cooler-nights")]
    [InlineData("week-later")]
    public void So_do_they_of_the_variants_of_the_example(string name) =>
        AssertSame(_folder, File.ReadAllText(_folder.In($"variants/{name}.toml")));

    [Theory]
    [InlineData("hoop-house")]
    [InlineData("two-houses")]
    [InlineData("shared-site")]
    [InlineData("container")]
    public void So_do_they_of_what_there_is_to_try_in_an_invented_farm(string id)
    {
        using var farm = new TemporaryFolder();
        foreach (var file in Starters.Find(id)!.Files(StarterClimate.All[0], UnitSystem.Metric, 2027))
        {
            farm.Write(file.Name, file.Bytes.ToArray());
        }

        AssertSame(farm, File.ReadAllText(farm.In($"variants/{Starter.Variant}.toml")));
    }

    private static void AssertSame(TemporaryFolder written, string variant)
    {
        var folder = new OpenFolder(written.Path);
        var texts = folder.ReadTexts();
        var plan = ScenarioSource.Files(folder.Files(texts), []).Open().Plan;
        var changes = new VariantChanges(texts, plan).Of(variant, out var fault);
        Assert.Null(fault);
        var taken = texts;
        foreach (var change in changes)
        {
            taken = Changing.Make(taken, change, out fault);
            Assert.Null(fault);
        }

        Assert.NotEmpty(Texts.Differing(texts, taken));

        ImmutableArray<InputFile> files = [.. folder.Files(texts), InputFile.Of("variants/it.toml", variant)];
        var read = ScenarioFolder.ReadKept(files, [], "it");
        Assert.Empty(read.Faults);
        Assert.Equal(Played(read.Scenario!), Played(ScenarioFolder.ReadKept([.. folder.Files(taken)], [], null).Scenario!));
    }

    [Theory]
    [InlineData("[[space]]\nid = \"no-such\"\nplaces = 70\n")]
    [InlineData("[[plan]]\nbatch = \"no-such\"\nsow = 2027-04-09\n")]
    [InlineData("[crops.tomato]\ngermination = 0.5\n")]
    [InlineData("[[plan]]\nbatch = \"kale\"\ndrop = true\n")]
    [InlineData("[[mishap]]\nkind = \"heater out\"\n")]
    [InlineData("remove = [\"table\"]\n\n[[space]]\nid = \"mats\"\nplaces = 70\n")]
    public void What_the_texts_do_not_have_is_refused(string variant)
    {
        var folder = new OpenFolder(_folder.Path);
        var texts = folder.ReadTexts();
        var plan = ScenarioSource.Files(folder.Files(texts), []).Open().Plan;
        Assert.Empty(new VariantChanges(texts, plan).Of(variant, out var fault));
        Assert.NotNull(fault);
    }

    // Everything told of 20 seasons, but for the files it was read from.
    private static byte[] Played(Scenario scenario)
    {
        var plan = SeasonPlanner.Make(scenario).Plan!;
        var options = new StudyOptions { Seasons = 20, Seed = 5 };
        return ResultDocument.Write(StudyRunner.Play(plan with { Warnings = [] }, options, null, CancellationToken.None), []);
    }

    private static FarmFolder Example()
    {
        var folder = new FarmFolder();
        foreach (var (name, bytes) in TemporaryFolder.Files(Repository.File("scenarios/two-house-spring")))
        {
            folder.Write(name, bytes);
        }

        return folder;
    }
}
