namespace BenchSim.Report.Writing;

/// <summary>
/// A single file that is written: whole or as it was. It is written beside its place, through to the disk, and then moved there; what a
/// killed writer left of the same file is taken away first, and nothing of any other.
/// </summary>
public static class TargetFile
{
    /// <summary>Finds out whether a file can be made in a place, and leaves nothing there.</summary>
    /// <param name="path">The file; the folder above it exists.</param>
    /// <exception cref="IOException">The disk refuses, or one may not write there.</exception>
    public static void CheckCanBeWritten(string path) => WritingClaim.Take(Path.GetFullPath(path)).Dispose();

    /// <summary>Takes away what killed writers of files left in a folder; writers that are at work are left alone.</summary>
    /// <param name="folder">The folder, in which nothing but files is written.</param>
    public static void TidyUp(string folder) => WritingClaim.TidyUp(folder);

    /// <summary>Writes the file, in the place of one that stands there and with its permissions.</summary>
    /// <param name="path">The file; the folder above it exists.</param>
    /// <param name="bytes">What is in it.</param>
    /// <param name="check">Throws where what has come to stand there during the play must stay.</param>
    /// <param name="cancel">Stops it; nothing is left behind.</param>
    /// <param name="isSealed">
    /// True for one of many files that each carry a sign by which a loss of power is found out, and that are easily made again: they are
    /// not forced through to the disk one by one.
    /// </param>
    /// <exception cref="IOException">It cannot be written; the message names the file as <paramref name="path"/> does.</exception>
    /// <exception cref="OperationCanceledException">The writing was stopped.</exception>
    public static void Write(string path, ReadOnlySpan<byte> bytes, Action check, CancellationToken cancel, bool isSealed = false)
    {
        ArgumentNullException.ThrowIfNull(check);
        using var claim = WritingClaim.Take(Path.GetFullPath(path));
        try
        {
            cancel.ThrowIfCancellationRequested();
            using (var stream = new FileStream(claim.Partial, FileMode.CreateNew))
            {
                stream.Write(bytes);
                stream.Flush(flushToDisk: !isSealed);
            }

            if (!OperatingSystem.IsWindows() && File.Exists(path))
            {
                File.SetUnixFileMode(claim.Partial, File.GetUnixFileMode(path));
            }

            cancel.ThrowIfCancellationRequested();
            check();
            File.Move(claim.Partial, path, overwrite: true);
        }
        catch (ArgumentOutOfRangeException failure)
        {
            throw FileLimit.Exceeded(path, bytes.Length, failure);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new IOException(failure.Message.Replace(claim.Partial, path, StringComparison.Ordinal), failure);
        }
        finally
        {
            Leftovers.Remove(claim.Partial);
        }
    }
}
