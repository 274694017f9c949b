using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Tests;

/// <summary>
/// A folder is read again from the files that a first reading brought, with the same answer, and a file of any kind is read whole or
/// refused.
/// </summary>
public class KeptFolderTests
{
    [Fact]
    public void The_answer_is_the_same_without_the_folder()
    {
        var site = TestFolder.Site(
            "kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"",
            "kind = \"record\"\nfile = \"records/weather.csv\""
        );
        using var folder = new TestFolder(site)
            .Write(
                "records/weather.csv",
                "date,tmin,tmax,rain\n"
                    + string.Concat(Enumerable.Range(0, 365).Select(day => $"{new DateOnly(2015, 1, 1).AddDays(day):yyyy-MM-dd},5,15,0\n"))
            )
            .Write("crop.csv", "id\n")
            .Write("notes.txt", "mine");
        var first = folder.Read();
        var again = ScenarioFolder.ReadKept(first.Inputs, ["crop.csv"]);

        Assert.NotNull(first.Scenario);
        Assert.Equal(["plan.csv", "records/weather.csv", "site.toml"], again.Inputs.Select(input => input.Name).ToArray());
        Assert.Equal(Text(first.Warnings), Text(again.Warnings));
        Assert.Contains(again.Warnings, warning => warning.Place.File == "crop.csv");
        Assert.Empty(again.Faults);
        Assert.Equal(first.Scenario.Batches.ToArray(), again.Scenario!.Batches.ToArray());
        Assert.Equal(first.Scenario.Rules.ToString(), again.Scenario.Rules.ToString());
    }

    [Fact]
    public void Faults_are_the_same_too()
    {
        using var folder = new TestFolder(TestFolder.Site("places = 10", "places = -10"), "id,crop,plants,sow\na,tomat,100,2027-03-01\n");
        var first = folder.Read();
        Assert.NotEmpty(first.Faults);
        Assert.Equal(Text(first.Faults), Text(ScenarioFolder.ReadKept(first.Inputs, []).Faults));
    }

    [Fact]
    public void A_file_that_was_not_kept_is_a_fault()
    {
        using var folder = new TestFolder();
        var fault = Assert.Single(ScenarioFolder.ReadKept(folder.Read().Inputs.Where(input => input.Name != "plan.csv"), []).Faults);
        Assert.StartsWith("plan.csv:0:0: there is no file \"plan.csv\" in the folder", fault.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Texts_that_are_not_written_are_read_as_a_folder_of_them_would_be()
    {
        InputFile[] files =
        [
            InputFile.Of("site.toml", TestFolder.GoodSite),
            InputFile.Of("plan.csv", TestFolder.GoodPlan),
            InputFile.Of("variants/more.toml", "[[space]]\nid = \"mats\"\nplaces = 14\n"),
            InputFile.Of("variants/bad.toml", "[[space]]\nid = \"mats\"\nplaces = -1\n"),
        ];
        var plain = ScenarioFolder.ReadKept(files);
        Assert.Equal(10, plain.Scenario!.Spaces[0].Places);
        Assert.Equal(["plan.csv", "site.toml"], plain.Inputs.Select(input => input.Name).ToArray());
        Assert.Equal(14, ScenarioFolder.ReadKept(files, variant: "more").Scenario!.Spaces[0].Places);
        Assert.StartsWith(
            "variants/bad.toml:3:10: places is -1",
            Assert.Single(ScenarioFolder.ReadKept(files, variant: "bad").Faults).ToString(),
            StringComparison.Ordinal
        );
        Assert.Equal(
            "variants:0:0: there is no variant \"mor\"; did you mean \"more\"",
            Assert.Single(ScenarioFolder.ReadKept(files, variant: "mor").Faults).ToString()
        );
    }

    [Fact]
    public void A_plain_file_is_read_whole_or_refused()
    {
        using var folder = new TestFolder();
        var path = Path.Combine(folder.Path, "site.toml");
        Assert.Equal(File.ReadAllBytes(path), PlainFile.Read(path, 10_000, out var fault));
        Assert.Null(fault);
        Assert.Null(PlainFile.Read(path, 100, out fault));
        Assert.Equal($"{path}:0:0: the file is too large and was not read; check that it is the right file", fault!.ToString());
        Assert.Null(PlainFile.Read(folder.Path, 100, out fault));
        Assert.Contains("this is a folder", fault!.ToString(), StringComparison.Ordinal);
        Assert.Null(PlainFile.Read(path + "x", 100, out fault));
        Assert.Contains("there is no such file", fault!.ToString(), StringComparison.Ordinal);
    }

    private static string Text(IEnumerable<Fault> faults) => string.Join('\n', faults.Select(fault => fault.ToString()));
}
