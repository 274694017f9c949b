using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Phones;

/// <summary>A phone that was paired.</summary>
/// <param name="Id">By which the owner takes it away.</param>
/// <param name="Name">What its user calls it.</param>
/// <param name="Mark">SHA-256 of the secret that it holds, in hexadecimal: the file lets nobody in.</param>
/// <param name="On">The day on which it was paired.</param>
internal sealed record PairedPhone(string Id, string Name, string Mark, DateOnly On);

/// <summary>The phones of a folder, and the port at which they know its workbench.</summary>
internal sealed record PhoneBook(int Port, ImmutableArray<PairedPhone> Phones)
{
    private const string File = Journal.Folder + "/phones.json";
    private const int MostPort = 65_535;

    /// <summary>No phones, and no port yet.</summary>
    public static PhoneBook Empty { get; } = new(0, []);

    /// <summary>Those of a folder; none where its file is not there, or is not what was written.</summary>
    public static PhoneBook Of(OpenFolder folder)
    {
        try
        {
            var read = JsonSerializer.Deserialize(folder.TextOf(File) ?? "null", PhoneBookContext.Default.PhoneBook);
            return
                read is { Port: > 0 and <= MostPort, Phones.IsDefault: false }
                && read.Phones.All(phone => phone is { Id: not null, Name: not null, Mark: not null })
                ? read
                : Empty;
        }
        catch (JsonException)
        {
            return Empty;
        }
    }

    /// <summary>Writes them.</summary>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public void Write(OpenFolder folder)
    {
        Directory.CreateDirectory(folder.PathOf(Journal.Folder));
        folder.Write(File, JsonSerializer.SerializeToUtf8Bytes(this, PhoneBookContext.Default.PhoneBook));
    }
}

/// <summary>The JSON of the phones, made when the program is compiled.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(PhoneBook))]
internal sealed partial class PhoneBookContext : JsonSerializerContext;
