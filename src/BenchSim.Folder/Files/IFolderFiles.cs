namespace BenchSim.Folder.Files;

/// <summary>The files of a scenario folder, on a disk or kept elsewhere. Names are relative to it, with forward slashes.</summary>
internal interface IFolderFiles
{
    /// <summary>True when a folder stands under the name.</summary>
    bool IsFolder(string name);

    /// <summary>True when a file stands under the name.</summary>
    bool IsFile(string name);

    /// <summary>False when what stands there is a pipe, a device or a socket.</summary>
    bool IsRegular(string name);

    /// <summary>
    /// True when one may not even see what stands under the name, because a folder on the way to it may not be opened; the empty name is
    /// the scenario folder itself.
    /// </summary>
    bool IsHidden(string name);

    /// <summary>Opens a file to read.</summary>
    Stream Open(string name);

    /// <summary>Names of the files in a folder, in any order: the scenario folder itself for the empty name.</summary>
    IEnumerable<string> NamesIn(string folder);
}
