using System.IO.Compression;
using System.Text.Json.Nodes;

namespace BenchSim.Report.Tests.Json;

/// <summary>
/// Version 2 of result.json says of both examples what version 1 said: the former documents, kept beside this test, put into the new shape are those of
/// the committed reports. When an answer is changed on purpose, this test goes.
/// </summary>
public sealed class FormerResultTests
{
    [Theory]
    [InlineData("by-hand")]
    [InlineData("two-house-spring")]
    public void Former_results_in_the_new_shape_are_the_new_results(string example)
    {
        using var file = File.OpenRead(Repository.File($"tests/BenchSim.Report.Tests/Json/former/{example}.json.gz"));
        using var former = new GZipStream(file, CompressionMode.Decompress);
        var mapped = Mapped(JsonNode.Parse(former))!;
        Assert.Equal(1, mapped["version"]!.GetValue<int>());
        mapped["version"] = 2;

        var now = JsonNode.Parse(File.ReadAllText(Repository.File($"reports/{example}/result.json")));
        Assert.True(JsonNode.DeepEquals(mapped, now), "The values are not those of before.");
    }

    // A chance has its interval in one piece, and "fits" is a chance wherever it stands. All else is as it was.
    private static JsonNode? Mapped(JsonNode? node) =>
        node switch
        {
            JsonArray list => new JsonArray([.. list.Select(Mapped)]),
            JsonObject each
                when each.Select(pair => pair.Key).SequenceEqual(["hits", "seasons", "share", "low", "high"], StringComparer.Ordinal) =>
                new JsonObject
                {
                    ["hits"] = each["hits"]!.DeepClone(),
                    ["seasons"] = each["seasons"]!.DeepClone(),
                    ["share"] = each["share"]!.DeepClone(),
                    ["interval"] = new JsonObject { ["low"] = each["low"]!.DeepClone(), ["high"] = each["high"]!.DeepClone() },
                },
            JsonObject each => new JsonObject(each.Select(pair => KeyValuePair.Create(NameOf(pair), Mapped(pair.Value)))),
            _ => node?.DeepClone(),
        };

    private static string NameOf(KeyValuePair<string, JsonNode?> pair) =>
        pair is { Key: "fits", Value: null or JsonValue } ? "fits_reliably" : pair.Key;
}
