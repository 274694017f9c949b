using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>Reads the houses and spaces of site.toml.</summary>
internal sealed class SpaceReader(CellReader cells, SeasonWindow? window, bool saysLatitude)
{
    /// <summary>A mat below 10 C (50 F) warms nothing: no crop of the library comes up well there, and a unit was forgotten.</summary>
    private const double ColdestMatC = 10;

    private readonly Dictionary<string, SourcePlace> _ids = new(StringComparer.Ordinal);
    private readonly HashSet<string> _houseIds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SpaceKind?> _spaceIds = new(StringComparer.Ordinal);

    private readonly HashSet<SpaceKind?> _kinds = [];

    public List<House> Houses { get; } = [];

    public List<Space> Spaces { get; } = [];

    public IReadOnlyDictionary<string, SpaceKind?> SpaceIds => _spaceIds;

    public IReadOnlyCollection<string> HouseIds => _houseIds;

    public void ReadHouses(IReadOnlyList<Section> sections)
    {
        foreach (var section in sections)
        {
            if (ReadHouse(section) is { } house)
            {
                _houseIds.Add(house.Id);
                Houses.Add(house);
            }
        }
    }

    public void ReadSpaces(IReadOnlyList<Section> sections, SourcePlace missingPlace, bool isWhole)
    {
        foreach (var section in sections)
        {
            if (ReadSpace(section) is { } space)
            {
                Spaces.Add(space);
            }
        }

        if (!isWhole || _kinds.Contains(null))
        {
            return;
        }

        if (!_kinds.Contains(SpaceKind.Bench))
        {
            cells.Faults.Add(
                missingPlace,
                "there is no bench, so no tray can grow on",
                "add a [[space]] with kind = \"bench\" and its places"
            );
        }

        if (!_kinds.Contains(SpaceKind.Table))
        {
            cells.Faults.Add(
                missingPlace,
                "there is no hardening table, so no tray can reach the field",
                "add a [[space]] with kind = \"table\" and its places"
            );
        }
    }

    private House? ReadHouse(Section section)
    {
        var house = section.Read(HouseFields.Table, HouseFields.Nothing, cells);
        var isNew = IsNewId(section, house.Id);
        if (house.DayC is not null && !section.Has("night") && section.IsWhole)
        {
            cells.Refuse(section.Scalar("day"), "is given but night is not", "add night, or leave both out for an unheated house");
        }

        if (Math.Max(house.NightC ?? house.VentC, house.DayC ?? house.VentC) > house.VentC)
        {
            var cell = section.Scalar(section.Has("vent") ? "vent" : "night");
            cells.Refuse(
                cell,
                $"leaves the vent set-point of {Words.Temperature(house.VentC, cell.Units)} below the heating",
                "vent at a temperature above night and day"
            );
        }

        if (house.OpensOn is { } date && window is not null && (date < window.Opens || date > window.Closes))
        {
            cells.Refuse(section.Scalar("open"), $"is {Words.Date(date)}, outside the season", SeasonWords(window));
        }

        var (body, heat) = new HouseHeatReader(cells, section).Read(house, saysLatitude);
        return !isNew
            ? null
            : house with
            {
                Name = house.Name.Length > 0 ? house.Name : house.Id,
                DayC = house.NightC is null ? null : house.DayC ?? house.NightC,
                Body = body,
                Heat = heat,
            };
    }

    /// <summary>The season in words, for the second half of a message.</summary>
    public static string SeasonWords(SeasonWindow season) =>
        $"the season runs from {Words.Date(season.Opens)} to {Words.Date(season.Closes)}";

    private Space? ReadSpace(Section section)
    {
        var space = section.Read(SpaceFields.Table, SpaceFields.Nothing, cells);
        var isNew = IsNewId(section, space.Id);
        SpaceKind? kind = space.Kind == SpaceFields.Nothing.Kind ? null : space.Kind;
        _kinds.Add(kind);
        if (isNew)
        {
            _spaceIds[space.Id] = kind;
        }

        space = space with { HouseId = space.HouseId is { } written ? Spelling.Meant(written, _houseIds) : null };
        CheckHouse(section, space.HouseId);
        if (space.IsChamber && section.Has("house"))
        {
            cells.Refuse(section.Scalar("house"), "is not for a chamber, which has a climate of its own", "take it out");
        }
        else if (kind == SpaceKind.Mat && !space.IsChamber && !section.Has("house") && section.IsWhole)
        {
            cells.Faults.Warn(
                section.Place,
                "this mat stands in no house, so trays that are up on it grow outdoors",
                "name its house, or write kind = \"chamber\" for a closed germination chamber"
            );
        }

        var (places, note) = ReadPlaces(section, space, kind == SpaceKind.Mat);
        CheckMatTemperature(section, kind, space.MatC);
        var changes = ReadChanges(section);
        var power = new MatPowerReader(cells, section).Read(kind, changes.Select(change => change.Places).Append(places ?? 0).Max());
        return !isNew || kind is null || places is null
            ? null
            : space with
            {
                Name = space.Name.Length > 0 ? space.Name : space.Id,
                HouseId = space.HouseId is { } house && _houseIds.Contains(house) ? house : null,
                Places = places.Value,
                MatC = kind == SpaceKind.Mat ? space.MatC : null,
                Changes = changes,
                Power = power,
                PlacesNote = note,
            };
    }

