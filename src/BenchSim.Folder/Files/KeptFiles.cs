using System.Collections.Immutable;

namespace BenchSim.Folder.Files;

/// <summary>Files that are kept in memory, and the names of others that stood beside them.</summary>
internal sealed class KeptFiles(IEnumerable<InputFile> files, IEnumerable<string> others) : IFolderFiles
{
    private readonly Dictionary<string, ImmutableArray<byte>> _files = files.ToDictionary(
        file => file.Name,
        file => file.Bytes,
        StringComparer.Ordinal
    );

    public bool IsFolder(string name) => false;

    public bool IsFile(string name) => _files.ContainsKey(name);

    public bool IsRegular(string name) => true;

    public bool IsHidden(string name) => false;

    public Stream Open(string name) => new MemoryStream([.. _files[name]], writable: false);

    public IEnumerable<string> NamesIn(string folder)
    {
        var start = folder.Length == 0 ? "" : folder + "/";
        return _files
            .Keys.Concat(others)
            .Where(name => name.StartsWith(start, StringComparison.Ordinal))
            .Select(name => name[start.Length..])
            .Where(name => !name.Contains('/', StringComparison.Ordinal))
            .Distinct(StringComparer.Ordinal);
    }
}
