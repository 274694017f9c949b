using System.Collections.Immutable;
using System.Text;

namespace BenchSim.Folder.Files;

/// <summary>A file of a scenario folder.</summary>
/// <param name="Name">Name relative to the folder, with forward slashes.</param>
/// <param name="Bytes">Its bytes, as read.</param>
public sealed record InputFile(string Name, ImmutableArray<byte> Bytes)
{
    /// <summary>A file of a text, in UTF-8.</summary>
    /// <param name="name">Name relative to the folder, with forward slashes.</param>
    /// <param name="text">The text; a byte order mark is written where the text begins with one.</param>
    public static InputFile Of(string name, string text) => new(name, [.. Encoding.UTF8.GetBytes(text)]);
}
