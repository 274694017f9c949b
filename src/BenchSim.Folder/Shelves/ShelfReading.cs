namespace BenchSim.Folder.Shelves;

/// <summary>
/// A shelf with its rows read when they are asked for: a plan names a few of the library's crops, and reading them all would cost more
/// than the rest of the folder. The user's own rows are read at once, so that every fault in them is found.
/// </summary>
/// <typeparam name="T">What a row becomes.</typeparam>
internal sealed class ShelfReading<T>
    where T : class
{
    private readonly Shelf _shelf;
    private readonly Func<ShelfRow, T?> _read;
    private readonly Dictionary<string, T?> _known = new(StringComparer.Ordinal);

    public ShelfReading(Shelf shelf, Func<ShelfRow, T?> read)
    {
        (_shelf, _read) = (shelf, read);
        foreach (var row in shelf.Rows.Where(row => row.IsUsers))
        {
            _known[row.Id] = read(row);
        }
    }

    /// <summary>What has been read so far, in order of id.</summary>
    public IEnumerable<T> Known => _known.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => pair.Value).OfType<T>();

    /// <summary>Whether the shelf has the id, readable or not, or may have it in a file that could not be read.</summary>
    public bool MayHave(string written) => !_shelf.IsWhole || _shelf.Find(written) is not null;

    /// <summary>The thing that a written name means; null when the shelf has none or the user's row had a fault.</summary>
    public T? Find(string written)
    {
        var id = _shelf.Meant(written);
        if (!_known.TryGetValue(id, out var thing) && _shelf.Find(id) is { } row)
        {
            _known[id] = thing = _read(row);
        }

        return thing;
    }

    /// <inheritdoc cref="Shelf.Meant"/>
    public string Meant(string written) => _shelf.Meant(written);

    /// <inheritdoc cref="Shelf.Nearest"/>
    public string? Nearest(string written) => _shelf.Nearest(written);
}
