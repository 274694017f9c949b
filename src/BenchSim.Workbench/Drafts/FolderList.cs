using System.Collections.Immutable;
using System.Text;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Report.Writing;

namespace BenchSim.Workbench.Drafts;

/// <summary>
/// The folders that were opened before, the newest first: one path a line of a text file. The list is a help alone: where it cannot be read
/// or written, there is none, and nothing is said.
/// </summary>
/// <param name="file">The file; null to keep no list.</param>
public sealed class FolderList(string? file)
{
    /// <summary>Environment variable that names another file, or with <see cref="Nothing"/> asks for no list.</summary>
    public const string Variable = "BENCHSIM_FOLDERS";

    /// <summary>What the variable says where no list is to be kept.</summary>
    public const string Nothing = "none";

    private const int Most = 12;
    private const long Largest = 100_000;

    /// <summary>The list of whoever runs the program: in the folder where the system keeps the settings of programs.</summary>
    public static FolderList OfUser()
    {
        if (Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } named)
        {
            return new FolderList(string.Equals(named, Nothing, StringComparison.Ordinal) ? null : named);
        }

        var settings = Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return new FolderList(settings.Length == 0 ? null : Path.Combine(settings, "benchsim", "folders.txt"));
    }

    /// <summary>The folders that are still there and hold a plan.</summary>
    public ImmutableArray<string> Now =>
        [.. Read().Where(each => Path.IsPathFullyQualified(each) && File.Exists(Path.Combine(each, FileNames.Site)))];

    /// <summary>Puts a folder first.</summary>
    /// <param name="directory">Its full path.</param>
    public void Add(string directory)
    {
        ArgumentNullException.ThrowIfNull(directory);
        if (file is null || directory.AsSpan().ContainsAny('\n', '\r'))
        {
            return;
        }

        try
        {
            var others = Read().Where(each => !string.Equals(each, directory, StringComparison.Ordinal));
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(file))!);
            var text = string.Concat(others.Prepend(directory).Take(Most).Select(each => each + "\n"));
            TargetFile.Write(file, Encoding.UTF8.GetBytes(text), () => { }, CancellationToken.None);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // The folder is open all the same.
        }
    }

    private string[] Read()
    {
        try
        {
            return file is not null && PlainFile.Read(file, Largest, out _) is { } bytes
                ? Encoding.UTF8.GetString(bytes).Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                : [];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
