using System.Collections.Immutable;
using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Library;
using BenchSim.Folder.Plan;
using BenchSim.Folder.Shelves;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Folder.Variants;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder;

/// <summary>One reading of a folder: every file, every check, one pass.</summary>
internal sealed class FolderReader
{
    private readonly FaultList _faults = new();
    private readonly FileReader _files;
    private readonly CellReader _cells;
    private readonly string? _variantName;
    private VariantFile? _variant;
    private ImmutableArray<TrayType> _openFlats = [];

    /// <summary>Makes a reader.</summary>
    /// <param name="files">Files of the folder.</param>
    /// <param name="variantName">Variant to lay over what is read; null for none.</param>
    public FolderReader(IFolderFiles files, string? variantName = null)
    {
        _variantName = variantName;
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
        if (Directory.Exists(directory))
        {
            return true;
        }

        var place = new SourcePlace(directory, 0, 0);
        if (File.Exists(directory))
        {
            _faults.Add(place, "this is a file, not a folder", "name the folder that holds site.toml and plan.csv");
        }
        else
        {
            _faults.Add(place, "there is no such folder", "check the name; \"benchsim new\" lays down a folder to fill in");
        }

        return false;
    }

    private Scenario? ReadScenario()
    {
        WarnOfNearNames();
        if (_variantName is not null && (_variant = ReadVariant(_variantName)) is null)
        {
            return null;
        }

        var before = _faults.Count;
        var site = ReadSite();
        var invest = _variant?.Invest is { } terms
            ? new InvestReader(_cells).Read(new Section("invest", terms, _faults, site?.Units ?? default, _variant.IsWhole))
            : null;
        var isGoodSite = site is not null && _faults.Count == before;
        site ??= new SiteDraft();
        var scenario = site.Scenario with { Weather = ReadWeather(site.Weather) ?? site.Scenario.Weather, Invest = invest };
        var choices = ReadChoices(site);
        _openFlats = OpenFlats(choices.Trays);
        var rows = ReadPlan(site, choices);
        var batches = new PlanExpander(_faults).Expand(rows);
        scenario = WithBatches(scenario, choices, batches);
        if (site.HasGoodSpaces)
        {
            new PlaceChecks(scenario, _faults).Check(rows);
        }

        return isGoodSite ? scenario : null;
    }

    private FileText? ReadFile(string name) => _files.Read(name, new SourcePlace(name, 0, 0));

    private VariantFile? ReadVariant(string name)
    {
        var names = VariantNames.In(_files);
        var path = FileNames.OfVariant(name);
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
                "begin with [site] and a name; \"benchsim new\" lays down a folder to fill in"
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

        return _files.Read(draft.File.Text, draft.File.Place) is { } file ? new WeatherRecordReader(_cells).Read(file, draft) : null;
    }

    private List<PlanRow> ReadPlan(SiteDraft site, Choices choices)
    {
        if (ReadFile(FileNames.Plan) is not { } file)
        {
            return [];
        }

        var reader = new PlanReader(_cells, site, choices);
        var rows = reader.Split(file);
        return [.. (_variant is null ? rows : new PlanOverlay(_variant, site.Units, _cells).Lay(rows)).Select(reader.Read)];
    }

    private Choices ReadChoices(SiteDraft site)
    {
        var trays = ReadShelf(BuiltInLibrary.Trays, TrayFields.Table, site, "tray type", null);
        var overlay = _variant is null ? null : new CropOverlay(_variant, site.Units, _faults);
        var crops = ReadShelf(BuiltInLibrary.Crops, CropFields.Table, site, "crop", overlay);
        return new Choices(
            new ShelfReading<Crop>(crops, new CropReader(_cells, trays, site).Read),
            new ShelfReading<TrayType>(trays, new TrayReader(_cells).Read)
        );
    }

    private Shelf ReadShelf(ImmutableArray<LibraryRow> library, FieldTable columns, SiteDraft site, string thing, CropOverlay? overlay)
    {
        var name = columns.Section;
        if (!_files.Exists(name))
        {
            return Shelf.Of(library, overlay?.Lay([]) ?? [], isWhole: true, _cells, thing);
        }

        var table = ReadFile(name) is { } file ? CsvTable.Read(file, columns, CsvTable.MostRows, _faults, site.Units) : null;
        var rows = table?.Rows ?? [];
        return Shelf.Of(
            library,
            table is null ? rows : overlay?.Lay(rows) ?? rows,
            isWhole: table is not null && table.Has("id"),
            _cells,
            thing
        );
    }

    private static ImmutableArray<TrayType> OpenFlats(ShelfReading<TrayType> trays) =>
        [
            .. BuiltInLibrary
                .Trays.Select(row => trays.Find(row.Id))
                .OfType<TrayType>()
                .Concat(trays.Known)
                .Where(tray => tray.IsFlat)
                .DistinctBy(tray => tray.Id, StringComparer.Ordinal)
                .OrderBy(tray => tray.Id, StringComparer.Ordinal),
        ];

    // "crop.csv" would be passed over in silence.
    private void WarnOfNearNames()
    {
        foreach (var name in _files.NamesIn(""))
        {
            foreach (var optional in new[] { FileNames.Crops, FileNames.Trays })
            {
                if (
                    !_files.Exists(optional)
                    && name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)
                    && Spelling.Distance(name.ToLowerInvariant(), optional) <= 1
                )
                {
                    _faults.Warn(
                        new SourcePlace(name, 0, 0),
                        "this file is not read",
                        $"if it holds your own {optional[..^4]}, name it {optional}"
                    );
                }
            }
        }
    }

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
