using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Season.Values;

namespace BenchSim.Folder;

/// <summary>A file of any kind, read whole.</summary>
public static class PlainFile
{
    /// <summary>False for a named pipe, a device or a socket, where the system can say; true for everything else.</summary>
    /// <param name="path">The file.</param>
    public static bool IsRegular(string path) => FileKind.IsRegular(path);

    /// <summary>Reads a file. What stands in the way never throws: it comes back as a fault.</summary>
    /// <param name="path">The file. A fault names it as it is written here.</param>
    /// <param name="largest">Largest file that is read, bytes.</param>
    /// <param name="fault">Why it was not read; null when it was.</param>
    /// <returns>Its bytes; null with a fault.</returns>
    public static byte[]? Read(string path, long largest, out Fault? fault)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        fault = null;
        if (Directory.Exists(path))
        {
            fault = At("this is a folder, not a file", "name the file itself");
        }
        else if (!File.Exists(path))
        {
            fault = FileKind.IsHidden(path) ? At(Words.ClosedAround, Words.OpenIt) : At("there is no such file", "check the name");
        }
        else if (!IsRegular(path))
        {
            fault = At("this is not a regular file", "name a file, not a pipe, a device or a socket");
        }

        if (fault is not null)
        {
            return null;
        }

        try
        {
            using var stream = File.OpenRead(path);
            if (stream.Length <= largest)
            {
                var bytes = new byte[stream.Length];
                stream.ReadExactly(bytes);
                return bytes;
            }

            fault = At("the file is too large and was not read", "check that it is the right file");
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            fault = At("the file cannot be read", "check that you may read it and that no other program holds it or writes to it");
        }

        return null;

        Fault At(string what, string instead) => new(new SourcePlace(path, 0, 0), what, instead);
    }
}
