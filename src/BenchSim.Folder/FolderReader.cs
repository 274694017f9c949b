using System.Collections.Immutable;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Logbook;
using BenchSim.Folder.Plan;
using BenchSim.Folder.Shelves;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Folder.Variants;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Folder;

/// <summary>One reading of a folder: every file, every check, one pass.</summary>
internal sealed class FolderReader
{
    private readonly FaultList _faults = new();
    private readonly FileReader _files;
    private readonly CellReader _cells;
    private readonly string? _variantName;
    private readonly string? _belowName;
    private readonly WeatherInput? _weather;
    private readonly KeptRecords? _records;
    private VariantFile? _variant;
    private ImmutableArray<TrayType> _openFlats = [];

    /// <summary>Makes a reader.</summary>
    /// <param name="files">Files of the folder.</param>
    /// <param name="variantName">Variant to lay over what is read; null for none.</param>
    /// <param name="weather">The weather, where it has been read already; null to read it.</param>
    /// <param name="records">Keeps weather records from one reading to the next; null for nothing kept.</param>
    /// <param name="belowName">Variant that lies below it; null for none.</param>
    public FolderReader(
        IFolderFiles files,
        string? variantName = null,
        WeatherInput? weather = null,
        KeptRecords? records = null,
        string? belowName = null
    )
    {
        (_variantName, _weather, _records, _belowName) = (variantName, weather, records, belowName);
        _files = new FileReader(files, _faults);
        _cells = new CellReader(_faults);
    }

    /// <summary>Reads the folder.</summary>
    /// <param name="directory">Path of the folder, which may not be there; null for files that are kept.</param>
    public FolderReading Read(string? directory = null)
    {
        var scenario = directory is null || IsFolder(directory) ? ReadScenario() : null;
        return new FolderReading
        {
            Scenario = _faults.Count == 0 ? scenario : null,
            OpenFlats = _openFlats,
            Faults = _faults.Faults,
            Warnings = _faults.Warnings,
            Inputs = _files.Inputs,
        };
    }

    private bool IsFolder(string directory)
    {
        var place = new SourcePlace(directory, 0, 0);
        var isThere = Directory.Exists(directory);
        if (_files.IsHidden(isThere ? FileNames.Site : ""))
        {
            RefuseClosed(place);
            return false;
        }

        if (isThere)
        {
            return true;
        }

        if (File.Exists(directory))
        {
            _faults.Add(place, "this is a file, not a folder", "name the folder that holds site.toml and plan.csv");
        }
        else
        {
            _faults.Add(place, "there is no such folder", "check the name; \"benchsim new\" makes a folder to fill in");
        }

        return false;
    }

    private void RefuseClosed(SourcePlace place) => _faults.Add(place, Words.Closed, Words.OpenIt);

    private Scenario? ReadScenario()
    {
        NearNames.Warn(_files, _faults);
        if (_variantName is not null && (_variant = ReadVariant(_variantName)) is null)
        {
            return null;
        }

        if (_variant is { } over && _belowName is not null)
        {
            _variant = ReadVariant(_belowName)?.Under(over, _faults);
        }

        var before = _faults.Count;
        var site = ReadSite();
        var invest = _variant?.Invest is { } terms
            ? new InvestReader(_cells).Read(new Section("invest", terms, _faults, site?.Units ?? default, _variant.IsWhole))
            : null;
        var isGoodSite = site is not null && _faults.Count == before;
        site ??= new SiteDraft();
        var scenario = site.Scenario with { Weather = _weather ?? ReadWeather(site.Weather) ?? site.Scenario.Weather, Invest = invest };
        var choices = new ChoicesReader(_files, _cells, site, _variant).Read();
        scenario = scenario with { Mishaps = [.. scenario.Mishaps.Select(mishap => WithCrop(mishap, choices))] };
        scenario = scenario with { Supplies = ReadSupplies(site, choices) };
        _openFlats = ChoicesReader.OpenFlats(choices.Trays);
        var rows = ReadPlan(site, choices);
        var batches = new PlanExpander(_faults).Expand(rows);
        scenario = WithBatches(scenario, choices, batches);
        scenario = scenario with { Ranges = ReadRanges(site, choices, scenario) };
        if (site.HasGoodSpaces)
        {
            new PlaceChecks(scenario, _faults).Check(rows);
        }

        scenario = scenario with { IsPlannedAnew = _variant?.IsPlannedAnew == true };
        scenario = scenario with { Seen = ReadSeen(site) };
        scenario = scenario with { Log = ReadLog(site, scenario, isWhole: _faults.Count == before) };
        return isGoodSite ? scenario : null;
    }

    private FileText? ReadTable(string name) => _files.ReadTable(name, new SourcePlace(name, 0, 0));

    private FileText? ReadFile(string name) => _files.Read(name, new SourcePlace(name, 0, 0));

    private VariantFile? ReadVariant(string name)
    {
        var names = VariantNames.In(_files);
        var path = FileNames.OfVariant(name);
        if (_files.IsHidden(path))
        {
            RefuseClosed(new SourcePlace(FileNames.VariantFolder, 0, 0));
            return null;
        }

        if (!names.Contains(name, StringComparer.Ordinal))
        {
            VariantNames.Refuse(name, names, _faults);
            return null;
        }

        if (!PlainNames.IsPlain(path))
        {
            _faults.Add(
                new SourcePlace(path, 0, 0),
                $"{Words.Quote(name)} is no plain name of a file",
                "rename it without any of \\ : * ? \" < > |, without a dot at the end and without blanks at either end"
            );
            return null;
        }

        return ReadFile(path) is { } file ? new VariantReader(_faults, names).Read(file) : null;
    }

