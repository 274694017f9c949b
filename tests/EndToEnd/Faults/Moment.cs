using System.Diagnostics;

namespace EndToEnd.Faults;

/// <summary>Moments of a running command, seen by what lies on the disk.</summary>
internal static class Moment
{
    private static readonly EnumerationOptions s_all = new() { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None };

    /// <summary>Looks again and again until there is an answer; null when the process ends before.</summary>
    public static Task<string?> WhenAsync(Process process, Func<string?> look) =>
        Task.Run(() =>
        {
            while (!process.HasExited)
            {
                if (look() is { } seen)
                {
                    return seen;
                }

                Thread.Yield();
            }

            return null;
        });

    /// <summary>Removes a folder into which another process may still write: what comes in between is removed as well.</summary>
    public static void Remove(string folder)
    {
        while (Directory.Exists(folder))
        {
            try
            {
                Directory.Delete(folder, recursive: true);
            }
            catch (IOException)
            {
                // A file came into it after its files were taken away, or it was taken away by its writer.
                Thread.Yield();
            }
        }
    }

    /// <summary>The folder in which a report is being written, once it has so many files.</summary>
    public static string? PartialOf(string report, int files)
    {
        try
        {
            var partial = Directory
                .EnumerateDirectories(
                    Path.GetDirectoryName(report)!,
                    ".benchsim-partial-*",
                    new EnumerationOptions { AttributesToSkip = FileAttributes.None }
                )
                .FirstOrDefault();
            return partial is not null && Directory.EnumerateFiles(partial, "*", s_all).Count() >= files ? partial : null;
        }
        catch (IOException)
        {
            return null;
        }
    }
}
