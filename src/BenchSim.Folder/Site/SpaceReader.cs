using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>Reads the houses and spaces of site.toml.</summary>
internal sealed class SpaceReader(CellReader cells, SeasonWindow? window)
{
    /// <summary>Most places of one space: a bench of a hectare holds about 60,000 trays.</summary>
    private const int MostPlaces = 100_000;

    /// <summary>A mat below 10 C (50 F) warms nothing: no crop of the library comes up well there, and a unit was forgotten.</summary>
    private const double ColdestMatC = 10;

    private static readonly (string Word, SpaceKind Value)[] Kinds =
    [
        ("mat", SpaceKind.Mat),
        ("bench", SpaceKind.Bench),
        ("table", SpaceKind.Table),
    ];

    private readonly Dictionary<string, SourcePlace> _ids = new(StringComparer.Ordinal);
    private readonly HashSet<string> _houseIds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SpaceKind?> _spaceIds = new(StringComparer.Ordinal);

    private readonly HashSet<SpaceKind?> _kinds = [];

    public List<House> Houses { get; } = [];

    public List<Space> Spaces { get; } = [];

    public IReadOnlyDictionary<string, SpaceKind?> SpaceIds => _spaceIds;

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

    public void ReadSpaces(IReadOnlyList<Section> sections, SourcePlace fileStart, bool isWhole)
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
                fileStart,
                "there is no bench, so no tray can grow on",
                "add a [[space]] with kind = \"bench\" and its places"
            );
        }

        if (!_kinds.Contains(SpaceKind.Table))
        {
            cells.Faults.Add(
                fileStart,
                "there is no hardening table, so no tray can reach the field",
                "add a [[space]] with kind = \"table\" and its places"
            );
        }
    }

    private House? ReadHouse(Section section)
    {
        var id = ReadId(section, "\"main\"");
        var night = cells.Temperature(section.Scalar("night"));
        var dayCell = section.Scalar("day");
        var day = cells.Temperature(dayCell);
        if (day is not null && !section.Has("night") && section.IsWhole)
        {
            cells.Refuse(dayCell, "is given but night is not", "add night, or leave both out for an unheated house");
        }

        var ventCell = section.Scalar("vent");
        var vent = cells.Temperature(ventCell) ?? 24;
        if (Math.Max(night ?? vent, day ?? vent) > vent)
        {
            var cell = ventCell.IsBlank ? section.Scalar("night") : ventCell;
            cells.Refuse(
                cell,
                $"leaves the vent set-point of {Words.Temperature(vent, cell.Units)} below the heating",
                "vent at a temperature above night and day"
            );
        }

        var (opening, opensOn) = ReadOpening(section.Scalar("open"));
        var lift = cells.Difference(section.Scalar("day_lift"), 0, 30) ?? 8;
        var name = cells.Name(section.Scalar("name"));
        var heat = new HouseHeatReader(cells, section).Read(night);
        return id is null
            ? null
            : new House
            {
                Id = id,
                Name = name ?? id,
                NightC = night,
                DayC = night is null ? null : day ?? night,
                VentC = vent,
                DayLiftK = lift,
                Opening = opening,
                OpensOn = opensOn,
                Heat = heat,
            };
    }

    private (HouseOpening Opening, DateOnly? OpensOn) ReadOpening(Cell cell)
    {
        if (cell.IsBlank || string.Equals(cell.Text, "all season", StringComparison.OrdinalIgnoreCase))
        {
            return (HouseOpening.AllSeason, null);
        }

        if (string.Equals(cell.Text, "when needed", StringComparison.OrdinalIgnoreCase))
        {
            return (HouseOpening.WhenNeeded, null);
        }

        if (!char.IsAsciiDigit(cell.Text[0]))
        {
            var near = Spelling.Nearest(cell.Text, ["all season", "when needed"]);
            cells.Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}",
                near is null ? "write \"all season\", \"when needed\" or a date" : $"did you mean {Words.Quote(near)}"
            );
            return (HouseOpening.AllSeason, null);
        }

        if (cells.Date(cell) is { } date && window is not null && (date < window.Opens || date > window.Closes))
        {
            cells.Refuse(cell, $"is {Words.Date(date)}, outside the season", SeasonWords(window));
        }

        return DateOnly.TryParseExact(cell.Text, "yyyy-MM-dd", out var opensOn)
            ? (HouseOpening.FromDate, opensOn)
            : (HouseOpening.AllSeason, null);
    }

    /// <summary>The season in words, for the second half of a message.</summary>
    public static string SeasonWords(SeasonWindow season) =>
        $"the season runs from {Words.Date(season.Opens)} to {Words.Date(season.Closes)}";

    private Space? ReadSpace(Section section)
    {
        var id = ReadId(section, "\"mats\"");
        var kind = cells.Choice(section.Required("kind", "\"bench\""), Kinds);
        _kinds.Add(kind);
        if (id is not null)
        {
            _spaceIds[id] = kind;
        }

        var house = ReadHouseId(section.Scalar("house"));
        var (places, note) = ReadPlaces(section);
        var mat = ReadMatTemperature(section, kind);
        var aisle = cells.Whole(section.Scalar("aisle_places"), 0, MostPlaces) ?? 0;
        var unit = cells.Whole(section.Scalar("unit_places"), 1, MostPlaces);
        var changes = ReadChanges(section);
        var power = new MatPowerReader(cells, section).Read(kind, changes.Select(change => change.Places).Append(places ?? 0).Max());
        var name = cells.Name(section.Scalar("name"));
        return id is null || kind is null || places is null
            ? null
            : new Space
            {
                Id = id,
                Name = name ?? id,
                Kind = kind.Value,
                HouseId = house,
                Places = places.Value,
                Changes = changes,
                MatC = mat,
                Power = power,
                AislePlaces = aisle,
                UnitPlaces = unit,
                PlacesNote = note,
            };
    }

    private string? ReadId(Section section, string example)
    {
        var cell = section.Required("id", example);
        if (cells.Name(cell) is not { } id)
        {
            return null;
        }

        if (id.Contains('|', StringComparison.Ordinal))
        {
            cells.Refuse(cell, $"is {Words.Quote(id)}, which holds a |", "leave the | out: it separates ids in crops.csv");
            return null;
        }

        if (!_ids.TryAdd(id, cell.Place))
        {
            cells.Refuse(
                cell,
                $"{Words.Quote(id)} is taken already, on line {_ids[id].Line}",
                "give every house and space an id of its own"
            );
            return null;
        }

        return id;
    }

    private string? ReadHouseId(Cell cell)
    {
        if (cells.Name(cell) is not { } id)
        {
            return null;
        }

        if (_houseIds.Contains(id))
        {
            return id;
        }

        var near = Spelling.Nearest(id, _houseIds);
        cells.Faults.Add(
            cell.Place,
            $"there is no house {Words.Quote(id)}",
            near is not null
                ? $"did you mean {Words.Quote(near)}"
                : "name a [[house]] of this file, or leave the line out for a space outdoors"
        );
        return null;
    }

    private (int? Places, string Note) ReadPlaces(Section section)
    {
        var (placesCell, lengthCell, widthCell, usableCell) = (
            section.Scalar("places"),
            section.Scalar("length"),
            section.Scalar("width"),
            section.Scalar("usable")
        );
        var length = cells.Length(lengthCell, 0, 1000);
        var width = cells.Length(widthCell, 0, 1000);
        var usable = cells.Fraction(usableCell, aboveNone: true);
        if (section.Has("places"))
        {
            foreach (var cell in new[] { lengthCell, widthCell, usableCell }.Where(cell => section.Has(cell.Name)))
            {
                cells.Refuse(cell, "is given together with places", "write places, or length and width, not both");
            }

            return (cells.Whole(placesCell, 0, MostPlaces), "given");
        }

        if (!section.Has("length") || !section.Has("width"))
        {
            if (section.IsWhole)
            {
                cells.Faults.Add(section.Place, "[[space]] has no places", "add a line such as places = 40, or length and width");
            }

            return (null, "");
        }

        if (length is null || width is null || (usable is null && !usableCell.IsBlank))
        {
            return (null, "");
        }

        var whole = BenchPlaces.Of(length.Value, width.Value);
        var share = usable ?? 0.95;
        var places = BenchPlaces.Usable(length.Value, width.Value, share);
        if (places > MostPlaces)
        {
            cells.Refuse(lengthCell, $"and width make {places} places", $"write the sizes of one space, of at most {MostPlaces} places");
            return (null, "");
        }

        return (
            places,
            $"{Side(lengthCell, length.Value)} by {Side(widthCell, width.Value)}: {whole} whole trays, {Words.Number(share * 100)} % of them used"
        );
    }

    // As it is written, with the unit that a bare number has.
    private static string Side(Cell cell, double metres) =>
        QuantityText.TryNumber(cell.Text, out _) ? Quantity.Length.Write(metres, cell.Units) : cell.Text;

    private double? ReadMatTemperature(Section section, SpaceKind? kind)
    {
        var cell = section.Scalar("temperature");
        var temperature = cells.Temperature(cell);
        if (kind == SpaceKind.Mat && !section.Has("temperature") && section.IsWhole)
        {
            cells.Faults.Add(section.Place, "this mat has no temperature", "add a line such as temperature = \"75 F\"");
        }
        else if (kind is SpaceKind.Bench or SpaceKind.Table && section.Has("temperature"))
        {
            cells.Refuse(cell, "is only for a mat", "take it out, or write kind = \"mat\"");
        }
        else if (kind == SpaceKind.Mat && temperature < ColdestMatC)
        {
            cells.Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, which is {Words.Temperature(temperature.Value, cell.Units)}: too cold for a heat mat",
                "write the temperature of the medium on the mat with its unit, such as \"75 F\" or \"24 C\""
            );
        }

        return kind == SpaceKind.Mat ? temperature : null;
    }

    private ImmutableArray<PlacesFrom> ReadChanges(Section section)
    {
        var changes = new SortedDictionary<DateOnly, int>();
        foreach (var change in section.Sections("changes"))
        {
            var fromCell = change.Required("from", "2027-05-01");
            var from = cells.Date(fromCell);
            var places = cells.Whole(change.Required("places", "40"), 0, MostPlaces);
            if (from < window?.Opens)
            {
                cells.Refuse(
                    fromCell,
                    $"is {Words.Date(from.Value)}, before the season opens",
                    $"{SeasonWords(window)}; write the first number in places"
                );
            }
            else if (from is not null && places is not null && !changes.TryAdd(from.Value, places.Value))
            {
                cells.Refuse(fromCell, $"is {Words.Date(from.Value)} a second time", "give one number of places for a date");
            }
        }

        return [.. changes.Select(change => new PlacesFrom(change.Key, change.Value))];
    }
}
