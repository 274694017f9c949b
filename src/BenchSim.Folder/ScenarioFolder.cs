using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder;

/// <summary>
/// Reads a scenario folder: site.toml, plan.csv, and where present crops.csv, trays.csv and a weather record (docs/folder.md). All of it is
/// checked in one pass. Bad input never throws: it comes back as faults, those of a variant with their places in its file.
/// </summary>
public static class ScenarioFolder
{
    /// <summary>Reads a folder.</summary>
    /// <param name="directory">Path of the folder.</param>
    /// <returns>The scenario, or every fault that was found.</returns>
    public static FolderReading Read(string directory)
    {
        ArgumentNullException.ThrowIfNull(directory);
        return new FolderReader(new DiskFiles(directory)).Read(directory);
    }

    /// <summary>Reads a folder with a variant, the file variants/NAME.toml in it, laid over its site, crops and plan.</summary>
    /// <param name="directory">Path of the folder.</param>
    /// <param name="name">Name of the variant: that of its file without the ending.</param>
    /// <returns>The scenario as the variant has it, or every fault that was found.</returns>
    public static FolderReading ReadVariant(string directory, string name)
    {
        ArgumentNullException.ThrowIfNull(directory);
        ArgumentNullException.ThrowIfNull(name);
        return new FolderReader(new DiskFiles(directory), name).Read(directory);
    }

    /// <summary>
    /// Reads files that are kept in memory, such as those that a reading of a folder brought (<see cref="FolderReading.Inputs"/>), or texts
    /// that are not written yet (<see cref="InputFile.Of"/>), with the answer that a folder of these files would give.
    /// </summary>
    /// <param name="files">The files, variants among them; each name once.</param>
    /// <param name="others">Names of files of the folder that are not there to be read, but that a reading of it warned of.</param>
    /// <param name="variant">Name of the variant to lay over the rest, whose file is among them; null for none.</param>
    /// <param name="weather">
    /// The weather that an earlier reading of the same files brought, where the variant says nothing of it: to fit a generator to a record
    /// takes longer than all the rest. Null to read it.
    /// </param>
    /// <param name="records">Keeps weather records from one reading to the next; null for nothing kept.</param>
    /// <param name="below">Name of a variant among the files that is laid over them first, the other over it; null for none.</param>
    /// <returns>The scenario, or every fault that was found.</returns>
    public static FolderReading ReadKept(
        IEnumerable<InputFile> files,
        IEnumerable<string>? others = null,
        string? variant = null,
        WeatherInput? weather = null,
        KeptRecords? records = null,
        string? below = null
    )
    {
        ArgumentNullException.ThrowIfNull(files);
        return new FolderReader(new KeptFiles(files, others ?? []), variant, weather, records, below).Read();
    }
}
