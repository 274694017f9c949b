using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace EndToEnd.Cluster;

/// <summary>The manifests of deploy/kubernetes, against the schema that Kubernetes publishes for a job (job.schema.json).</summary>
public sealed partial class KubernetesTests
{
    [Theory]
    [InlineData("sweep")]
    [InlineData("merge")]
    public void A_manifest_is_a_job_as_Kubernetes_has_it(string name)
    {
        var job = Read(name);

        Assert.Empty(Faults(job));
        Assert.Equal(["batch/v1", "Job"], [(string)job["apiVersion"]!, (string)job["kind"]!]);
    }

    [Fact]
    public void A_key_that_is_misspelt_or_of_another_kind_is_found_so_that_the_schema_is_not_held_in_vain()
    {
        var job = Read("sweep");
        job["spec"]!["completionmode"] = "Indexed";
        job["spec"]!["parallelism"] = "many";

        string[] places = ["sweep/spec/completionmode", "sweep/spec/parallelism"];
        var faults = Faults(job);
        Assert.All(places, place => Assert.Contains(faults, fault => fault.StartsWith(place + ":", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_place_of_the_job_plays_a_share_of_its_own_and_all_are_played()
    {
        var spec = Read("sweep")["spec"]!;
        var container = spec["template"]!["spec"]!["containers"]!.AsArray().Single()!;
        var shares = container["env"]!.AsArray().Single(each => (string)each!["name"]! == "SHARES")!["value"]!;

        Assert.Equal("Indexed", (string)spec["completionMode"]!);
        Assert.Equal((int)spec["completions"]!, int.Parse((string)shares!, CultureInfo.InvariantCulture));
        Assert.Contains(
            "--shard \"$((JOB_COMPLETION_INDEX + 1))/$SHARES\"",
            (string)container["command"]!.AsArray()[^1]!,
            StringComparison.Ordinal
        );
    }

    private static string[] Faults(JsonNode job) =>
        SchemaCheck.FaultsBy("tests/EndToEnd/Cluster/job.schema.json", "sweep", job.ToJsonString());

    private static JsonObject Read(string name)
    {
        using var text = File.OpenText(Repository.File($"deploy/kubernetes/{name}.yaml"));
        var yaml = new YamlStream();
        yaml.Load(text);
        return (JsonObject)Json(yaml.Documents.Single().RootNode)!;
    }

    // Plain scalars are what they look like, quoted ones are text: the core schema of YAML, as far as the manifests use it.
    private static JsonNode? Json(YamlNode node) =>
        node switch
        {
            YamlMappingNode map => new JsonObject(
                map.Select(pair => KeyValuePair.Create(((YamlScalarNode)pair.Key).Value!, Json(pair.Value)))
            ),
            YamlSequenceNode list => new JsonArray([.. list.Select(Json)]),
            YamlScalarNode { Style: ScalarStyle.Plain, Value: "true" or "false" } flag => flag.Value == "true",
            YamlScalarNode { Style: ScalarStyle.Plain } number when Whole().IsMatch(number.Value!) => int.Parse(
                number.Value!,
                CultureInfo.InvariantCulture
            ),
            YamlScalarNode scalar => scalar.Value,
            _ => throw new InvalidDataException($"{node} is not used in a manifest."),
        };

    [GeneratedRegex("^-?[0-9]+$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Whole();
}
