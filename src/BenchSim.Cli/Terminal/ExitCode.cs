namespace BenchSim.Cli.Terminal;

/// <summary>What the program's exit code says.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Done, but the share of seasons asked for by <c>--require</c> is not met.</summary>
    public const int RequirementMissed = 1;

    /// <summary>Results of tasks are lacking, so that a sweep cannot be merged.</summary>
    public const int Lacking = 1;

    /// <summary>The command line or a file has faults, or a folder cannot be read or written.</summary>
    public const int BadInput = 2;

    /// <summary>A fault of the program itself.</summary>
    public const int Broken = 70;

    /// <summary>Stopped by Ctrl-C or a request to end.</summary>
    public const int Cancelled = 130;
}
