using BenchSim.Report.Tables;

namespace BenchSim.Report.Writing;

/// <summary>A folder that is being filled beside its place: files go in one by one, and at the end it is seen
/// that all of them are still there, and a list of them is written.</summary>
/// <param name="path">The folder; it exists.</param>
/// <param name="cancel">Stops the writing between two files.</param>
internal sealed class PartialFolder(string path, CancellationToken cancel)
{
    private readonly List<(string Path, long Length)> _files = [];
    private readonly WrittenFiles _written = new();
    private readonly ColumnDictionary _columns = new();

    /// <summary>Whether it has tables, and so gets a dictionary of their columns.</summary>
    public bool HasTables => !_columns.IsEmpty;

    /// <summary>Writes a file.</summary>
    /// <param name="name">Name within the folder, with <c>/</c> before each part.</param>
    /// <param name="bytes">What is in it.</param>
    /// <exception cref="IOException">The disk refuses, or someone removed the folder.</exception>
    public void Save(string name, byte[] bytes)
    {
        Put(name, bytes);
        _written.Add(name, bytes);
    }

    /// <summary>Writes a table, and its columns into the dictionary of the folder.</summary>
    /// <param name="name">Name within the folder, with <c>/</c> before each part.</param>
    /// <param name="table">The table.</param>
    /// <exception cref="IOException">The disk refuses, or someone removed the folder.</exception>
    public void Save(string name, CsvTable table)
    {
        Save(name, table.ToBytes());
        _columns.Add(name, table);
    }

    /// <summary>
    /// Writes the dictionary of the columns, where there are tables, and the list of the files (<see cref="WrittenFiles"/>), then sees that
    /// every file is there in full: what was removed meanwhile must not be missed in silence.
    /// </summary>
    /// <exception cref="IOException">Something is missing.</exception>
    public void Finish()
    {
        if (HasTables)
        {
            Save(ColumnDictionary.FileName, _columns.ToBytes());
        }

        Put(WrittenFiles.FileName, _written.ToBytes());
        foreach (var (file, length) in _files)
        {
            var found = new FileInfo(file);
            if (!found.Exists || found.Length != length)
            {
                throw Removed();
            }
        }
    }

    private void Put(string name, byte[] bytes)
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
            throw FileLimit.Exceeded(file, bytes.Length, failure);
        }

        _files.Add((file, bytes.Length));
    }

    private static IOException Removed() =>
        new("Files of it were removed while it was being written. Let nothing else work on the folder, and run again.");
}
