using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace BenchSim.Folder.Files;

/// <summary>
/// What a path is, as far as it can be asked without opening it: a named pipe holds up whoever opens it.
/// </summary>
internal static class FileKind
{
    // From linux/stat.h and linux/fcntl.h. The layout of statx is the same on every processor; stx_mode stands 28 bytes from its start.
    private const int RelativeToHere = -100;
    private const uint WantsType = 1;
    private const int StatxLength = 256;
    private const int ModeOffset = 28;
    private const int TypeMask = 0xF000;
    private const int RegularFile = 0x8000;

    /// <summary>
    /// False for a named pipe, a device or a socket, links followed. Only Linux can say; elsewhere, and where it cannot be asked, true.
    /// </summary>
    public static bool IsRegular(string path)
    {
        if (!OperatingSystem.IsLinux())
        {
            return true;
        }

        try
        {
            var status = new byte[StatxLength];
            return AskStatus(RelativeToHere, path, 0, WantsType, status) != 0 || (ModeOf(status) & TypeMask) == RegularFile;
        }
        catch (Exception missing) when (missing is EntryPointNotFoundException or DllNotFoundException)
        {
            // A system library from before 2018 has no such call.
            return true;
        }
    }

    /// <summary>True where a folder on the way may not be opened, so that nobody can say what stands there.</summary>
    public static bool IsHidden(string path)
    {
        try
        {
            File.GetAttributes(path);
            return false;
        }
        catch (UnauthorizedAccessException)
        {
            return true;
        }
        catch (Exception nothing) when (nothing is IOException or ArgumentException)
        {
            // Nothing stands there, or no system could have the name.
            return false;
        }
    }

    private static int ModeOf(byte[] status) =>
        BitConverter.IsLittleEndian
            ? BinaryPrimitives.ReadUInt16LittleEndian(status.AsSpan(ModeOffset))
            : BinaryPrimitives.ReadUInt16BigEndian(status.AsSpan(ModeOffset));

    [DllImport("libc", EntryPoint = "statx", ExactSpelling = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int AskStatus(
        int directory,
        [MarshalAs(UnmanagedType.LPUTF8Str)] string path,
        int flags,
        uint mask,
        [Out] byte[] status
    );
}
