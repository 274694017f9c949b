using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Sweeps;

/// <summary>Reads a sweep file and finds its folders.</summary>
/// <param name="path">The file.</param>
/// <param name="faults">Takes the faults.</param>
internal sealed class SweepReader(string path, FaultList faults)
{
    private readonly CellReader _cells = new(faults);

    /// <summary>Reads it; what comes back is whole only where there was no fault.</summary>
    public SweepFile Read(FileText file)
    {
        var root = TomlText.Read(file, faults, out var isWhole);
        var section = new Section(SweepFields.Table.Section, root, faults, UnitSystem.Metric, isWhole);
        var settings = section.Read(SweepFields.Table, new SweepSettings(), _cells);
        var folders = section.Has(SweepFields.Folders) ? Folders(section) : [];
        return new SweepFile(
            settings with
            {
                Name = settings.Name.Length > 0 ? settings.Name : Path.GetFileNameWithoutExtension(path),
                SeasonsPerTask = Math.Min(settings.Seasons, settings.SeasonsPerTask),
            },
            [.. new SweepVariants(section, _cells).Of(folders)]
        );
    }

    private List<NamedFolder> Folders(Section section)
    {
        var cells = section.List(SweepFields.Folders, "a list such as [\"north\", \"south/*\"]");
        if (cells.Count == 0 && section.IsList(SweepFields.Folders))
        {
            faults.Add(section.PlaceOf(SweepFields.Folders), "folders is an empty list", "name one scenario folder or more");
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        var folders = new List<NamedFolder>();
        foreach (var cell in cells)
        {
            if (_cells.Name(cell) is not { } name)
            {
                continue;
            }

            var parts = name.Replace('\\', '/').TrimEnd('/').Split('/');
            if (parts.Length == 1 && parts[0].Length == 0 || parts is ["", "*"])
            {
                _cells.Refuse(cell, $"has {Words.Quote(name)}, the root of a disk", "name the folder that holds the farms");
                continue;
            }

            if (parts[^1] is "*")
            {
                // What is named by itself as well, before it, keeps its place and is played once.
                folders.AddRange(Within(cell, string.Join('/', parts[..^1])).Where(each => seen.Add(FullOf(each.Directory))));
            }
            else if (name.Contains('*', StringComparison.Ordinal))
            {
                _cells.Refuse(
                    cell,
                    $"has {Words.Quote(name)}, and * may stand only as the whole last part",
                    "write a folder and /*, such as \"south/*\", or the name of one folder"
                );
            }
            else if (One(cell, string.Join('/', parts)) is { } one)
            {
                if (seen.Add(FullOf(one.Directory)))
                {
                    folders.Add(one);
                }
                else
                {
                    _cells.Refuse(cell, $"names {Words.Quote(name)} a second time", "name each folder once");
                }
            }
        }

        return folders;
    }

    private NamedFolder? One(Cell cell, string name)
    {
        var directory = DirectoryOf(name);
        if (FileKind.IsHidden(Path.Combine(directory, FileNames.Site)))
        {
            _cells.Refuse(cell, $"has {Words.Quote(name)}, and {Words.Closed}", Words.OpenIt);
        }
        else if (File.Exists(directory))
        {
            _cells.Refuse(
                cell,
                $"has {Words.Quote(name)}, which is a file, not a folder",
                "name the folder that holds site.toml and plan.csv"
            );
        }
        else if (!Directory.Exists(directory))
        {
            _cells.Refuse(cell, $"has {Words.Quote(name)}, and there is no such folder", Hint(directory));
        }
        else
        {
            return new NamedFolder(name, directory);
        }

        return null;
    }

    private NamedFolder[] Within(Cell cell, string above)
    {
        var directory = DirectoryOf(above);
        NamedFolder[] found = [];
        try
        {
            found =
            [
                .. Directory
                    .EnumerateDirectories(directory)
                    .Where(folder => File.Exists(Path.Combine(folder, FileNames.Site)))
                    .Select(folder => Path.GetFileName(folder))
                    .Order(StringComparer.Ordinal)
                    .Select(name => new NamedFolder(above.Length == 0 ? name : $"{above}/{name}", Path.Combine(directory, name))),
            ];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            _cells.Refuse(
                cell,
                $"has {Words.Quote(cell.Text)}, and that folder cannot be listed",
                "check its name, and that you may read it"
            );
            return found;
        }

        if (found.Length == 0)
        {
            _cells.Refuse(
                cell,
                $"has {Words.Quote(cell.Text)}, and no scenario folder is in there",
                "name a folder whose folders hold site.toml and plan.csv"
            );
        }

        return found;
    }

    private string DirectoryOf(string name) => Path.Combine(Path.GetDirectoryName(path) ?? "", name.Length == 0 ? "." : name);

    private static string FullOf(string directory) => Path.TrimEndingDirectorySeparator(Path.GetFullPath(directory));

    private static string Hint(string directory)
    {
        string[] beside = [];
        try
        {
            beside =
            [
                .. Directory.EnumerateDirectories(Path.GetDirectoryName(FullOf(directory)) ?? "").Select(each => Path.GetFileName(each)),
            ];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // Nothing to be near to.
        }

        return Spelling.Nearest(Path.GetFileName(directory), beside.Order(StringComparer.Ordinal)) is { } near
            ? $"did you mean {Words.Quote(near)}"
            : "names are from where this file stands: check the name";
    }
}

/// <summary>A folder that a sweep names.</summary>
/// <param name="Name">Its path from the sweep file, with forward slashes.</param>
/// <param name="Directory">Where it is.</param>
internal sealed record NamedFolder(string Name, string Directory);
