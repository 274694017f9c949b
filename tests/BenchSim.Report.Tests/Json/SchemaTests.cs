using System.Text.Json;
using System.Text.RegularExpressions;
using BenchSim.Report.Json;
using BenchSim.Report.Tables;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Json;

/// <summary>docs/report.md describes every property and column there is, and none that there is not.</summary>
public partial class SchemaTests
{
    private static readonly string s_document = File.ReadAllText(Repository.File("docs/report.md"));

    [Fact]
    public void Every_property_is_documented_and_every_documented_one_exists()
    {
        using var json = JsonDocument.Parse(ResultJson.Write(WithEverything(), [new ReportInput("site.toml", new byte[] { 1 })]));
        var found = new SortedSet<string>(StringComparer.Ordinal);
        Walk(json.RootElement, "", found);

        Assert.Equal(Documented(), found);
    }

    [Fact]
    public void The_version_is_one()
    {
        using var json = JsonDocument.Parse(ResultJson.Write(SyntheticStudy.Tiny(), []));

        Assert.Equal(1, json.RootElement.GetProperty("version").GetInt32());
    }

    [Fact]
    public void Figures_arrive_as_they_were_given()
    {
        var result = SyntheticStudy.Tiny();
        using var json = JsonDocument.Parse(
            ResultJson.Write(result with { Seed = ulong.MaxValue, Fits = new Chance(1, 3, 0.06149, 0.79234) }, [])
        );
        var root = json.RootElement;

        Assert.Equal("18446744073709551615", root.GetProperty("seed").GetString());
        Assert.Equal(0.333333, root.GetProperty("fits").GetProperty("share").GetDouble());
        Assert.Equal(
            result.Spaces[0].Held.Select(day => day.P90),
            root.GetProperty("spaces")[0].GetProperty("held").GetProperty("p90").EnumerateArray().Select(x => x.GetInt32())
        );
        Assert.Equal("2027-02-01", root.GetProperty("scenario").GetProperty("first_day").GetString());
    }

    [Fact]
    public void A_half_width_that_is_none_is_null()
    {
        using var json = JsonDocument.Parse(ResultJson.Write(SyntheticStudy.Tiny(seasons: 1), []));

        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("plants_late").GetProperty("half_width").ValueKind);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\",\"version\":2,\"x\":\"")]
    [InlineData("two\r\nlines\0")]
    [InlineData("🍅 עגבנייה")]
    public void Hostile_names_come_back_as_they_were(string name)
    {
        var result = SyntheticStudy.Tiny();
        var bytes = ResultJson.Write(result with { Growers = [result.Growers[0] with { Grower = name }] }, []);

        using var json = JsonDocument.Parse(bytes);
        Assert.Equal(name, json.RootElement.GetProperty("growers")[0].GetProperty("grower").GetString());
        Assert.DoesNotContain((byte)'<', bytes);
    }

    [Fact]
    public void Half_of_a_surrogate_pair_becomes_the_replacement_character()
    {
        var result = SyntheticStudy.Tiny();
        var bytes = ResultJson.Write(result with { Growers = [result.Growers[0] with { Grower = "a\uD83Db" }] }, []);

        using var json = JsonDocument.Parse(bytes);
        Assert.Equal("a\uFFFDb", json.RootElement.GetProperty("growers")[0].GetProperty("grower").GetString());
    }

    [Theory]
    [InlineData("tables/daily.csv")]
    [InlineData("tables/spaces.csv")]
    [InlineData("tables/batches.csv")]
    [InlineData("tables/growers.csv")]
    [InlineData("tables/fuel.csv")]
    [InlineData("tables/waits.csv")]
    [InlineData("tables/bottlenecks.csv")]
    public void Every_column_is_documented_in_its_order(string file)
    {
        var result = SyntheticStudy.Tiny();
        var table = file switch
        {
            "tables/daily.csv" => TableFiles.Daily(result),
            "tables/spaces.csv" => TableFiles.Spaces(result),
            "tables/batches.csv" => BatchTable.Write(result),
            "tables/fuel.csv" => FuelTable.Write(result),
            "tables/waits.csv" => WaitTable.Write(result),
            "tables/bottlenecks.csv" => BottleneckTable.Write(SyntheticRoom.Bottlenecks(result.Plan)),
            _ => TableFiles.Growers(result),
        };
        var header = System.Text.Encoding.UTF8.GetString(table)[1..].Split("\r\n")[0];

        var section = Section("### " + file);
        string[] documented = [.. Row().Matches(section).SelectMany(match => Expand(match.Groups["name"].Value, result.Spaces.Length))];
        Assert.Equal(documented, header.Split(','));
    }

    private static StudyResult WithEverything()
    {
        var result = SyntheticStudy.Tiny();
        var scenario = result.Plan.Scenario with { Rules = result.Plan.Scenario.Rules with { Reliefs = [Relief.Aisle] } };
        return result with
        {
            Plan = result.Plan with { Scenario = scenario },
            ReliefUses = [Figures.Estimate(1, 2)],
            Waits = SyntheticRoom.Waits(result.Plan),
            Bottlenecks = SyntheticRoom.Bottlenecks(result.Plan),
        };
    }

    private static void Walk(JsonElement element, string path, SortedSet<string> found)
    {
        if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (var property in element.EnumerateObject())
            {
                var name = path.Length == 0 ? property.Name : $"{path}.{property.Name}";
                found.Add(name);
                Walk(property.Value, name, found);
            }
        }
        else if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var item in element.EnumerateArray())
            {
                Walk(item, path + "[]", found);
            }
        }
    }

    private static SortedSet<string> Documented()
    {
        var paths = new SortedSet<string>(StringComparer.Ordinal);
        foreach (Match match in Row().Matches(Section("## result.json")))
        {
            var path = match.Groups["name"].Value;
            paths.Add(path);
            var shape = match.Groups["shape"].Value;
            var list = shape.StartsWith("list of ", StringComparison.Ordinal);
            var heading = "### Shape: " + (list ? shape["list of ".Length..] : shape);
            if (!s_document.Contains(heading + "\n", StringComparison.Ordinal))
            {
                continue;
            }

            foreach (Match part in Row().Matches(Section(heading)))
            {
                paths.Add($"{path}{(list ? "[]" : "")}.{part.Groups["name"].Value}");
            }
        }

        return paths;
    }

    private static string Section(string heading)
    {
        var from = s_document.IndexOf(heading + "\n", StringComparison.Ordinal);
        Assert.True(from >= 0, $"docs/report.md has no section '{heading}'.");
        var to = s_document.IndexOf("\n#", from + heading.Length, StringComparison.Ordinal);
        return to < 0 ? s_document[from..] : s_document[from..to];
    }

    private static IEnumerable<string> Expand(string name, int spaces)
    {
        if (name.EndsWith('#'))
        {
            return Enumerable.Range(1, spaces).Select(space => name[..^1] + space);
        }

        var brace = name.IndexOf('{', StringComparison.Ordinal);
        return brace < 0 ? [name] : name[(brace + 1)..^1].Split(',').Select(ending => name[..brace] + ending);
    }

    [GeneratedRegex(@"^\| `(?<name>[^`]+)` \| (?<shape>[^|]*?) \|", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Row();
}
