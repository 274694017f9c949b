using System.Diagnostics;
using BenchSim.Published.Library;

namespace BenchSim.Published.OtherEngines;

/// <summary>The folder tests/Published/other-engines: models written for another engine, the numbers they are
/// fed, and what they printed.</summary>
internal static class OtherEngineFolder
{
    private const string Python = "/usr/bin/python3";

    public static string PathOf(string file) => Path.Combine(Repository.Root, "tests", "Published", "other-engines", file);

    /// <summary>The stored text of a file, with the line ends that the scripts write.</summary>
    public static string Stored(string file) => File.ReadAllText(PathOf(file)).ReplaceLineEndings("\n");

    /// <summary>Rows of a stored table, without its heading.</summary>
    public static string[][] Rows(string file) =>
        [.. Stored(file).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(line => line.Split(','))];

    /// <summary>Runs a script and gives what it prints.</summary>
    public static async Task<string> PrintedAsync(string script)
    {
        var start = new ProcessStartInfo(Python)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        start.ArgumentList.Add(PathOf(script));
        start.Environment["PYTHONDONTWRITEBYTECODE"] = "1";
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{Python} does not start.");
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0, await error);
        return await output;
    }
}
