namespace Support;

/// <summary>
/// Text that is committed and compared. With BENCHSIM_APPROVE=1 in the environment it is written anew instead: read the difference before
/// committing it.
/// </summary>
public static class Approved
{
    /// <summary>True where what comes is to be written in the place of what is there.</summary>
    public static bool IsApproving { get; } =
        string.Equals(Environment.GetEnvironmentVariable("BENCHSIM_APPROVE"), "1", StringComparison.Ordinal);

    /// <summary>The committed text that a text is to be equal to.</summary>
    /// <param name="file">File of the repository.</param>
    /// <param name="text">What it should hold.</param>
    public static string Text(string file, string text)
    {
        var path = Repository.File(file);
        if (IsApproving)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, text);
        }

        return File.Exists(path) ? File.ReadAllText(path) : "";
    }
}
