using System.Collections.Concurrent;
using System.Text.Json;
using Json.Schema;

namespace Support;

/// <summary>Holds JSON against schemas, as a rule those of docs/schemas.</summary>
public static class SchemaCheck
{
    private static readonly ConcurrentDictionary<string, Lazy<JsonSchema>> s_schemas = new(StringComparer.Ordinal);

    private static readonly EvaluationOptions s_options = new() { OutputFormat = OutputFormat.List, RequireFormatValidation = true };

    /// <summary>What is wrong with a document, a line each; none where it is as its schema says.</summary>
    /// <param name="name">Name of the schema: that of a command, or "result".</param>
    /// <param name="json">The document.</param>
    public static string[] Faults(string name, string json) => FaultsBy($"docs/schemas/{name}.schema.json", name, json);

    /// <summary>The same, by a schema that stands elsewhere.</summary>
    /// <param name="file">Its file, from the root of the repository.</param>
    /// <param name="name">What to call the document.</param>
    /// <param name="json">The document.</param>
    public static string[] FaultsBy(string file, string name, string json)
    {
        using var document = JsonDocument.Parse(json);
        var schema = s_schemas.GetOrAdd(file, Read).Value;
        var results = schema.Evaluate(document.RootElement, s_options);
        return results.IsValid
            ? []
            :
            [
                .. (results.Details ?? []).SelectMany(detail =>
                    detail.Errors?.Values.Select(error => $"{name}{detail.InstanceLocation}: {error}") ?? []
                ),
            ];
    }

    private static Lazy<JsonSchema> Read(string file) => new(() => JsonSchema.FromText(File.ReadAllText(Repository.File(file))));
}
