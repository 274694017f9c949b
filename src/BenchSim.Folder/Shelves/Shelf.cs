using System.Collections.Immutable;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Library;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Shelves;

/// <summary>
/// The built-in library with the user's table over it. A user's row whose id is in the library overrides the cells that are filled; a new
/// id stands alone or, with "like", borrows its blank cells from a relative.
/// </summary>
internal sealed class Shelf
{
    /// <summary>Through how many others a row may borrow.</summary>
    public const int MostLenders = 5;

    // Rows that wait for each other to be finished: each takes room on the stack.
    private const int DeepestChain = 500;

    private readonly CellReader _cells;
    private readonly string _thing;
    private readonly Dictionary<string, ShelfRow> _rows = new(StringComparer.Ordinal);
    private readonly Dictionary<string, CsvRow> _users = new(StringComparer.Ordinal);
    private readonly HashSet<string> _beingLent = new(StringComparer.Ordinal);
    private ShelfNames? _names;

    private Shelf(CellReader cells, string thing, bool isWhole) => (_cells, _thing, IsWhole) = (cells, thing, isWhole);

    /// <summary>False when the user's file is there but could not be read: an id that is not on the shelf may be in it.</summary>
    public bool IsWhole { get; }

    /// <summary>Every row, in order of id.</summary>
    public IEnumerable<ShelfRow> Rows => _rows.Values.OrderBy(row => row.Id, StringComparer.Ordinal);

    /// <summary>Puts the shelf together.</summary>
    /// <param name="library">Rows of the built-in library.</param>
    /// <param name="users">The user's rows; empty when there are none, or they could not be read.</param>
    /// <param name="isWhole">False when the user's table is there but could not be read.</param>
    /// <param name="cells">Reads cells and takes faults.</param>
    /// <param name="thing">What a row is, in words.</param>
    public static Shelf Of(ImmutableArray<LibraryRow> library, IReadOnlyList<CsvRow> users, bool isWhole, CellReader cells, string thing)
    {
        var shelf = new Shelf(cells, thing, isWhole);
        foreach (var row in library)
        {
            shelf._rows[row.Id] = FromLibrary(row);
        }

        foreach (var row in users)
        {
            shelf.Take(row);
        }

        // From here on the names of the user's rows count too.
        shelf._names = null;
        foreach (var id in shelf._users.Keys.ToArray())
        {
            shelf.Finish(id);
        }

        shelf._names = null;

        return shelf;
    }

    /// <summary>The row that a written name means; null when there is none.</summary>
    public ShelfRow? Find(string written) => _rows.GetValueOrDefault(Meant(written));

    /// <summary>The id that a written name means, see <see cref="ShelfNames"/>; the written name itself where there is none.</summary>
    public string Meant(string written) =>
        _rows.ContainsKey(written) ? written : (_names ??= new ShelfNames(_rows.Values)).Find(written) ?? written;

    /// <summary>The id that was probably meant by one that is not on the shelf: by id, or by the name shown to people.</summary>
    public string? Nearest(string written) =>
        _rows.Values.FirstOrDefault(row => string.Equals(row["name"].Text, written, StringComparison.OrdinalIgnoreCase))?.Id
        ?? Spelling.Nearest(written, Rows.Select(row => row.Id));

    private static ShelfRow FromLibrary(LibraryRow row)
    {
        var filled = new Dictionary<string, ShelfCell>(StringComparer.Ordinal);
        foreach (var (column, text) in row.Cells)
        {
            if (text.Length > 0)
            {
                var source = row.Sources.GetValueOrDefault(column) ?? new Provenance(Trust.Assumption, "");
                filled[column] = new ShelfCell(new Cell(text, default, column, UnitSystem.Metric), source);
            }
        }

        return new ShelfRow(row.Id, default, filled);
    }

