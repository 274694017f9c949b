using System.Collections.Immutable;

namespace BenchSim.Folder.Files;

/// <summary>Files that were read from a folder before, and the names of others that stood there.</summary>
internal sealed class KeptFiles : IFolderFiles
{
    private readonly Dictionary<string, ImmutableArray<byte>> _files;
    private readonly string[] _names;

    public KeptFiles(IEnumerable<InputFile> files, IEnumerable<string> others)
    {
        _files = files.ToDictionary(file => file.Name, file => file.Bytes, StringComparer.Ordinal);
        _names = [.. _files.Keys.Concat(others).Distinct(StringComparer.Ordinal)];
    }

    public bool IsFolder(string name) => false;

    public bool IsFile(string name) => _files.ContainsKey(name);

    public bool IsRegular(string name) => true;

    public Stream Open(string name) => new MemoryStream([.. _files[name]], writable: false);

    public IEnumerable<string> Names(string within)
    {
        var start = within.Length == 0 ? "" : within + "/";
        return _names
            .Where(name => name.StartsWith(start, StringComparison.Ordinal) && !name.AsSpan(start.Length).Contains('/'))
            .Select(name => name[start.Length..]);
    }
}
