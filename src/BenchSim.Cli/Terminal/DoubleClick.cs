using System.ComponentModel;
using System.Diagnostics;
using System.Runtime.InteropServices;

namespace BenchSim.Cli.Terminal;

/// <summary>A start without a shell above the program, by a double click in a folder.</summary>
internal static partial class DoubleClick
{
    private const string Nothing = "/dev/null";

    /// <summary>
    /// Whether the program was started so. On Windows it then has a console window of its own, on Linux neither a terminal nor a pipe or
    /// file to write to. On macOS a program that is opened from a folder runs in a shell, so the download has a file that calls it.
    /// </summary>
    public static bool IsOne =>
        OperatingSystem.IsWindows()
            ? GetConsoleProcessList(new uint[2], 2) == 1
            : OperatingSystem.IsLinux() && LeadsNowhere(0) && LeadsNowhere(1) && !HasTerminal();

    /// <summary>The words that a start by a double click stands for: the workbench, of the folder that was dropped on the program.</summary>
    /// <param name="args">The words after the program's name.</param>
    public static string[] Meant(string[] args) =>
        args switch
        {
            [] => ["open", "--show"],
            [var folder] when Directory.Exists(folder) => ["open", folder, "--show"],
            _ => args,
        };

    /// <summary>Keeps the window open until it has been read; it closes with the program.</summary>
    public static void WaitToBeRead()
    {
        if (OperatingSystem.IsWindows())
        {
            Console.Error.Write("Press Enter to close this window.");
            Console.In.ReadLine();
        }
    }

    /// <summary>Shows an address in the browser; false where no browser can be called.</summary>
    /// <param name="address">The address.</param>
    public static bool Show(string address)
    {
        var (program, before) =
            OperatingSystem.IsWindows() ? ("rundll32", "url.dll,FileProtocolHandler")
            : OperatingSystem.IsMacOS() ? ("open", null)
            : ("xdg-open", (string?)null);
        var start = new ProcessStartInfo(program) { UseShellExecute = false, CreateNoWindow = true };
        if (before is not null)
        {
            start.ArgumentList.Add(before);
        }

        start.ArgumentList.Add(address);
        try
        {
            using var browser = Process.Start(start);
            return browser is not null;
        }
        catch (Win32Exception)
        {
            return false;
        }
    }

    private static bool LeadsNowhere(int stream)
    {
        try
        {
            var target = File.ResolveLinkTarget(FormattableString.Invariant($"/proc/self/fd/{stream}"), returnFinalTarget: false)?.FullName;
            return string.Equals(target, Nothing, StringComparison.Ordinal)
                || target?.Contains("/socket:[", StringComparison.Ordinal) == true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static bool HasTerminal()
    {
        try
        {
            using var terminal = File.OpenHandle("/dev/tty");
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    [LibraryImport("kernel32.dll")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static partial uint GetConsoleProcessList([Out] uint[] processes, uint count);
}
