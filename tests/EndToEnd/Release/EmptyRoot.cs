using System.Diagnostics;
using System.IO.Compression;

namespace EndToEnd.Release;

/// <summary>
/// A root with nothing in it but an archive for Linux, unpacked, and the C and C++ libraries of the system: no .NET, no fonts, no shell,
/// no OpenSSL, no settings.
/// </summary>
internal sealed class EmptyRoot : IDisposable
{
    /// <summary>The archive for Linux.</summary>
    public const string Linux = "*-linux-x64.zip";

    /// <summary>The native program for Linux.</summary>
    public const string Native = "*-linux-*-native.zip";

    private readonly TemporaryFolder _folder = new();

    /// <summary>Unpacks an archive.</summary>
    /// <param name="archive">Its pattern.</param>
    public EmptyRoot(string archive = Linux)
    {
        foreach (var name in new[] { "home", "proc", "dev", "lib64" })
        {
            Directory.CreateDirectory(_folder.In(name));
        }

        ZipFile.ExtractToDirectory(Archive(archive), _folder.In("benchsim"));
        string[] files = [Program, .. Directory.GetFiles(_folder.In("benchsim"), "*.so*", SearchOption.AllDirectories)];
        var words = files.SelectMany(file => Output("ldd", file).Split([' ', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries));
        foreach (var library in words.Where(IsOfSystem).Distinct(StringComparer.Ordinal))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(In(library))!);
            File.Copy(library, In(library));
        }
    }

    /// <summary>The program, seen from outside.</summary>
    public string Program => _folder.In("benchsim/benchsim");

    /// <summary>An archive that was made.</summary>
    public static string Archive(string pattern) => Assert.Single(Directory.GetFiles(Folder, pattern));

    /// <summary>The folder that eng/release made.</summary>
    public static string Folder => Path.GetFullPath(Environment.GetEnvironmentVariable("BENCHSIM_RELEASE")!, Repository.Root);

    /// <summary>A path in the root, seen from outside.</summary>
    public string In(string path) => _folder.In(path.TrimStart('/'));

    /// <summary>Runs the program in the root.</summary>
    public Task<Command> RunAsync(params string[] args) => Command.EndAsync(Start(args));

    /// <summary>Starts the program in the root; the process is the program.</summary>
    public Process Start(params string[] args)
    {
        const string line =
            "mount --bind /proc \"$0/proc\" && mount --bind /dev \"$0/dev\" && exec chroot \"$0\" /benchsim/benchsim \"$@\"";
        return StartLine([
            "env",
            "-i",
            "HOME=/home",
            "PATH=/usr/sbin:/usr/bin:/sbin:/bin",
            "unshare",
            "-m",
            "sh",
            "-c",
            line,
            _folder.Path,
            .. args,
        ]);
    }

    /// <summary>Starts a line of words.</summary>
    public static Process StartLine(string[] words) =>
        Process.Start(
            new ProcessStartInfo(words[0], words[1..])
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;

    /// <inheritdoc />
    public void Dispose() => _folder.Dispose();

    private bool IsOfSystem(string word) =>
        word.StartsWith('/') && !word.StartsWith(_folder.Path, StringComparison.Ordinal) && File.Exists(word);

    private static string Output(params string[] words)
    {
        using var process = StartLine(words);
        return process.StandardOutput.ReadToEnd();
    }
}
