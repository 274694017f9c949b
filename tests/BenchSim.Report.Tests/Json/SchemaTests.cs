using System.Text.Json;
using System.Text.RegularExpressions;
using BenchSim.Report.Json;
using BenchSim.Report.Tables;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Json;

/// <summary>docs/schemas has every property of result.json, and docs/report.md every column of the tables: all that there are, and no other.</summary>
public partial class SchemaTests
{
    private static readonly string s_document = File.ReadAllText(Repository.File("docs/report.md"));

    [Fact]
    public void The_schema_is_that_of_the_records()
    {
        var schema = SchemaText.Of("result.json in a report folder", ResultContext.Dialect.ResultDocument);

        Assert.Equal(Approved.Text("docs/schemas/result.schema.json", schema), schema);
    }

    [Fact]
    public void Figures_arrive_as_they_were_given()
    {
        var result = SyntheticStudy.Tiny();
        using var json = JsonDocument.Parse(
            ResultDocument.Write(result with { Seed = ulong.MaxValue, Fits = new Chance(1, 3, 0.06149, 0.79234) }, [])
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
        using var json = JsonDocument.Parse(ResultDocument.Write(SyntheticStudy.Tiny(seasons: 1), []));

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
        var bytes = ResultDocument.Write(result with { Growers = [result.Growers[0] with { Grower = name }] }, []);

        using var json = JsonDocument.Parse(bytes);
        Assert.Equal(name, json.RootElement.GetProperty("growers")[0].GetProperty("grower").GetString());
        Assert.DoesNotContain((byte)'<', bytes);
    }

    [Fact]
    public void Half_of_a_surrogate_pair_becomes_the_replacement_character()
    {
        var result = SyntheticStudy.Tiny();
        var bytes = ResultDocument.Write(result with { Growers = [result.Growers[0] with { Grower = "a\uD83Db" }] }, []);

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
