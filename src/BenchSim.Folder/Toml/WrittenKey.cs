using BenchSim.Folder.Text;
using BenchSim.Season.Fields;

namespace BenchSim.Folder.Toml;

/// <summary>The value of a key of a section, asked for by the kind of its key.</summary>
internal sealed class WrittenKey(Section section, Field key, CellReader cells) : WrittenCell(cells)
{
    private readonly CellReader _cells = cells;
    private Cell? _cell;

    // Looked up once: a list in the place of a single value is a fault.
    protected override Cell Cell => _cell ??= section.Scalar(key.Name, key.Kind.MayBeEmpty);

    public override void Refuse(string what, string instead)
    {
        if (section.IsList(key.Name))
        {
            _cells.Faults.Add(section.PlaceOf(key.Name), $"{key.Name} {what}", instead);
        }
        else
        {
            base.Refuse(what, instead);
        }
    }

    public override IReadOnlyList<IWritten>? Items(string? form = null, string? instead = null)
    {
        if (!section.Has(key.Name))
        {
            return null;
        }

        var before = _cells.Faults.Count;
        var items = section.List(key.Name, form, instead);
        return _cells.Faults.Count > before ? null : [.. items.Select(item => new WrittenCell(_cells, item))];
    }
}
