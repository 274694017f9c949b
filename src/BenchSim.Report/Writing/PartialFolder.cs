namespace BenchSim.Report.Writing;

/// <summary>A folder that is being filled beside its place: files go in one by one, and at the end it is seen
/// that all of them are still there.</summary>
/// <param name="path">The folder; it exists.</param>
/// <param name="cancel">Stops the writing between two files.</param>
internal sealed class PartialFolder(string path, CancellationToken cancel)
{
    private readonly List<(string Path, long Length)> _files = [];

    /// <summary>Writes a file.</summary>
    /// <param name="name">Name within the folder, with <c>/</c> before each part.</param>
    /// <param name="bytes">What is in it.</param>
    /// <exception cref="IOException">The disk refuses, or someone removed the folder.</exception>
    public void Save(string name, byte[] bytes)
    {
        cancel.ThrowIfCancellationRequested();

        // Making the parts of a name would also make a removed folder anew, without the files that were in it.
        if (!Directory.Exists(path))
        {
            throw Removed();
        }

        var file = Path.Combine(path, name);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        try
        {
            File.WriteAllBytes(file, bytes);
        }
        catch (ArgumentOutOfRangeException failure)
        {
            // What the runtime makes of a file that is larger than the disk or the account's limit allows.
            throw new IOException($"A file of {bytes.Length} bytes is larger than this disk or your account allows: '{file}'", failure);
        }

        _files.Add((file, bytes.Length));
    }

    /// <summary>Sees that every file is there in full: what was removed meanwhile must not be missed in silence.</summary>
    /// <exception cref="IOException">Something is missing.</exception>
    public void CheckWhole()
    {
        foreach (var (file, length) in _files)
        {
            var found = new FileInfo(file);
            if (!found.Exists || found.Length != length)
            {
                throw Removed();
            }
        }
    }

    private static IOException Removed() =>
        new("Files of it were removed while it was being written. Let nothing else work on the folder, and run again.");
}
