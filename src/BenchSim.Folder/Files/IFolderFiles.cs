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

    /// <summary>Opens a file to read.</summary>
    Stream Open(string name);

    /// <summary>Names of the files that stand in the folder itself, or in one in it, in any order.</summary>
    /// <param name="within">Name of the folder in it; empty for the folder itself.</param>
    IEnumerable<string> Names(string within);
}
