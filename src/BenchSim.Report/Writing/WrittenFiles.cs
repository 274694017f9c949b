using System.Text;
using BenchSim.Study.Marks;

namespace BenchSim.Report.Writing;

/// <summary>
/// The files of a folder as they were written, with a hash of each: so a later writing finds what somebody has changed since. Kept in the
/// folder, in the form that <c>sha256sum -c</c> reads.
/// </summary>
internal sealed class WrittenFiles
{
    /// <summary>Name of the list within the folder.</summary>
    public const string FileName = ".benchsim-files";

    private const string Gap = "  ";

    private readonly SortedDictionary<string, string> _hashes = new(StringComparer.Ordinal);

    /// <summary>Whether a file of this name was written.</summary>
    /// <param name="name">Name within the folder, with <c>/</c> between its parts.</param>
    public bool Has(string name) => _hashes.ContainsKey(name);

    /// <summary>Whether a folder of this name was made for a file.</summary>
    /// <inheritdoc cref="Has" path="/param"/>
    public bool HasFolder(string name) => _hashes.Keys.Any(file => file.StartsWith(name + "/", StringComparison.Ordinal));

    /// <summary>Puts a file on the list.</summary>
    /// <param name="name">Name within the folder, with <c>/</c> between its parts.</param>
    /// <param name="bytes">What is in it.</param>
    public void Add(string name, ReadOnlySpan<byte> bytes) => _hashes[name] = Hash(bytes);

    /// <summary>The list as it is kept.</summary>
    public byte[] ToBytes() => Encoding.UTF8.GetBytes(string.Concat(_hashes.Select(file => $"{file.Value}{Gap}{file.Key}\n")));

    /// <summary>Reads a list.</summary>
    /// <param name="text">The list as it is kept; null for none.</param>
    /// <returns>Null for none, and where the text is no such list.</returns>
    public static WrittenFiles? Of(string? text)
    {
        if (text is null)
        {
            return null;
        }

        var files = new WrittenFiles();
        foreach (var line in text.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var hash = line.IndexOf(Gap, StringComparison.Ordinal);
            if (hash < 0)
            {
                return null;
            }

            files._hashes[line[(hash + Gap.Length)..]] = line[..hash];
        }

        return files;
    }

    /// <summary>Those files of a folder that are no longer as they were written, in order of name. One that was removed is not among them:
    /// nothing of it can be lost any more.</summary>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public string[] ChangedIn(string folder) =>
        [.. _hashes.Where(file => HashOf(Path.Combine(folder, file.Key)) is { } hash && hash != file.Value).Select(file => file.Key)];

    // A named pipe or a device has no length, and would hold up whoever reads it.
    private static string? HashOf(string path)
    {
        var file = new FileInfo(path);
        if (!file.Exists)
        {
            return null;
        }

        try
        {
            return Hash(file.Length == 0 ? [] : File.ReadAllBytes(path));
        }
        catch (Exception failure) when (failure is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }

    private static string Hash(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(Sha256.HashData(bytes));
}
