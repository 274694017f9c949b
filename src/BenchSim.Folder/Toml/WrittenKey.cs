using BenchSim.Folder.Text;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Toml;

/// <summary>The value of a key of a section, asked for by the kind of its field.</summary>
internal sealed class WrittenKey(Section section, string key, CellReader cells) : WrittenCell(cells)
{
    private readonly CellReader _cells = cells;
    private Cell? _cell;

    // Looked up once: a list in the place of a single value is a fault.
    protected override Cell Cell => _cell ??= section.Scalar(key);

    public override void Refuse(string what, string instead)
    {
        if (section.IsList(key))
        {
            _cells.Faults.Add(section.PlaceOf(key), $"{key} {what}", instead);
        }
        else
        {
            base.Refuse(what, instead);
        }
    }

    public override IReadOnlyList<IWritten>? Items(string? form = null, string? instead = null)
    {
        if (!section.Has(key))
        {
            return null;
        }

        var before = _cells.Faults.Count;
        var items = section.List(key, form, instead);
        return _cells.Faults.Count > before ? null : [.. items.Select(item => new WrittenCell(_cells, item))];
    }
}
