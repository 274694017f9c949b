using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>Reads the mishaps of site.toml.</summary>
internal sealed class MishapReader(
    CellReader cells,
    SeasonWindow? window,
    IReadOnlyCollection<string> houses,
    IReadOnlyCollection<string> spaces
)
{
    private readonly Dictionary<string, SourcePlace> _ids = new(StringComparer.Ordinal);

    /// <summary>Mishaps without a fault.</summary>
    public List<Mishap> Mishaps { get; } = [];

    /// <summary>Where each names its crop: whether there is one is known once the crops are read.</summary>
    public List<Cell> Crops { get; } = [];

    public void Read(IReadOnlyList<Section> sections)
    {
        foreach (var section in sections)
        {
            var before = cells.Faults.Count;
            var mishap = section.Read(MishapFields.Table, MishapFields.Nothing, cells);
            mishap = mishap with
            {
                HouseId = mishap.HouseId is { } house ? Spelling.Meant(house, houses) : null,
                SpaceId = mishap.SpaceId is { } space ? Spelling.Meant(space, spaces) : null,
            };
            CheckId(section, mishap.Id);
            CheckDates(section, mishap);
            CheckNamed(section, "house", mishap.HouseId, houses);
            CheckNamed(section, "space", mishap.SpaceId, spaces);
            if (mishap.CropId is not null)
            {
                Crops.Add(section.Scalar("crop"));
            }

            if (cells.Faults.Count == before)
            {
                Mishaps.Add(mishap with { Name = mishap.Name.Length > 0 ? mishap.Name : mishap.Id });
            }
        }
    }

    private void CheckId(Section section, string id)
    {
        if (id.Length > 0 && !_ids.TryAdd(id, section.Scalar("id").Place))
        {
            cells.Refuse(
                section.Scalar("id"),
                $"{Words.Quote(id)} is taken already, on line {_ids[id].Line}",
                "give every mishap an id of its own"
            );
        }
    }

    private void CheckDates(Section section, Mishap mishap)
    {
        if (mishap.From == MishapFields.Nothing.From || mishap.To == MishapFields.Nothing.To)
        {
            return;
        }

        if (mishap.To < mishap.From)
        {
            cells.Refuse(
                section.Scalar("to"),
                $"is {Words.Date(mishap.To)}, before from",
                $"write {Words.Date(mishap.From)} or a later date"
            );
            return;
        }

        foreach (var (key, date) in new[] { ("from", mishap.From), ("to", mishap.To) })
        {
            if (window is not null && (date < window.Opens || date > window.Closes))
            {
                cells.Refuse(section.Scalar(key), $"is {Words.Date(date)}, outside the season", SpaceReader.SeasonWords(window));
            }
        }
    }

    private void CheckNamed(Section section, string kind, string? id, IReadOnlyCollection<string> known)
    {
        // Where none could be read, that is said elsewhere.
        if (id is not null && known.Count > 0 && !known.Contains(id, StringComparer.Ordinal))
        {
            var near = Spelling.Nearest(id, known);
            cells.Faults.Add(
                section.Scalar(kind).Place,
                $"there is no {kind} {Words.Quote(id)}",
                near is null ? $"name a {kind} of site.toml" : $"did you mean {Words.Quote(near)}"
            );
        }
    }
}