    // False where there is no id, or one that cannot be.
    private bool IsNewId(Section section, string id)
    {
        if (id.Length == 0)
        {
            return false;
        }

        var cell = section.Scalar("id");
        if (id.Contains('|', StringComparison.Ordinal))
        {
            cells.Refuse(cell, $"is {Words.Quote(id)}, which holds a |", "leave the | out: it separates ids in crops.csv");
            return false;
        }

        if (!_ids.TryAdd(id, cell.Place))
        {
            cells.Refuse(
                cell,
                $"{Words.Quote(id)} is taken already, on line {_ids[id].Line}",
                "give every house and space an id of its own"
            );
            return false;
        }

        return true;
    }

    private void CheckHouse(Section section, string? id)
    {
        if (id is null || _houseIds.Contains(id))
        {
            return;
        }

        var near = Spelling.Nearest(id, _houseIds);
        cells.Faults.Add(
            section.Scalar("house").Place,
            $"there is no house {Words.Quote(id)}",
            near is not null
                ? $"did you mean {Words.Quote(near)}"
                : "name a [[house]] of this file, or leave the line out for a space outdoors"
        );
    }

    private (int? Places, string Note) ReadPlaces(Section section, Space space, bool isMat)
    {
        if (isMat && section.Has("usable"))
        {
            cells.Refuse(section.Scalar("usable"), "is not for a mat, on which trays lie side by side", "take it out");
        }

        if (section.Has("places"))
        {
            foreach (var key in SpaceFields.Table.Find("places")!.InsteadOf.Where(section.Has))
            {
                cells.Refuse(section.Scalar(key), "is given together with places", "write places, or length and width, not both");
            }

            return (space.Places < 0 ? null : space.Places, space.PlacesNote);
        }

        if (!section.Has("length") || !section.Has("width"))
        {
            if (section.IsWhole)
            {
                cells.Faults.Add(section.Place, "[[space]] has no places", "add a line such as places = 40, or length and width");
            }

            return (null, "");
        }

        // A share that could not be read leaves the usual one, and its fault.
        if (space.Size is not { LengthM: { } length, WidthM: { } width } size)
        {
            return (null, "");
        }

        var places = isMat ? BenchPlaces.OnMat(length, width) : BenchPlaces.Usable(length, width, size.Usable);
        if (places > SpaceFields.MostPlaces)
        {
            cells.Refuse(
                section.Scalar("length"),
                $"and width make {places} places",
                $"write the sizes of one space, of at most {SpaceFields.MostPlaces} places"
            );
            return (null, "");
        }

        var sides = $"{Side(section.Scalar("length"), length)} by {Side(section.Scalar("width"), width)}";
        return isMat
            ? (places, $"{sides}: {places} whole trays side by side")
            : (places, $"{sides}: {BenchPlaces.Of(length, width)} whole trays, {Words.Number(size.Usable * 100)} % of them used");
    }

    // As it is written, with the unit that a bare number has.
    private static string Side(Cell cell, double metres) =>
        QuantityText.TryNumber(cell.Text, out _) ? Quantity.Length.Write(metres, cell.Units) : cell.Text;

    private void CheckMatTemperature(Section section, SpaceKind? kind, double? temperature)
    {
        if (kind == SpaceKind.Mat && !section.Has("temperature") && section.IsWhole)
        {
            cells.Faults.Add(section.Place, "this mat has no temperature", "add a line such as temperature = \"75 F\"");
        }
        else if (kind is SpaceKind.Bench or SpaceKind.Table && section.Has("temperature"))
        {
            cells.Refuse(section.Scalar("temperature"), "is only for a mat", "take it out, or write kind = \"mat\"");
        }
        else if (kind == SpaceKind.Mat && temperature < ColdestMatC)
        {
            var cell = section.Scalar("temperature");
            cells.Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, which is {Words.Temperature(temperature.Value, cell.Units)}: too cold for a heat mat",
                "write the temperature of the medium on the mat with its unit, such as \"75 F\" or \"24 C\""
            );
        }
    }

    private ImmutableArray<PlacesFrom> ReadChanges(Section section)
    {
        var changes = new SortedDictionary<DateOnly, int>();
        foreach (var written in section.Sections("changes"))
        {
            var change = written.Read(SpaceFields.Change, new PlacesFrom(DateOnly.MinValue, -1), cells);
            if (change.From == DateOnly.MinValue)
            {
                continue;
            }

            if (change.From < window?.Opens)
            {
                cells.Refuse(
                    written.Scalar("from"),
                    $"is {Words.Date(change.From)}, before the season opens",
                    $"{SeasonWords(window)}; write the first number in places"
                );
            }
            else if (change.Places >= 0 && !changes.TryAdd(change.From, change.Places))
            {
                cells.Refuse(written.Scalar("from"), $"is {Words.Date(change.From)} a second time", "give one number of places for a date");
            }
        }

        return [.. changes.Select(change => new PlacesFrom(change.Key, change.Value))];
    }
}
