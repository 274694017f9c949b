using System.Diagnostics;

namespace EndToEnd;

/// <summary>The built command, in a process of its own.</summary>
/// <param name="Code">Exit code.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Error">Standard error.</param>
internal sealed record Command(int Code, string Output, string Error)
{
    public static async Task<Command> RunAsync(params string[] args)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "benchsim.dll"));
        foreach (string arg in args)
            start.ArgumentList.Add(arg);
        using Process process = Process.Start(start) ?? throw new InvalidOperationException("dotnet does not start.");
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return new Command(process.ExitCode, await output, await error);
    }
}
