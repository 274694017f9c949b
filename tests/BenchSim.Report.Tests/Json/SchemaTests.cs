using System.Text.Json;
using BenchSim.Report.Json;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Json;

/// <summary>
/// docs/schemas has every property of result.json, and no other.
/// </summary>
public class SchemaTests
{
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
}
