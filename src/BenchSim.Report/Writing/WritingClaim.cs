using System.Text;
using BenchSim.Study.Marks;

namespace BenchSim.Report.Writing;

/// <summary>
/// The names beside a target under which it is written, and the sign that someone is still at it: a file held open. Names of one target
/// begin alike, so that a later writer finds what one that was killed has left, and takes it away.
/// </summary>
internal sealed class WritingClaim : IDisposable
{
    private const string LockStart = ".benchsim-lock-";

    /// <summary>Names that are tried before the disk is taken to refuse.</summary>
    private const int MostTries = 10;

    private readonly string _lock;
    private readonly FileStream _held;

    private WritingClaim(string parent, string mark, FileStream held)
    {
        Partial = PartialOf(parent, mark);
        Former = FormerOf(parent, mark);
        _lock = held.Name;
        _held = held;
    }

    /// <summary>The folder that is filled.</summary>
    public string Partial { get; }

    /// <summary>Where the earlier folder waits while the new one takes its place.</summary>
    public string Former { get; }

    /// <summary>Takes away what killed writers left, and claims names for another.</summary>
    /// <param name="target">Full path of the target; the folder above it exists.</param>
    /// <exception cref="IOException">The disk refuses, or one may not write there.</exception>
    public static WritingClaim Take(string target)
    {
        var parent = Path.GetDirectoryName(target)!;
        var start = Convert.ToHexStringLower(Sha256.HashData(Encoding.UTF8.GetBytes(Path.GetFileName(target))))[..8];
        ClearAway(target, parent, start);
        for (var tries = 1; ; tries++)
        {
            var mark = $"{start}-{Guid.NewGuid().ToString("N")[..8]}";
            var file = Path.Combine(parent, LockStart + mark);
            try
            {
                return new WritingClaim(parent, mark, new FileStream(file, FileMode.CreateNew, FileAccess.Write, FileShare.None));
            }
            catch (IOException) when (tries < MostTries)
            {
                // A file is made first and held then: another writer may have looked in between whether
                // somebody holds it, and held it to see.
                Leftovers.Remove(file);
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                throw new IOException(failure.Message.Replace(file, target, StringComparison.Ordinal), failure);
            }
        }
    }

    /// <summary>
    /// Takes away what killed writers of files left in a folder: of a file that is in its place, only the sign of its writer.
    /// </summary>
    /// <param name="folder">The folder.</param>
    public static void TidyUp(string folder)
    {
        foreach (var left in Directory.GetFiles(folder, LockStart + "*").Where(left => !IsHeld(left)))
        {
            Leftovers.Remove(PartialOf(folder, Path.GetFileName(left)[LockStart.Length..]));
            Leftovers.Remove(left);
        }
    }

    /// <summary>Gives the claim up.</summary>
    public void Dispose()
    {
        _held.Dispose();
        Leftovers.Remove(_lock);
    }

    private static void ClearAway(string target, string parent, string start)
    {
        foreach (var left in Directory.GetFiles(parent, $"{LockStart}{start}-*"))
        {
            if (IsHeld(left))
            {
                continue;
            }

            var mark = Path.GetFileName(left)[LockStart.Length..];
            Leftovers.Remove(PartialOf(parent, mark));

            // Killed between the two moves: the earlier folder goes back to its place.
            var former = FormerOf(parent, mark);
            if (Directory.Exists(former) && !Directory.Exists(target))
            {
                Directory.Move(former, target);
            }

            Leftovers.Remove(former);
            Leftovers.Remove(left);
        }
    }

    private static bool IsHeld(string file)
    {
        try
        {
            new FileStream(file, FileMode.Open, FileAccess.Write, FileShare.None).Dispose();
            return false;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return true;
        }
    }

    private static string PartialOf(string parent, string mark) => Path.Combine(parent, $".benchsim-partial-{mark}");

    private static string FormerOf(string parent, string mark) => Path.Combine(parent, $".benchsim-former-{mark}");
}