    private void Take(CsvRow row)
    {
        var cell = row["id"];
        if (cell.IsBlank)
        {
            if (row.Has("id"))
            {
                _cells.Refuse(cell, "is empty", $"name the {_thing} of this row");
            }
        }
        else if (_cells.Name(cell) is { } written && Meant(written) is var id && !_users.TryAdd(id, row))
        {
            _cells.Refuse(cell, $"{Words.Quote(id)} has a row already, on line {_users[id].Line}", $"keep one row for a {_thing}");
        }
    }

    // Lays a user's row over the library's or the relative's; a relative of the user's is finished first.
    private ShelfRow? Finish(string id)
    {
        var row = _users[id];
        if (_rows.TryGetValue(id, out var below) && below.IsUsers)
        {
            return below;
        }

        var filled = below is null ? new Dictionary<string, ShelfCell>(StringComparer.Ordinal) : new(below.Cells, StringComparer.Ordinal);
        _beingLent.Add(id);
        var hasLender = Borrow(id, row["like"], below is not null, filled, out var lenders);
        _beingLent.Remove(id);
        foreach (var cell in row.Cells.Where(cell => !cell.IsBlank && cell.Name is not ("id" or "like")))
        {
            filled[cell.Name] = new ShelfCell(cell, OwnLog.SourceOf(row[CropFields.Source].Text, cell.Name));
        }

        return _rows[id] = new ShelfRow(id, row["id"].Place, filled) { HasNoLender = !hasLender, Lenders = lenders };
    }

    // False when the row names a lender that cannot lend.
    private bool Borrow(string id, Cell like, bool isInLibrary, Dictionary<string, ShelfCell> filled, out int lenders)
    {
        lenders = 0;
        if (_cells.Name(like) is not { } written)
        {
            return like.IsBlank;
        }

        var lender = Spelling.Meant(written, _users.Keys);
        lender = _users.ContainsKey(lender) ? lender : Meant(lender);

        if (isInLibrary)
        {
            _cells.Refuse(
                like,
                $"is not for {Words.Quote(id)}, which the built-in library has",
                "leave like empty, or give the crop an id of its own"
            );
            return false;
        }

        if (_beingLent.Contains(lender))
        {
            _cells.Refuse(like, $"leads from {Words.Quote(id)} back to itself", "name a crop that does not borrow from this one");
            return false;
        }

        if (_beingLent.Count > DeepestChain)
        {
            TooLong(like, id);
            return false;
        }

        var row = _users.ContainsKey(lender) ? Finish(lender) : Find(lender);
        if (row?.Lenders >= MostLenders)
        {
            TooLong(like, id);
            return false;
        }

        if (row is null)
        {
            var near = Spelling.Nearest(
                lender,
                Rows.Select(each => each.Id).Concat(_users.Keys).Where(each => !string.Equals(each, id, StringComparison.Ordinal))
            );
            _cells.Faults.Add(
                like.Place,
                $"there is no crop {Words.Quote(lender)} to borrow from",
                near is null ? "name a crop of the built-in library or of this file" : $"did you mean {Words.Quote(near)}"
            );
            return false;
        }

        foreach (var (column, cell) in row.Cells.Where(pair => pair.Key is not ("name" or CropFields.Source)))
        {
            filled[column] = new ShelfCell(cell.Cell, BorrowedFrom(row, cell.Source));
        }

        lenders = row.Lenders + 1;
        return !row.HasNoLender;
    }

    private void TooLong(Cell like, string id) =>
        _cells.Refuse(
            like,
            $"makes {Words.Quote(id)} borrow through more than {MostLenders} others",
            "name the one that the values come from"
        );

    private static Provenance BorrowedFrom(ShelfRow row, Provenance source)
    {
        var name = row["name"].IsBlank ? row.Id : row["name"].Text;
        var origin = source switch
        {
            { Trust: Trust.User, Source.Length: > 0 } => $"as written in this folder, {source.Source}",
            { Trust: Trust.User } => "as written in this folder",
            _ => source.Source,
        };
        return new Provenance(Trust.Borrowed, origin.Length == 0 ? $"from {name}" : $"from {name}: {origin}");
    }
}
