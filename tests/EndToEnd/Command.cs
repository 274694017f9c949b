using System.Diagnostics;

namespace EndToEnd;

/// <summary>
/// The built command, in a process of its own; or another build of it, by its path in BENCHSIM_PROGRAM: a program that starts by itself.
/// </summary>
/// <param name="Code">Exit code.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Error">Standard error.</param>
internal sealed record Command(int Code, string Output, string Error)
{
    private static readonly string[] s_built = ["dotnet", Path.Combine(AppContext.BaseDirectory, "benchsim.dll")];

    public static Task<Command> RunAsync(params string[] args) => RunAsync([], args);

    /// <summary>Runs it in a folder.</summary>
    public static async Task<Command> InAsync(string folder, params string[] args)
    {
        using var process = Start([], [.. Program, .. args], folder);
        return await EndAsync(process);
    }

    /// <summary>Runs it with more in its environment.</summary>
    public static async Task<Command> RunAsync((string Name, string Value)[] environment, params string[] args)
    {
        using var process = Start(environment, [.. Program, .. args]);
        return await EndAsync(process);
    }

    /// <summary>Runs the command as these tests were built with it, whatever BENCHSIM_PROGRAM says.</summary>
    public static async Task<Command> RunBuiltAsync(params string[] args)
    {
        using var process = Start([], [.. s_built, .. args]);
        return await EndAsync(process);
    }

    /// <summary>Runs it as the last words of a line for the shell, where <c>"$@"</c> stands for it and its arguments.</summary>
    public static async Task<Command> ShellAsync(string line, (string Name, string Value)[] environment, params string[] args)
    {
        using var process = StartShell(line, environment, args);
        return await EndAsync(process);
    }

    /// <summary>The same, and does not wait.</summary>
    public static Process StartShell(string line, (string Name, string Value)[] environment, params string[] args) =>
        Start(environment, ["/bin/sh", "-c", line, "sh", .. Program, .. args]);

    /// <summary>Runs it as one for whom the modes of files and folders count.</summary>
    public static Task<Command> KeptOutAsync(params string[] args) => ShellAsync(KeptOut, [], args);

    /// <summary>A line for the shell that starts it without the right of the superuser to pass modes of files and folders by.</summary>
    public static string KeptOut
    {
        get
        {
            const string Rights = "-dac_override,-dac_read_search";
            return Environment.IsPrivilegedProcess ? $"exec setpriv --bounding-set {Rights} --inh-caps {Rights} \"$@\"" : "exec \"$@\"";
        }
    }

    /// <summary>Starts it and does not wait.</summary>
    public static Process Start(params string[] args) => Start([], [.. Program, .. args]);

    /// <summary>Starts it in a folder, with more in its environment, and does not wait.</summary>
    public static Process StartIn(string folder, (string Name, string Value)[] environment, params string[] args) =>
        Start(environment, [.. Program, .. args], folder);

    /// <summary>Waits for its end.</summary>
    public static async Task<Command> EndAsync(Process process)
    {
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return new Command(process.ExitCode, await output, await error);
    }

    /// <summary>The words that start it.</summary>
    public static string[] Program =>
        Environment.GetEnvironmentVariable("BENCHSIM_PROGRAM") is { Length: > 0 } other
            ? [Path.GetFullPath(other, Repository.Root)]
            : s_built;

    private static Process Start((string Name, string Value)[] environment, string[] line, string? folder = null)
    {
        var start = new ProcessStartInfo(line[0], line[1..])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder ?? Path.GetTempPath(),
        };
        // Tests leave nothing among the settings of whoever runs them.
        start.Environment["BENCHSIM_FOLDERS"] = "none";
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start) ?? throw new InvalidOperationException($"{line[0]} does not start.");
    }
}
