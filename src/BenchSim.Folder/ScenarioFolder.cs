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
}
