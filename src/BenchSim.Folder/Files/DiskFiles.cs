namespace BenchSim.Folder.Files;

/// <summary>A folder on a disk.</summary>
internal sealed class DiskFiles(string directory) : IFolderFiles
{
    public bool IsFolder(string name) => Directory.Exists(PathOf(name));

    public bool IsFile(string name) => File.Exists(PathOf(name));

    public bool IsRegular(string name) => FileKind.IsRegular(PathOf(name));

    public bool IsHidden(string name) => FileKind.IsHidden(PathOf(name));

    public Stream Open(string name) => File.OpenRead(PathOf(name));

    public IEnumerable<string> NamesIn(string folder) => Directory.EnumerateFiles(PathOf(folder)).Select(path => Path.GetFileName(path));

    private string PathOf(string name) => Path.Combine(directory, name);
}
