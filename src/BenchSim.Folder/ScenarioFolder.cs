using BenchSim.Folder.Files;

namespace BenchSim.Folder;

/// <summary>Reads a scenario folder: site.toml, plan.csv, and where present crops.csv, trays.csv and a weather record (docs/folder.md).</summary>
public static class ScenarioFolder
{
    /// <summary>Reads a folder and checks all of it in one pass. Bad input never throws: it comes back as faults.</summary>
    /// <param name="directory">Path of the folder.</param>
    /// <returns>The scenario, or every fault that was found.</returns>
    public static FolderReading Read(string directory)
    {
        ArgumentNullException.ThrowIfNull(directory);
        return new FolderReader(directory).Read();
    }

    /// <summary>
    /// Reads a folder again from the files that a reading of it brought (<see cref="FolderReading.Inputs"/>), with the same answer.
    /// </summary>
    /// <param name="files">The files; each name once.</param>
    /// <param name="others">Names of files of the folder that were not read, but that the reading warned of.</param>
    /// <param name="variant">Variant to lay over them, one of the files; null for none.</param>
    /// <returns>The scenario, or every fault that was found.</returns>
    public static FolderReading ReadKept(IEnumerable<InputFile> files, IEnumerable<string> others, string? variant = null)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(others);
        return new FolderReader(new KeptFiles(files, others), variant).Read();
    }

    /// <summary>
    /// Reads a folder with a variant, the file variants/NAME.toml in it, laid over its site, crops and plan (docs/folder.md). Bad input never
    /// throws: it comes back as faults, those of the variant with their places in its file.
    /// </summary>
    /// <param name="directory">Path of the folder.</param>
    /// <param name="name">Name of the variant: that of its file without the ending.</param>
    /// <returns>The scenario as the variant has it, or every fault that was found.</returns>
    public static FolderReading ReadVariant(string directory, string name)
    {
        ArgumentNullException.ThrowIfNull(directory);
        ArgumentNullException.ThrowIfNull(name);
        return new FolderReader(directory, name).Read();
    }
}
