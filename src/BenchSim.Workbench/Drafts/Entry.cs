using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace BenchSim.Workbench.Drafts;

/// <summary>What an entry of the journal does.</summary>
internal enum Deed
{
    /// <summary>Begins a try, from the files or with the texts of another.</summary>
    Begin,

    /// <summary>Changes texts.</summary>
    Step,

    /// <summary>Takes the last step back.</summary>
    Undo,

    /// <summary>Makes it again.</summary>
    Redo,

    /// <summary>Gives a try another name.</summary>
    Name,

    /// <summary>Lets a try go.</summary>
    Drop,

    /// <summary>Looks at a try, or with 0 at the files.</summary>
    Look,

    /// <summary>Takes other texts of the files for those that a try is a change of.</summary>
    From,
}

/// <summary>One line of the journal: all that happens to tries is one of these, so that playing them again gives the tries again.</summary>
/// <param name="Do">What it does.</param>
/// <param name="Try">Number of the try.</param>
internal sealed record Entry(Deed Do, int Try)
{
    /// <summary>Name of the try, or what a step changes.</summary>
    public string? Say { get; init; }

    /// <summary>The parts of texts that a step changes.</summary>
    public ImmutableArray<Splice>? Splices { get; init; }

    /// <summary>Texts of the files.</summary>
    public ImmutableSortedDictionary<string, string>? Files { get; init; }

    /// <summary>Texts that a try begins with, where they are others.</summary>
    public ImmutableSortedDictionary<string, string>? Now { get; init; }
}

/// <summary>The journal as JSON.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UseStringEnumConverter = true
)]
[JsonSerializable(typeof(Entry))]
internal sealed partial class EntryContext : JsonSerializerContext
{
    /// <summary>An entry on one line.</summary>
    public static byte[] Line(Entry entry) => [.. JsonSerializer.SerializeToUtf8Bytes(entry, Default.Entry), (byte)'\n'];

    /// <summary>The entry of a line; null for one that was not written to its end.</summary>
    public static Entry? Read(ReadOnlySpan<byte> line)
    {
        try
        {
            return JsonSerializer.Deserialize(line, Default.Entry);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
