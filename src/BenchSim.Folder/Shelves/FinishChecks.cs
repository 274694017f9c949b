using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Shelves;

/// <summary>Checks lists of spaces, and what crops.csv and plan.csv say of trays that finish on other benches.</summary>
internal sealed class FinishChecks(CellReader cells, SiteDraft site)
{
    /// <summary>Checks the three columns of a row.</summary>
    /// <param name="cell">Gives the cell of a column.</param>
    /// <param name="ids">Benches that were read.</param>
    /// <param name="hasBenches">Whether benches to finish on are given, here or by the crop.</param>
    public void Check(Func<string, Cell> cell, ImmutableArray<string> ids, bool hasBenches)
    {
        CheckSpaces(cell("finish"), ids, SpaceKind.Bench);
        var (at, after) = (cell("finish_at"), cell("finish_after_days"));
        if (IsGiven(at) && IsGiven(after))
        {
            cells.Refuse(after, "is given together with finish_at", "write one of the two");
        }

        foreach (var when in new[] { at, after }.Where(when => IsGiven(when) && !hasBenches))
        {
            cells.Refuse(when, "is given without benches to finish on", "name a bench in the column finish, or leave this empty");
        }
    }

    /// <summary>Checks that spaces are there, and of a kind.</summary>
    public void CheckSpaces(Cell cell, ImmutableArray<string> ids, SpaceKind kind)
    {
        if (site.SpaceIds.Count == 0)
        {
            // The spaces could not be read; that is said elsewhere.
            return;
        }

        var word = SpaceFields.Word[kind];
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var id in site.SpacesMeant(ids))
        {
            if (!site.SpaceIds.TryGetValue(id, out var found))
            {
                var near = Spelling.Nearest(id, site.SpaceIds.Where(pair => pair.Value == kind).Select(pair => pair.Key));
                cells.Faults.Add(
                    cell.Place,
                    $"there is no space {Words.Quote(id)}",
                    near is null ? $"name a {word} of site.toml" : $"did you mean {Words.Quote(near)}"
                );
            }
            else if (found is not null && found != kind)
            {
                cells.Faults.Add(cell.Place, $"{Words.Quote(id)} is not a {word}", $"name only spaces of kind = \"{word}\" in {cell.Name}");
            }
            else if (!seen.Add(id))
            {
                cells.Refuse(cell, $"names {Words.Quote(id)} a second time", "name each space once");
            }
        }
    }

    private static bool IsGiven(Cell cell) => !cell.IsBlank && !string.Equals(cell.Text, "none", StringComparison.OrdinalIgnoreCase);
}
