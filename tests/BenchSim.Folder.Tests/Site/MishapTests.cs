using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests.Site;

/// <summary>The keys of [[mishap]], written before [weather], which is on line 24 of the good site.</summary>
public class MishapTests
{
    private const string Mice = "[[mishap]]\nid = \"mice\"\nchance = \"20 %\"\nfrom = 2027-03-10\nto = 2027-03-20\nloss = 0.1\n";

    [Fact]
    public void A_mishap_is_read_and_may_be_kept_to_a_house_a_space_and_a_crop()
    {
        var mishaps = Read(
            Mice
                + "[[mishap]]\nid = \"cold\"\nname = \"No heat\"\nchance = 1\nfrom = 2027-02-01\nto = 2027-02-01\n"
                + "loss = 1\nhouse = \"main\"\nspace = \"bench\"\ncrop = \"tomato\"\n"
        );
        Assert.Equal(
            new Mishap
            {
                Id = "mice",
                Name = "mice",
                Chance = 0.2,
                From = new DateOnly(2027, 3, 10),
                To = new DateOnly(2027, 3, 20),
                Loss = 0.1,
            },
            mishaps[0]
        );
        Assert.Equal(("No heat", 1, 1), (mishaps[1].Name, mishaps[1].Chance, mishaps[1].Loss));
        Assert.Equal(("main", "bench", "tomato"), (mishaps[1].HouseId, mishaps[1].SpaceId, mishaps[1].CropId));
    }

    [Fact]
    public void Every_bad_value_is_a_fault_with_its_place()
    {
        var faults = TestFolder.Faults(
            Site(
                "[[mishap]]\nid = \"a\"\nchance = 0\nfrom = 2027-01-01\nto = 2027-07-20\nhouse = \"mian\"\nspace = \"tabel\"\n"
                    + "crop = \"tomatto\"\nloss = \"130 %\"\n[[mishap]]\nid = \"a\"\nchance = 1\nfrom = 2027-03-02\n"
                    + "to = 2027-03-01\nloss = 1\n"
                    + "[[mishap]]\nid = \"b\"\n"
            )
        );
        string[] expected =
        [
            "site.toml:26:10: chance is \"0\"; write a share above 0 % to 100 %",
            "site.toml:27:8: from is 2027-01-01, outside the season; the season runs from 2027-01-18 to 2027-06-30",
            "site.toml:28:6: to is 2027-07-20, outside the season; the season runs from 2027-01-18 to 2027-06-30",
            "site.toml:29:9: there is no house \"mian\"; did you mean \"main\"",
            "site.toml:30:9: there is no space \"tabel\"; did you mean \"table\"",
            "site.toml:31:8: there is no crop \"tomatto\"; did you mean \"tomato\"",
            "site.toml:34:6: id \"a\" is taken already, on line 25; give every mishap an id of its own",
            "site.toml:37:6: to is 2027-03-01, before from; write 2027-03-02 or a later date",
        ];
        Assert.All(expected, fault => Assert.Contains(fault, faults, StringComparer.Ordinal));
        Assert.Contains(faults, fault => fault.StartsWith("site.toml:32:8: loss is \"130 %\"; ", StringComparison.Ordinal));
        Assert.All(new[] { "chance", "from", "to", "loss" }, key =>
            Assert.Contains(faults, fault =>
                fault.StartsWith("site.toml:39:", StringComparison.Ordinal) && fault.Contains(key, StringComparison.Ordinal)
            )
        );
    }

    [Fact]
    public void A_variant_changes_one_and_adds_another()
    {
        using var folder = new TestFolder(Site(Mice));
        folder.Write(
            "variants/v.toml",
            "[[mishap]]\nid = \"mice\"\nchance = \"5 %\"\n" + Mice.Replace("\"mice\"", "\"more mice\"", StringComparison.Ordinal)
        );
        var variant = ScenarioFolder.ReadVariant(folder.Path, "v");
        Assert.Empty(variant.Faults);
        Assert.Equal([0.05, 0.2], variant.Scenario!.Mishaps.Select(mishap => mishap.Chance));
    }

    private static IReadOnlyList<Mishap> Read(string mishaps)
    {
        using var folder = new TestFolder(Site(mishaps));
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        return reading.Scenario!.Mishaps;
    }

    private static string Site(string mishaps) => TestFolder.Site("[weather]", mishaps + "[weather]");
}
