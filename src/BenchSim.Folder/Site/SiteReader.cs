using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Folder.Variants;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>Reads site.toml.</summary>
internal sealed class SiteReader
{
    private static readonly (string Word, UnitSystem Value)[] UnitWords =
    [
        ("metric", UnitSystem.Metric),
        ("imperial", UnitSystem.Imperial),
    ];

    private readonly FaultList _faults;
    private readonly CellReader _cells;
    private readonly TomlTable _root;
    private readonly bool _isWhole;
    private UnitSystem _units;

    private readonly VariantFile? _variant;

    private SiteReader(FileText file, FaultList faults, VariantFile? variant)
    {
        (_faults, _cells, _variant) = (faults, new CellReader(faults), variant);
        _root = TomlText.Read(file, faults, out _isWhole);
        if (variant is not null)
        {
            _root = new SiteOverlay(variant, faults).Lay(_root);
            _isWhole &= variant.IsWhole;
        }
    }

    /// <summary>Reads the file.</summary>
    /// <param name="file">Its text.</param>
    /// <param name="faults">Takes the faults.</param>
    /// <param name="variant">A variant to lay over it; null for none.</param>
    public static SiteDraft Read(FileText file, FaultList faults, VariantFile? variant = null)
    {
        if (file.Text.AsSpan().Trim().IsEmpty)
        {
            faults.Add(
                new SourcePlace(file.Name, 1, 1),
                "the file is empty",
                "begin with [site] and a name; \"benchsim new\" lays down a folder to fill in"
            );
            return new SiteDraft();
        }

        return new SiteReader(file, faults, variant).ReadAll();
    }

    private SiteDraft ReadAll()
    {
        var root = new Section("", _root, _faults, _units, _isWhole);
        var site = SectionOf("site", isRequired: true);
        _units = site is null ? UnitSystem.Metric : _cells.Choice(site.Scalar("units"), UnitWords) ?? UnitSystem.Metric;
        var window = SectionOf("season", isRequired: true) is { } season ? ReadWindow(season) : null;
        var spaces = new SpaceReader(_cells, window);
        var before = _faults.Count;
        spaces.ReadHouses(root.With(_units).Sections("house"));
        spaces.ReadSpaces(root.With(_units).Sections("space"), _variant?.RemovePlace ?? _root.Place, _isWhole);
        var hasGoodSpaces = _faults.Count == before && _isWhole;
        var rules = new RulesReader(_cells);
        return new SiteDraft
        {
            Name = site is null ? null : _cells.Name(site.Required("name", "\"Our farm\"")),
            Question = site?.Scalar("question", mayBeEmpty: true).Text ?? "",
            Units = _units,
            Window = window,
            Houses = [.. spaces.Houses],
            Spaces = [.. spaces.Spaces],
            SpaceIds = WithRemoved(spaces.SpaceIds),
            HasGoodSpaces = hasGoodSpaces,
            Rules = rules.Read(SectionOf("rules"), SectionOf("relief"), SectionOf("work_minutes"), SectionOf("seed"), SectionOf("prices")),
            Weather = SectionOf("weather", isRequired: true) is { } weather ? new WeatherSectionReader(_cells).Read(weather, _units) : null,
            Play = SectionOf("play") is { } play ? ReadPlay(play) : new PlaySettings(),
        };
    }

    // A crop that lists a space which a variant takes away is reported where it is taken away, and not again in crops.csv.
    private IReadOnlyDictionary<string, SpaceKind?> WithRemoved(IReadOnlyDictionary<string, SpaceKind?> ids)
    {
        if (_variant is null || _variant.Removed.Count == 0)
        {
            return ids;
        }

        var all = new Dictionary<string, SpaceKind?>(ids, StringComparer.Ordinal);
        foreach (var removed in _variant.Removed)
        {
            all.TryAdd(removed.Text, null);
        }

        return all;
    }

    private Section? SectionOf(string name, bool isRequired = false)
    {
        if (!_root.Entries.TryGetValue(name, out var entry))
        {
            if (isRequired && _isWhole)
            {
                _faults.Add(_root.Place, $"there is no section [{name}]", $"add a line [{name}] with its keys below it");
            }

            return null;
        }

        if (entry.Value is TomlTable table)
        {
            return new Section(name, table, _faults, _units, _isWhole);
        }

        _faults.Add(entry.Value.Place, $"{name} is not a section", $"write [{name}] with its keys below it");
        return null;
    }

    private SeasonWindow? ReadWindow(Section season)
    {
        var opens = _cells.Date(season.Required("opens", "2027-01-18"));
        var closesCell = season.Required("closes", "2027-06-30");
        if (opens is not { } first || _cells.Date(closesCell) is not { } last)
        {
            return null;
        }

        if (last < first)
        {
            _cells.Refuse(closesCell, $"is {Words.Date(last)}, before the season opens on {Words.Date(first)}", "write a later date");
            return null;
        }

        if (last.DayNumber - first.DayNumber > 730)
        {
            _cells.Refuse(
                closesCell,
                $"is {last.DayNumber - first.DayNumber} days after the season opens",
                "a season lasts at most two years"
            );
            return null;
        }

        return new SeasonWindow(first, last);
    }

    private PlaySettings ReadPlay(Section play)
    {
        var seedCell = play.Scalar("seed");
        var seed = 1UL;
        if (
            !seedCell.IsBlank
            && !ulong.TryParse(
                seedCell.Text,
                System.Globalization.NumberStyles.None,
                System.Globalization.CultureInfo.InvariantCulture,
                out seed
            )
        )
        {
            _cells.Refuse(seedCell, $"is {Words.Quote(seedCell.Text)}", "write a whole number, 0 or more");
        }

        return new PlaySettings(_cells.Whole(play.Scalar("seasons"), 1) ?? 1000, seed);
    }
}