    // Null when there is no file to read.
    private SiteDraft? ReadSite()
    {
        if (ReadFile(FileNames.Site) is not { } file)
        {
            return null;
        }

        if (file.Text.AsSpan().Trim().IsEmpty)
        {
            _faults.Add(
                new SourcePlace(file.Name, 1, 1),
                "the file is empty",
                "begin with [site] and a name; \"benchsim new\" makes a folder to fill in"
            );
            return new SiteDraft();
        }

        var root = TomlText.Read(file, _faults, out var isWhole);
        if (_variant is null)
        {
            return new SiteReader(root, isWhole, _cells).Read(root.Place);
        }

        root = new SiteOverlay(_variant, _faults).Lay(root);
        var site = new SiteReader(root, isWhole && _variant.IsWhole, _cells).Read(_variant.RemovePlace ?? root.Place);

        // A crop that lists a space which a variant takes away is reported where it is taken away, and not again in crops.csv.
        var ids = new Dictionary<string, SpaceKind?>(site.SpaceIds, StringComparer.Ordinal);
        foreach (var removed in _variant.Removed)
        {
            ids.TryAdd(removed.Text, null);
        }

        return site with
        {
            SpaceIds = ids,
        };
    }

    private WeatherInput? ReadWeather(WeatherDraft? draft)
    {
        if (draft is null || draft.Ready is not null)
        {
            return draft?.Ready;
        }

        if (_files.ReadTable(draft.File.Text, draft.File.Place) is not { } file)
        {
            return null;
        }

        return _records is null ? new WeatherRecordReader(_cells).Read(file, draft) : _records.Read(file, draft, _faults);
    }

    private List<PlanRow> ReadPlan(SiteDraft site, Choices choices)
    {
        if (ReadTable(FileNames.Plan) is not { } file)
        {
            return [];
        }

        var reader = new PlanReader(_cells, site, choices);
        var rows = reader.Split(file);
        PlanRow[] read = [.. (_variant is null ? rows : new PlanOverlay(_variant, site.Units, _cells).Lay(rows)).Select(reader.Read)];
        GrowerNames.Check(read, _faults);
        return [.. read];
    }

    private ImmutableArray<Supply> ReadSupplies(SiteDraft site, Choices choices) =>
        _files.HasTable(FileNames.Supplies) && ReadTable(FileNames.Supplies) is { } file
            ? new SupplyReader(_cells, choices).Read(CsvTable.Read(file, SupplyFields.Table, CsvTable.MostRows, _cells, site.Units))
            : [];

    private ImmutableArray<RangeRow> ReadRanges(SiteDraft site, Choices choices, Scenario scenario) =>
        _files.HasTable(FileNames.Ranges) && ReadTable(FileNames.Ranges) is { } file
            ? new RangeReader(_cells, choices, scenario).Read(CsvTable.Read(file, RangeFields.Table, CsvTable.MostRows, _cells, site.Units))
            : [];

    // A variant is of the plan alone: what was done and seen is told of the base.
    private ImmutableArray<LogEntry> ReadLog(SiteDraft site, Scenario scenario, bool isWhole) =>
        _variantName is null && _files.HasTable(FileNames.Log) && ReadTable(FileNames.Log) is { } file
            ? new LogReader(_cells, site, new LogNames(_cells, site, scenario.Batches, isWhole)).Read(
                CsvTable.Read(file, LogFields.Table, LogReader.MostRows, _cells, site.Units),
                scenario
            )
            : [];

    private SeenWeather ReadSeen(SiteDraft site) =>
        _variantName is null && site.Weather is { } weather
            ? new SeenWeather(ReadSeen(site, weather, weather.Observed), ReadSeen(site, weather, weather.Forecast))
            {
                ForecastFile = weather.Forecast?.Text,
            }
            : SeenWeather.None;

    private ImmutableArray<DailyWeather> ReadSeen(SiteDraft site, WeatherDraft weather, Cell? name) =>
        name is { } cell && _files.ReadTable(cell.Text, cell.Place) is { } file
            ? new SeenWeatherReader(_cells, weather.Keys.TemperatureUnit ?? site.Units, weather.Keys.RainUnit ?? site.Units).Read(file)
            : [];

    private static Mishap WithCrop(Mishap mishap, Choices choices) =>
        mishap.CropId is { } crop ? mishap with { CropId = choices.Crops.Meant(crop) } : mishap;

    // Only crops and tray types that the plan uses. Without a fault nothing here is missing; with one the result only serves further
    // checks.
    private static Scenario WithBatches(Scenario scenario, Choices choices, ImmutableArray<BatchOrder> batches)
    {
        var cropIds = batches.Select(batch => batch.CropId).ToHashSet(StringComparer.Ordinal);
        var trayIds = batches.SelectMany(batch => new[] { batch.TrayId, batch.FlatId }).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return scenario with
        {
            TrayTypes = [.. choices.Trays.Known.Where(tray => trayIds.Contains(tray.Id))],
            Crops = [.. choices.Crops.Known.Where(crop => cropIds.Contains(crop.Id))],
            Batches = batches,
        };
    }
}
