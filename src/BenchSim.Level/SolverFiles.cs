using System.Reflection;
using System.Runtime.InteropServices;
using Google.OrTools.Sat;

namespace BenchSim.Level;

/// <summary>
/// The solver's native files, some seventy megabytes. A downloaded program has them in a folder of their own beside it, a build where .NET
/// puts them, and the tool package leaves them out.
/// </summary>
public static class SolverFiles
{
    /// <summary>Name of the folder beside a downloaded program.</summary>
    public const string Folder = "solver";

    private const string Library = "google-ortools-native";

    /// <summary>Whether they are there, so that a <see cref="Leveller"/> can work.</summary>
    public static bool AreHere => Places.Any(File.Exists);

    private static string FileName =>
        Library
        + (
            OperatingSystem.IsWindows() ? ".dll"
            : OperatingSystem.IsMacOS() ? ".dylib"
            : ".so"
        );

    private static string InFolder => Path.Combine(AppContext.BaseDirectory, Folder, FileName);

    private static IEnumerable<string> Places =>
        [
            InFolder,
            Path.Combine(AppContext.BaseDirectory, FileName),
            Path.Combine(AppContext.BaseDirectory, "runtimes", RuntimeInformation.RuntimeIdentifier, "native", FileName),
            Path.Combine(AppContext.BaseDirectory, "runtimes", PortableIdentifier, "native", FileName),
        ];

    private static string PortableIdentifier =>
        (
            OperatingSystem.IsWindows() ? "win"
            : OperatingSystem.IsMacOS() ? "osx"
            : "linux"
        ) + (RuntimeInformation.ProcessArchitecture == Architecture.Arm64 ? "-arm64" : "-x64");

    /// <summary>Has the solver's library looked for in the folder beside the program first.</summary>
    internal static void LookInFolder() => NativeLibrary.SetDllImportResolver(typeof(CpModel).Assembly, Load);

    private static IntPtr Load(string name, Assembly assembly, DllImportSearchPath? path) =>
        string.Equals(name, Library, StringComparison.Ordinal) && File.Exists(InFolder) ? NativeLibrary.Load(InFolder) : IntPtr.Zero;
}
