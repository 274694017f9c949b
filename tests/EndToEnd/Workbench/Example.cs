namespace EndToEnd.Workbench;

/// <summary>Copies of the worked examples, to be changed.</summary>
internal static class Example
{
    /// <summary>A copy of an example, gone when the test is over.</summary>
    public static TemporaryFolder Copy(string name)
    {
        var folder = new TemporaryFolder();
        foreach (var (file, bytes) in TemporaryFolder.Files(Repository.File("scenarios/" + name)))
        {
            folder.Write(file, bytes);
        }

        return folder;
    }
}
