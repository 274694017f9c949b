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
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder;

/// <summary>One reading of a folder: every file, every check, one pass.</summary>
internal sealed class FolderReader
{
    private readonly string _directory;
    private readonly bool _isKept;
    private readonly FaultList _faults = new();
    private readonly FileReader _files;
    private readonly CellReader _cells;

    private readonly string? _variantName;
    private VariantFile? _variant;
    private ImmutableArray<TrayType> _openFlats = [];

    /// <summary>Makes a reader.</summary>
    /// <param name="directory">Path of the folder.</param>
    /// <param name="variantName">Variant to lay over what is read; null for none.</param>
    public FolderReader(string directory, string? variantName = null)
    {
        (_directory, _variantName) = (directory, variantName);
        _files = new FileReader(new DiskFiles(directory), _faults);
        _cells = new CellReader(_faults);
    }

    /// <summary>Makes a reader of files that are kept.</summary>
    /// <param name="files">The files.</param>
    /// <param name="variantName">Variant to lay over what is read; null for none.</param>
    public FolderReader(KeptFiles files, string? variantName)
    {
        (_directory, _isKept, _variantName) = ("", true, variantName);
        _files = new FileReader(files, _faults);
        _cells = new CellReader(_faults);
    }

    public FolderReading Read()
    {
        var scenario = IsFolder() ? ReadScenario() : null;
        return new FolderReading
        {
            Scenario = _faults.Count == 0 ? scenario : null,
            OpenFlats = _openFlats,
            Faults = _faults.Faults,
            Warnings = _faults.Warnings,
            Inputs = _files.Inputs,
        };
    }

    private bool IsFolder()
    {
        if (_isKept || Directory.Exists(_directory))
        {
            return true;
        }

        var place = new SourcePlace(_directory, 0, 0);
        if (File.Exists(_directory))
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
        var siteFile = _files.Read(FolderReference.SiteFile, new SourcePlace(FolderReference.SiteFile, 0, 0));
        var site = siteFile is null ? new SiteDraft() : SiteReader.Read(siteFile, _faults, _variant);
        var invest = _variant?.Invest is { } terms
            ? new InvestReader(_cells).Read(new Section(VariantKeyList.Invest, terms, _faults, site.Units, _variant.IsWhole))
            : null;
        var isGoodSite = siteFile is not null && _faults.Count == before;
        var weather = ReadWeather(site.Weather);
        var choices = ReadChoices(site);
        _openFlats =
        [
            .. BuiltInLibrary
                .Trays.Select(row => choices.Trays.Find(row.Id))
                .OfType<TrayType>()
                .Concat(choices.Trays.Known)
                .Where(tray => tray.IsFlat)
                .DistinctBy(tray => tray.Id, StringComparer.Ordinal)
                .OrderBy(tray => tray.Id, StringComparer.Ordinal),
        ];
        var planFile = _files.Read(FolderReference.PlanFile, new SourcePlace(FolderReference.PlanFile, 0, 0));
        var rows = planFile is null ? [] : new PlanReader(_cells, site, choices).Read(planFile, _variant);
        var batches = new PlanExpander(_faults).Expand(rows);
        if (site.HasGoodSpaces)
        {
            new PlaceChecks(ToScenario(site, weather, choices, batches), _faults).Check(rows);
        }

        return isGoodSite ? ToScenario(site, weather, choices, batches) with { Invest = invest } : null;
    }

    private VariantFile? ReadVariant(string name)
    {
        var names = VariantNames.In(_files);
        var path = VariantNames.FileOf(name);
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

        return _files.Read(path, new SourcePlace(path, 0, 0)) is { } file ? new VariantReader(_faults, names).Read(file) : null;
    }

    private WeatherInput? ReadWeather(WeatherDraft? draft)
    {
        if (draft is null || draft.Ready is not null)
        {
            return draft?.Ready;
        }

        return _files.Read(draft.File.Text, draft.File.Place) is { } file ? new WeatherRecordReader(_cells).Read(file, draft) : null;
    }

    private Choices ReadChoices(SiteDraft site)
    {
        var trayShelf = ReadShelf(BuiltInLibrary.Trays, FolderReference.TrayFile, site, "tray type");
        var cropShelf = ReadShelf(BuiltInLibrary.Crops, FolderReference.CropFile, site, "crop");
        return new Choices(
            new ShelfReading<Crop>(cropShelf, new CropReader(_cells, trayShelf, site).Read),
            new ShelfReading<TrayType>(trayShelf, new TrayReader(_cells).Read)
        );
    }

    private Shelf ReadShelf(ImmutableArray<LibraryRow> library, string name, SiteDraft site, string thing)
    {
        var overlay =
            _variant is not null && string.Equals(name, FolderReference.CropFile, StringComparison.Ordinal)
                ? new CropOverlay(_variant, site, _faults)
                : null;
        if (!_files.Exists(name))
        {
            return Shelf.Of(library, overlay?.Lay([]) ?? [], isWhole: true, _cells, thing);
        }

        var file = _files.Read(name, new SourcePlace(name, 0, 0));
        var table = file is null
            ? null
            : CsvTable.Read(
                file,
                FolderReference.ColumnsOf(name),
                FolderReference.RequiredColumnsOf(name),
                CsvTable.MostRows,
                _faults,
                site.Units
            );
        var rows = table?.Rows ?? [];
        return Shelf.Of(
            library,
            table is null ? rows : overlay?.Lay(rows) ?? rows,
            isWhole: table is not null && table.Has("id"),
            _cells,
            thing
        );
    }

    // "crop.csv" would be passed over in silence.
    private void WarnOfNearNames()
    {
        foreach (var name in _files.NamesInFolder())
        {
            foreach (var optional in new[] { FolderReference.CropFile, FolderReference.TrayFile })
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

    // Only crops and tray types that the plan uses. Without a fault nothing here is missing; with one the result only serves further checks.
    private static Scenario ToScenario(SiteDraft site, WeatherInput? weather, Choices choices, ImmutableArray<BatchOrder> batches)
    {
        var cropIds = batches.Select(batch => batch.CropId).ToHashSet(StringComparer.Ordinal);
        var trayIds = batches.SelectMany(batch => new[] { batch.TrayId, batch.FlatId }).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return new Scenario
        {
            Name = site.Name ?? "",
            Question = site.Question,
            Units = site.Units,
            Window = site.Window ?? new SeasonWindow(DateOnly.MinValue, DateOnly.MaxValue),
            Houses = site.Houses,
            Spaces = site.Spaces,
            TrayTypes = [.. choices.Trays.Known.Where(tray => trayIds.Contains(tray.Id))],
            Crops = [.. choices.Crops.Known.Where(crop => cropIds.Contains(crop.Id))],
            Batches = batches,
            Rules = site.Rules,
            Weather = weather ?? new ConstantWeather(0, 0, 0),
            Play = site.Play,
        };
    }
}
