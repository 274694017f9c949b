using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using System.Xml.Linq;

namespace Support;

/// <summary>
/// The JSON schema (draft 2020-12) of documents, from the records they are written from: types from System.Text.Json, meanings from the XML
/// docs.
/// </summary>
public sealed class SchemaText
{
    private static readonly JsonSerializerOptions s_layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private readonly SortedDictionary<string, JsonNode> _definitions = new(StringComparer.Ordinal);
    private readonly Queue<JsonTypeInfo> _waiting = new();
    private readonly Dictionary<string, XDocument> _meanings = new(StringComparer.Ordinal);

    /// <summary>The schema of a document that has one of several shapes.</summary>
    /// <param name="title">What the document is.</param>
    /// <param name="shapes">Its shapes.</param>
    public static string Of(string title, params JsonTypeInfo[] shapes)
    {
        var schema = new SchemaText();
        JsonNode[] references = [.. shapes.Select(schema.Reference)];
        schema.DefineAll();
        var root = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = title };
        if (references.Length == 1)
        {
            root["$ref"] = references[0]["$ref"]!.DeepClone();
        }
        else
        {
            root["anyOf"] = new JsonArray(references);
        }

        root["$defs"] = new JsonObject(schema._definitions.Select(pair => KeyValuePair.Create(pair.Key, (JsonNode?)pair.Value)));
        return root.ToJsonString(s_layout) + "\n";
    }

    private JsonObject Reference(JsonTypeInfo type)
    {
        _waiting.Enqueue(type);
        return new JsonObject { ["$ref"] = "#/$defs/" + NameOf(type.Type) };
    }

    private void DefineAll()
    {
        while (_waiting.TryDequeue(out var type))
        {
            if (!_definitions.ContainsKey(NameOf(type.Type)))
            {
                var options = new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true, TransformSchemaNode = Shape };
                _definitions[NameOf(type.Type)] = JsonSchemaExporter.GetJsonSchemaAsNode(type, options);
            }
        }
    }

    private JsonNode Shape(JsonSchemaExporterContext context, JsonNode node)
    {
        var type = context.TypeInfo;
        if (context.Path.Length == 0)
        {
            // Every property is written, whether there is a value for it or not.
            node["type"] = "object";
            node["required"] = new JsonArray([.. type.Properties.Select(property => JsonValue.Create(property.Name))]);
            return Described(node, Meaning(type.Type, null));
        }

        var isNullable = context.PropertyInfo is { IsGetNullable: true } || Nullable.GetUnderlyingType(type.Type) is not null;
        var shape = type.Kind == JsonTypeInfoKind.Object ? Reference(type) : Plain(type.Type) ?? node;
        if (isNullable && shape is JsonObject && shape["$ref"] is not null)
        {
            shape = new JsonObject { ["anyOf"] = new JsonArray(shape, new JsonObject { ["type"] = "null" }) };
        }
        else if (isNullable && shape["type"] is JsonValue one)
        {
            shape["type"] = new JsonArray(one.DeepClone(), "null");
        }

        return context.PropertyInfo is { } property && context.Path[^2] == "properties"
            ? Described(shape, Meaning(property.DeclaringType, property.Name))
            : shape;
    }

    // What the converters of the dialect write, of which the exporter knows nothing; a document within a document is of the same schema.
    private static JsonObject? Plain(Type type)
    {
        var plain = Nullable.GetUnderlyingType(type) ?? type;
        return plain == typeof(string) ? new JsonObject { ["type"] = "string" }
            : plain == typeof(double) ? new JsonObject { ["type"] = "number" }
            : plain == typeof(JsonElement) ? new JsonObject { ["$ref"] = "#" }
            : plain == typeof(ImmutableArray<int>) ? ListOf("integer")
            : plain == typeof(ImmutableArray<double>) ? ListOf("number")
            : null;
    }

    private static JsonObject ListOf(string type) =>
        new()
        {
            ["type"] = "array",
            ["items"] = new JsonObject { ["type"] = type },
        };

    private static JsonNode Described(JsonNode node, string meaning)
    {
        node["description"] = meaning;
        return node;
    }

    private static string NameOf(Type type) =>
        JsonNamingPolicy.SnakeCaseLower.ConvertName(type.Name.StartsWith("Json", StringComparison.Ordinal) ? type.Name[4..] : type.Name);

    private string Meaning(Type type, string? property)
    {
        var assembly = type.Assembly.GetName().Name!;
        if (!_meanings.TryGetValue(assembly, out var document))
        {
            _meanings[assembly] = document = XDocument.Load(Path.Combine(AppContext.BaseDirectory, assembly + ".xml"));
        }

        var members = document.Descendants("member").First(member => (string?)member.Attribute("name") == "T:" + type.FullName);
        var meaning = property is null
            ? members.Element("summary")
            : members.Elements("param").FirstOrDefault(each => Written((string)each.Attribute("name")!) == property);
        return meaning is null
            ? throw new InvalidOperationException($"{type.Name} does not say what its {property ?? "summary"} means.")
            : string.Join(' ', meaning.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private static string Written(string name) => JsonNamingPolicy.SnakeCaseLower.ConvertName(name);
}
