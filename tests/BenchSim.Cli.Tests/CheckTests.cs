using System.Text.Json;
using BenchSim.Folder.Reference;

namespace BenchSim.Cli.Tests;

/// <summary>"check" reports every fault with its place, or prints the plan it understood.</summary>
public sealed class CheckTests
{
    [Fact]
    public void Prints_the_plan_the_spaces_the_rules_and_the_weak_values()
    {
        using var folder = new TemporaryFolder();
        var check = Call.Run("check", folder.Starter(), "--all");
        Assert.Equal(0, check.Code);
        Assert.Empty(check.Error);
        var tomatoes = Assert.Single(check.Output.Split('\n'), line => line.StartsWith("  tomatoes ", StringComparison.Ordinal));
        Assert.Contains("Tunnel crew", tomatoes, StringComparison.Ordinal);
        Assert.Contains("2027-05-18", tomatoes, StringComparison.Ordinal);
        foreach (
            var text in new[]
            {
                "Spaces",
                "how worked out",
                "Rules in force",
                "rules.service_goal",
                "95 %",
                "from memory: ",
                "assumption: ",
            }
        )
        {
            Assert.Contains(text, check.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Names_every_rule_that_site_toml_knows_and_says_all_of_what_it_means()
    {
        using var folder = new TemporaryFolder();
        var output = Call.Run("check", folder.Starter(), "--all").Output;

        foreach (
            var key in FolderReference
                .Site.SelectMany(table => table.Fields)
                .Where(key => key.Section is "rules" or "work_minutes" or "work_seconds" or "relief" or "seed" or "prices")
        )
        {
            string line = Assert.Single(output.Split('\n'), line =>
                line.TrimStart().StartsWith($"{key.Section}.{key.Name} ", StringComparison.Ordinal)
            );
            Assert.EndsWith(key.Help, line.TrimEnd(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Sources_prints_every_value_with_its_source()
    {
        using var folder = new TemporaryFolder();
        var check = Call.Run("check", folder.Starter(), "--sources");
        Assert.Contains("seen in the source", check.Output, StringComparison.Ordinal);
        Assert.Contains("emerge_heat", check.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_come_sorted_with_their_number_at_the_end()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        File.AppendAllText(Path.Combine(spring, "plan.csv"), "z,kael,me,-3,2027-03-01,,,,,,,,,,,,,,\n");
        File.WriteAllText(
            Path.Combine(spring, "site.toml"),
            File.ReadAllText(Path.Combine(spring, "site.toml")).Replace("places = 40", "places = -40", StringComparison.Ordinal)
        );
        var check = Call.Run("check", spring);
        Assert.Equal(2, check.Code);
        Assert.Empty(check.Output);
        var lines = check.Error.TrimEnd('\n').Split('\n');
        Assert.StartsWith("plan.csv:8:3: ", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("plan.csv:8:11: ", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("site.toml:", lines[2], StringComparison.Ordinal);
        Assert.Equal("3 faults found. Mend them and try again.", lines[3]);
        Assert.All(lines[..3], line => Assert.Contains("; ", line, StringComparison.Ordinal));
    }

    [Fact]
    public void Machines_get_the_faults_with_their_places()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        File.AppendAllText(Path.Combine(spring, "plan.csv"), "z,kael,me,30,2027-03-01,,,,,,,,,,,,,,\n");
        var check = Call.Run("check", spring, "--json");
        Assert.Equal(2, check.Code);
        using var json = JsonDocument.Parse(check.Output);
        var fault = Assert.Single(json.RootElement.GetProperty("faults").EnumerateArray());
        Assert.Equal("plan.csv", fault.GetProperty("file").GetString());
        Assert.Equal(8, fault.GetProperty("line").GetInt32());
        Assert.Equal(3, fault.GetProperty("column").GetInt32());
    }

    [Fact]
    public void Machines_get_the_plan()
    {
        using var folder = new TemporaryFolder();
        using var json = JsonDocument.Parse(Call.Run("check", folder.Starter(), "--json").Output);
        var batch = json
            .RootElement.GetProperty("batches")
            .EnumerateArray()
            .First(each => string.Equals(each.GetProperty("id").GetString(), "basil", StringComparison.Ordinal));

        // plan.csv of the starter folder: 4 trays of 72 cells, 4 seeds a cell.
        Assert.Equal(4, batch.GetProperty("trays").GetInt32());
        Assert.Equal(4 * 72 * 4, batch.GetProperty("seeds").GetInt32());
        Assert.Equal("2027-06-01", batch.GetProperty("set_out").GetString());
    }

    [Theory]
    [InlineData("", "Watering, covering against cold nights, thinning and washing trays are not counted as work.")]
    [InlineData("water = 20\n[work_seconds]\nthin_cell = 2\n", "Covering against cold nights and washing trays are not counted as work.")]
    [InlineData("[work_seconds]\nthin_cell = 2\n", "Watering, covering against cold nights and washing trays are not counted as work.")]
    public void Says_which_work_is_not_counted(string keys, string sentence)
    {
        using var folder = new FarmFolder(FarmFolder.GoodSite + "\n[work_minutes]\n" + keys);
        Assert.Contains(sentence, Call.Run("check", folder.Path, "--all").Sentences, StringComparison.Ordinal);
    }

    [Fact]
    public void Machines_get_the_mishaps()
    {
        using var folder = new FarmFolder(
            FarmFolder.GoodSite
                + """

                [[mishap]]
                id = "mice"
                name = "Mice"
                chance = "20 %"
                from = 2027-03-01
                to = 2027-04-15
                space = "bench"
                loss = "5 %"
                """
        );
        using var json = JsonDocument.Parse(Call.Run("check", folder.Path, "--json").Output);
        var mishap = Assert.Single(json.RootElement.GetProperty("mishaps").EnumerateArray());
        Assert.Equal(
            "mice Mice 0.2 2027-03-01 2027-04-15  bench  0.05",
            string.Join(
                ' ',
                new[] { "id", "name", "chance", "from", "to", "house", "space", "crop", "loss" }.Select(key => $"{mishap.GetProperty(key)}")
            )
        );
    }

    // Every night of the record has 9 C, and tomato goes to the table from 10 C on: 14 days of 14. The JSON says it too.
    [Fact]
    public void Warns_of_a_batch_that_the_weather_holds_on_most_days_from_its_date()
    {
        var site = FarmFolder.GoodSite[..FarmFolder.GoodSite.IndexOf("kind = \"constant\"", StringComparison.Ordinal)];
        using var folder = new FarmFolder(site + "kind = \"record\"\nfile = \"days.csv\"\n");
        var first = new DateOnly(2027, 1, 1);
        folder.Write(
            "days.csv",
            "date,tmin,tmax,rain\n"
                + string.Concat(Enumerable.Range(0, 365).Select(day => $"{first.AddDays(day):yyyy-MM-dd},9,20,{(day % 7 == 0 ? 20 : 0)}\n"))
        );
        using var json = JsonDocument.Parse(Call.Run("check", folder.Path, "--json").Output);
        var table = json.RootElement.GetProperty("batches")[0].GetProperty("table").GetString();
        var what =
            $"batch \"a\": on about 14 of the 14 days from {table}, its date for the hardening table, "
            + "one of the next 3 nights there is colder than 10 C";
        Assert.Contains(json.RootElement.GetProperty("warnings").EnumerateArray(), each =>
            string.Equals(each.GetProperty("what").GetString(), what, StringComparison.Ordinal)
        );
        Assert.Contains(
            what.Replace(" ", "", StringComparison.Ordinal),
            string.Concat(Call.Run("check", folder.Path, "--all").Output.Where(letter => !char.IsWhiteSpace(letter))),
            StringComparison.Ordinal
        );
    }

    // Every night has 9 C, which the table bears and the field (12 C), even under a cover of 1.3 K, does not; and 40 mm of rain a day,
    // which does not get into a tunnel.
    [Theory]
    [InlineData("low tunnel", "is colder than 12 C under its low tunnel, or the field is too wet")]
    [InlineData("tunnel", "is colder than 12 C under its tunnel")]
    public void Warns_of_a_wet_field_where_rain_gets_in(string cover, string end)
    {
        var site = FarmFolder.GoodSite[..FarmFolder.GoodSite.IndexOf("kind = \"constant\"", StringComparison.Ordinal)];
        using var folder = new FarmFolder(
            site + "kind = \"record\"\nfile = \"days.csv\"\n",
            $"id,crop,plants,sow,field_cover\na,tomato,100,2027-03-01,{cover}\n"
        );
        var first = new DateOnly(2027, 1, 1);
        folder.Write(
            "days.csv",
            "date,tmin,tmax,rain\n" + string.Concat(Enumerable.Range(0, 365).Select(day => $"{first.AddDays(day):yyyy-MM-dd},9,20,40\n"))
        );
        folder.Write("crops.csv", "id,table_above,damage_below,field_above\ntomato,4 C,2 C,12 C\n");
        using var json = JsonDocument.Parse(Call.Run("check", folder.Path, "--json").Output);
        Assert.Contains(json.RootElement.GetProperty("warnings").EnumerateArray(), each =>
            each.GetProperty("what").GetString()!.EndsWith(end, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_file_in_place_of_the_folder_is_a_fault_like_any_other()
    {
        using var folder = new TemporaryFolder();
        var check = Call.Run("check", Path.Combine(folder.Starter(), "plan.csv"));
        Assert.Equal(2, check.Code);
        Assert.Contains(":0:0: this is a file, not a folder; ", check.Error, StringComparison.Ordinal);
    }
}
