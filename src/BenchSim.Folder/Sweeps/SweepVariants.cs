using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Folder.Variants;

namespace BenchSim.Folder.Sweeps;

/// <summary>Finds what a sweep plays of each folder.</summary>
internal sealed class SweepVariants(Section section, CellReader cells)
{
    private const int MostNamed = 3;

    /// <summary>The folders with what is played of them.</summary>
    public IEnumerable<SweepFolder> Of(List<NamedFolder> folders)
    {
        if (!section.Has(SweepFields.Variants))
        {
            return folders.Select(folder => new SweepFolder(folder.Name, folder.Directory, [null]));
        }

        if (!section.IsList(SweepFields.Variants))
        {
            var word = section.Scalar(SweepFields.Variants);
            if (!word.IsBlank && !string.Equals(word.Text, SweepFields.All, StringComparison.Ordinal))
            {
                cells.Refuse(
                    word,
                    $"is {Words.Quote(word.Text)}, which is no list",
                    $"write \"{SweepFields.All}\", or a list such as [\"{SweepFields.AsPlanned}\", \"{Words.Shown(word.Text)}\"]"
                );
            }

            return folders.Select(folder => new SweepFolder(folder.Name, folder.Directory, [null, .. NamesIn(folder.Directory)]));
        }

        var asked = Asked();
        RefuseMissing(asked, folders);
        return folders.Select(folder => new SweepFolder(
            folder.Name,
            folder.Directory,
            [.. asked.Select(cell => string.Equals(cell.Text, SweepFields.AsPlanned, StringComparison.Ordinal) ? null : cell.Text)]
        ));
    }

    private List<Cell> Asked()
    {
        var asked = new List<Cell>();
        var list = section.List(SweepFields.Variants, $"a list such as [\"{SweepFields.AsPlanned}\", \"longer-table\"]");
        if (list.Count == 0)
        {
            cells.Faults.Add(
                section.PlaceOf(SweepFields.Variants),
                "variants is an empty list",
                $"write \"{SweepFields.AsPlanned}\" in it for the plan itself, or take the line out"
            );
        }

        foreach (var cell in list)
        {
            if (asked.Exists(before => string.Equals(before.Text, cell.Text, StringComparison.Ordinal)))
            {
                cells.Refuse(cell, $"names {Words.Quote(cell.Text)} a second time", "name each once");
            }
            else if (cells.Name(cell) is not null)
            {
                asked.Add(cell);
            }
        }

        return asked;
    }

    private void RefuseMissing(List<Cell> asked, List<NamedFolder> folders)
    {
        var known = folders.Select(folder => NamesIn(folder.Directory)).ToArray();
        foreach (var cell in asked.Where(cell => !string.Equals(cell.Text, SweepFields.AsPlanned, StringComparison.Ordinal)))
        {
            string[] without =
            [
                .. folders
                    .Where((_, at) => !known[at].Contains(cell.Text, StringComparer.Ordinal))
                    .Select(folder => Words.Quote(folder.Name)),
            ];
            if (without.Length == 0)
            {
                continue;
            }

            var named =
                without.Length <= MostNamed
                    ? string.Join(", ", without)
                    : string.Join(", ", without.Take(MostNamed)) + $" and {without.Length - MostNamed} more";
            var near = Spelling.Nearest(
                cell.Text,
                known.SelectMany(names => names).Append(SweepFields.AsPlanned).Distinct(StringComparer.Ordinal)
            );
            cells.Refuse(
                cell,
                $"has {Words.Quote(cell.Text)}, and there is no variants/{Words.Shown(cell.Text)}.toml in {named}",
                string.Equals(cell.Text, SweepFields.All, StringComparison.Ordinal)
                        ? $"for every variant write variants = \"{SweepFields.All}\", without brackets"
                    : near is not null && !string.Equals(near, cell.Text, StringComparison.Ordinal) ? $"did you mean {Words.Quote(near)}"
                    : "write that file, or leave the name out"
            );
        }
    }

    private static IReadOnlyList<string> NamesIn(string directory) =>
        VariantNames.In(new FileReader(new DiskFiles(directory), new FaultList()));
}
