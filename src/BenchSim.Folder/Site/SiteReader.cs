using BenchSim.Folder.Faults;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>Reads the tables of site.toml.</summary>
/// <param name="root">The tables.</param>
/// <param name="isWhole">False when the grammar was broken, so that a key that is missing may only be unreadable.</param>
/// <param name="cells">Reads values and takes the faults.</param>
internal sealed class SiteReader(TomlTable root, bool isWhole, CellReader cells)
{
    private const int LongestSeason = 730;

    private UnitSystem _units;

    /// <summary>Reads all sections.</summary>
    /// <param name="missingPlace">Where a fault stands that says which spaces are missing.</param>
    public SiteDraft Read(SourcePlace missingPlace)
    {
        var top = new Section("", root, cells.Faults, _units, isWhole);
        var site = SectionOf("site", isRequired: true);
        var scenario = site?.Read(ScenarioFields.Site, ScenarioFields.Nothing, cells) ?? ScenarioFields.Nothing;
        _units = scenario.Units;
        cells.DateOrder = scenario.DateOrder;
        var window = SectionOf("season", isRequired: true) is { } season ? ReadWindow(season) : null;
        var spaces = new SpaceReader(cells, window, site?.Has("latitude") != false);
        var before = cells.Faults.Count;
        spaces.ReadHouses(UpTo(HouseFields.Most, "houses that are kept alike", top.With(_units).Sections("house")));
        spaces.ReadSpaces(UpTo(SpaceFields.Most, "spaces that are used alike", top.With(_units).Sections("space")), missingPlace, isWhole);
        var areGood = cells.Faults.Count == before && isWhole;
        var mishaps = new MishapReader(cells, window, spaces.HouseIds, [.. spaces.SpaceIds.Keys]);
        mishaps.Read(top.With(_units).Sections("mishap"));
        return new SiteDraft
        {
            Window = window,
            SpaceIds = spaces.SpaceIds,
            HasGoodSpaces = areGood,
            MishapCrops = [.. mishaps.Crops],
            Scenario = scenario with
            {
                Window = window ?? ScenarioFields.Nothing.Window,
                Houses = [.. spaces.Houses],
                Spaces = [.. spaces.Spaces],
                Mishaps = [.. mishaps.Mishaps],
                Rules = new RulesReader(cells).Read(SectionOf),
                Play = SectionOf("play")?.Read(ScenarioFields.Play, scenario.Play, cells) ?? scenario.Play,
            },
            Weather = SectionOf("weather", isRequired: true) is { } weather ? new WeatherSectionReader(cells).Read(weather, _units) : null,
        };
    }

    private IReadOnlyList<Section> UpTo(int most, string alike, IReadOnlyList<Section> sections)
    {
        if (sections.Count > most)
        {
            var heading = FolderReference.HeadingOf(sections[most].Name);
            cells.Faults.Add(
                sections[most].Place,
                $"the site has {sections.Count} {heading}, and may have up to {most}",
                $"put {alike} into one"
            );
        }

        return sections;
    }

    private Section? SectionOf(string name) => SectionOf(name, isRequired: false);

    private Section? SectionOf(string name, bool isRequired)
    {
        if (!root.Entries.TryGetValue(name, out var entry))
        {
            if (isRequired && isWhole)
            {
                cells.Faults.Add(root.Place, $"there is no section [{name}]", $"add a line [{name}] with its keys below it");
            }

            return null;
        }

        if (entry.Value is TomlTable table)
        {
            return new Section(name, table, cells.Faults, _units, isWhole);
        }

        cells.Faults.Add(entry.Value.Place, $"{name} is not a section", $"write [{name}] with its keys below it");
        return null;
    }

    private SeasonWindow? ReadWindow(Section season)
    {
        var before = cells.Faults.Count;
        var window = season.Read(ScenarioFields.Season, ScenarioFields.Nothing.Window, cells);
        if (cells.Faults.Count > before || window.Opens == DateOnly.MinValue || window.Closes == DateOnly.MaxValue)
        {
            return null;
        }

        var days = window.Closes.DayNumber - window.Opens.DayNumber;
        if (days is >= 0 and <= LongestSeason)
        {
            return window;
        }

        var closes = season.Scalar("closes");
        if (days < 0)
        {
            cells.Refuse(
                closes,
                $"is {Words.Date(window.Closes)}, before the season opens on {Words.Date(window.Opens)}",
                "write a later date"
            );
        }
        else
        {
            cells.Refuse(closes, $"is {days} days after the season opens", "a season lasts at most two years");
        }

        return null;
    }
}
