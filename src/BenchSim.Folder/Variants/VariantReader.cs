using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Variants;

/// <summary>
/// Reads a variant file into its parts. Values stay text: the readers of site.toml, crops.csv and plan.csv turn them into things.
/// </summary>
internal sealed class VariantReader(FaultList faults, IReadOnlyList<string> variantNames)
{
    private static readonly string[] s_inheriting =
    [
        "include",
        "includes",
        "import",
        "extends",
        "inherit",
        "inherits",
        "base",
        "parent",
        "variant",
        "variants",
        "with",
    ];

    /// <summary>Reads the file.</summary>
    public VariantFile Read(FileText file)
    {
        var root = TomlText.Read(file, faults, out var isWhole);
        var site = new TomlTable(root.Place);
        foreach (var (key, entry) in root.Entries)
        {
            if (FolderReference.Sections.Contains(key, StringComparer.Ordinal))
            {
                site.Entries[key] = entry;
                RefuseFixed(key, entry);
            }
            else if (!VariantFields.Root.Names.Contains(key, StringComparer.Ordinal))
            {
                RefuseKey(key, entry);
            }
        }

        return new VariantFile
        {
            Site = site,
            IsWhole = isWhole,
            Removed = Removed(root),
            IsPlannedAnew = IsPlannedAnew(root),
            Crops = Crops(root),
            Plan = Plan(root),
            Invest = Invest(root),
        };
    }

    private void RefuseKey(string key, TomlEntry entry)
    {
        var names = entry.Value is TomlList list ? list.Items : [entry.Value];
        if (
            s_inheriting.Contains(key, StringComparer.OrdinalIgnoreCase)
            || names.OfType<TomlScalar>().Any(name => variantNames.Contains(NameOnly(name.Text), StringComparer.Ordinal))
        )
        {
            faults.Add(
                entry.KeyPlace,
                $"there is no key {Words.Quote(key)} in a variant: a variant lies on the base folder alone, never on a variant",
                "copy the lines you need from the other file"
            );
            return;
        }

        var near = Spelling.Nearest(key, FolderReference.VariantRoot);
        var elsewhere = FolderReference.HeadingsWith(key);
        faults.Add(
            entry.KeyPlace,
            $"there is no key {Words.Quote(key)} in a variant",
            elsewhere.Length > 0 ? $"it belongs in {Words.List(elsewhere, "or")}"
                : near is not null ? $"did you mean {Words.Quote(near)}"
                : $"the keys here are {Words.List(FolderReference.VariantRoot)}"
        );
    }

    private static string NameOnly(string text) =>
        text.EndsWith(".toml", StringComparison.OrdinalIgnoreCase) ? Path.GetFileNameWithoutExtension(text) : text;

    private void RefuseFixed(string section, TomlEntry entry)
    {
        if (entry.Value is not TomlTable table)
        {
            return;
        }

        // Every variant is played on the luck and the days of the base, and its numbers are read as those of site.toml are.
        foreach (
            var field in FolderReference
                .Site.Where(each => string.Equals(each.Section, section, StringComparison.Ordinal))
                .SelectMany(each => each.Fields)
                .Where(field => field.FixedBecause.Length > 0)
        )
        {
            if (table.Entries.TryGetValue(field.Name, out var found))
            {
                OverlayCells.RefuseFixed(field.Name, found.KeyPlace, field.FixedBecause, FileNames.Site, faults);
            }
        }
    }

    private bool IsPlannedAnew(TomlTable root) =>
        root.Entries.TryGetValue("replan", out var entry)
        && OverlayCells.Of("replan", entry.Value, default, faults) is { } cell
        && Kinds.YesNo.TryRead(new WrittenCell(new CellReader(faults), cell), out var isAnew)
        && isAnew;

    private List<TomlScalar> Removed(TomlTable root)
    {
        if (!root.Entries.TryGetValue("remove", out var entry))
        {
            return [];
        }

        if (entry.Value is not TomlList list)
        {
            faults.Add(
                entry.Value.Place,
                "remove is not a list",
                "write a list of ids such as remove = [\"overflow-bench\", \"overflow\"]"
            );
            return [];
        }

        foreach (var item in list.Items.Where(item => item is not TomlScalar))
        {
            faults.Add(item.Place, "remove holds something that is not an id", "write ids of houses and spaces in quotation marks");
        }

        return [.. list.Items.OfType<TomlScalar>()];
    }

    private List<(string Crop, TomlTable Cells)> Crops(TomlTable root)
    {
        var crops = new List<(string, TomlTable)>();
        if (!root.Entries.TryGetValue("crops", out var entry))
        {
            return crops;
        }

        if (entry.Value is not TomlTable table)
        {
            faults.Add(entry.Value.Place, "crops is not a section", "write [crops.tomato] with the columns of crops.csv below it");
            return crops;
        }

        foreach (var (crop, value) in table.Entries)
        {
            if (value.Value is TomlTable cells)
            {
                crops.Add((crop, cells));
            }
            else
            {
                faults.Add(
                    value.KeyPlace,
                    $"{Words.Quote(crop)} in [crops] is not a crop with its columns",
                    "write [crops.tomato] with the columns of crops.csv below it"
                );
            }
        }

        return crops;
    }

    private TomlTable? Invest(TomlTable root)
    {
        if (!root.Entries.TryGetValue("invest", out var entry))
        {
            return null;
        }

        if (entry.Value is TomlTable table)
        {
            return table;
        }

        faults.Add(entry.Value.Place, "invest is not a section", "write [invest] with its keys below it");
        return null;
    }

    private List<TomlTable> Plan(TomlTable root)
    {
        if (!root.Entries.TryGetValue("plan", out var entry))
        {
            return [];
        }

        if (entry.Value is not TomlList list)
        {
            faults.Add(entry.Value.Place, "[plan] has single brackets", "write [[plan]]: there may be several");
            return [];
        }

        foreach (var item in list.Items.Where(item => item is not TomlTable))
        {
            faults.Add(item.Place, "plan holds something that is not a table", "write [[plan]] with its keys below it");
        }

        return [.. list.Items.OfType<TomlTable>()];
    }
}
