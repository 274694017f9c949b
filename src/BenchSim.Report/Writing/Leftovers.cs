namespace BenchSim.Report.Writing;

/// <summary>Takes away files and folders of our own, without a word when that fails: the first failure, if any, is the one worth telling,
/// and what is left has a name that says what it is.</summary>
internal static class Leftovers
{
    /// <summary>Removes a file, or a folder with all in it; nothing when there is none.</summary>
    public static void Remove(string path)
    {
        try
        {
            if (Directory.Exists(path))
            {
                Directory.Delete(path, recursive: true);
            }
            else
            {
                File.Delete(path);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // Said above.
        }
    }

    /// <summary>Removes a folder that has nothing in it.</summary>
    public static void RemoveEmpty(string folder)
    {
        try
        {
            if (Directory.Exists(folder) && !Directory.EnumerateFileSystemEntries(folder).Any())
            {
                Directory.Delete(folder);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // Said above.
        }
    }
}
