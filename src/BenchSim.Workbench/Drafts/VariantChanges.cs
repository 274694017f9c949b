using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Variants;
using BenchSim.Season.Inputs;

namespace BenchSim.Workbench.Drafts;

/// <summary>
/// What a variant says, as changes of the texts themselves: keys of houses, spaces and sections, and cells of the lines of the plan. That
/// is all that the changes of mend are made of. What else a variant may hold is refused, but for what it costs, which is not played, and
/// for "replan", since texts are always planned anew.
/// </summary>
/// <param name="texts">The texts.</param>
/// <param name="plan">The plan that they make.</param>
internal sealed class VariantChanges(ImmutableSortedDictionary<string, string> texts, SeasonPlan plan)
{
    private static readonly string[] s_dates = ["sow", "set_out"];

    // Sections in single brackets.
    private static readonly FrozenSet<string> s_single = FolderReference
        .Site.Where(table => !table.Heading.StartsWith("[[", StringComparison.Ordinal))
        .Select(table => table.Section)
        .ToFrozenSet(StringComparer.Ordinal);

    private readonly TomlOutline _site = TomlOutline.Of(texts.Of(FileNames.Site) ?? "");
    private readonly CsvOutline _plan = CsvOutline.Of(texts.Of(FileNames.Plan) ?? "");

    /// <summary>The changes.</summary>
    /// <param name="variant">Text of the variant.</param>
    /// <param name="fault">Why it cannot be made of these texts; null when it can.</param>
    public ImmutableArray<Change> Of(string variant, out NotMade? fault)
    {
        var changes = ImmutableArray.CreateBuilder<Change>();
        var outline = TomlOutline.Of(variant);
        if (outline.Root.FirstOrDefault(key => key is not "replan") is { } root)
        {
            fault = new NotMade($"What this changes by {root} cannot be written into the files.", false);
            return [];
        }

        foreach (var part in outline.Parts.Where(part => part.Section is not "invest"))
        {
            var made = part.Section is "plan" ? OfPlan(part) : OfSite(part);
            if (made is null)
            {
                fault = new NotMade(
                    $"What this changes in [{part.Section}] is not in the files as they stand. Look for what would mend the plan again.",
                    true
                );
                return [];
            }

            changes.AddRange(made);
        }

        fault = null;
        return changes.ToImmutable();
    }

    private IEnumerable<Change>? OfSite(TomlPart part)
    {
        var isNamed = part.Section is "house" or "space";
        var entry = isNamed ? EntryOf(part) : 0;
        return !isNamed && !s_single.Contains(part.Section) || entry is null
            ? null
            : part
                .Keys.Where(key => !isNamed || key.Key is not "id")
                .Select(key => new Change(ChangeKind.Key)
                {
                    Section = part.Section,
                    Entry = entry.Value,
                    Key = key.Key,
                    Value = IsList(key) ? key.Value : key.Plain,
                });
    }

    private int? EntryOf(TomlPart part) =>
        _site
            .Parts.FirstOrDefault(each =>
                string.Equals(each.Section, part.Section, StringComparison.Ordinal)
                && string.Equals(each.Find("id")?.Plain, part.Find("id")?.Plain, StringComparison.Ordinal)
            )
            ?.Entry;

    private List<Change>? OfPlan(TomlPart part)
    {
        if (part.Find("drop") is not null)
        {
            return null;
        }

        var orders = plan
            .Batches.Select(batch => batch.Order)
            .Where(order => part.Find("crop") is not { } crop || string.Equals(order.CropId, crop.Plain, StringComparison.Ordinal))
            .Select(order => (Order: order, Row: _plan.Find(order.Place)?.Row ?? -1))
            .Where(each => each.Row >= 0 && (part.Find("batch") is not { } line || IsLine(each.Row, line.Plain)))
            .GroupBy(each => each.Row, each => each.Order);
        var changes = new List<Change>();
        foreach (var line in orders)
        {
            // The dates of a line are those of its first succession.
            var first = line.First();
            foreach (var key in part.Keys.Where(key => key.Key is not ("batch" or "crop")))
            {
                changes.AddRange(key.Key is "shift_days" ? Shifted(line.Key, first, key) : [Cell(line.Key, key.Key, Written(key))]);
            }
        }

        return changes.Count == 0 ? null : changes;
    }

    private bool IsLine(int row, string id) =>
        _plan.Columns.IndexOf("id", StringComparer.Ordinal) is >= 0 and var at && LineSelector.Matches(_plan.Rows[row][at], id);

    private static IEnumerable<Change> Shifted(int row, BatchOrder order, TomlKey key)
    {
        var days = int.Parse(key.Plain, CultureInfo.InvariantCulture);
        return s_dates
            .Zip([order.Sow, order.SetOut])
            .Where(each => each.Second is not null)
            .Select(each => Cell(row, each.First, each.Second!.Value.AddDays(days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
    }

    private static Change Cell(int row, string column, string value) =>
        new(ChangeKind.Cell)
        {
            Row = row,
            Column = column,
            Value = value,
        };

    // As crops.csv and plan.csv write lists.
    private static string Written(TomlKey key) => IsList(key) ? string.Join('|', key.Plain.Split(", ")) : key.Plain;

    private static bool IsList(TomlKey key) => key.Value.StartsWith('[');
}
