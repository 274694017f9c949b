using BenchSim.Folder.Faults;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Toml;

namespace BenchSim.Folder.Variants;

/// <summary>
/// Lays the sections of a variant over those of site.toml. The values keep the place where they are written, so that a fault stands there.
/// </summary>
internal sealed class SiteOverlay(VariantFile variant, FaultList faults)
{
    // Two ways to say one thing: where the variant says it one way, what the base says the other way is left out.
    private static readonly Dictionary<string, string[]> s_putAside = FolderReference
        .Site.SelectMany(table => table.Fields)
        .Where(field => !field.InsteadOf.IsEmpty)
        .GroupBy(field => field.Name, StringComparer.Ordinal)
        .ToDictionary(group => group.Key, group => group.SelectMany(field => field.InsteadOf).ToArray(), StringComparer.Ordinal);

    /// <summary>The tables of the site with the variant over them.</summary>
    /// <param name="site">Tables of site.toml.</param>
    public TomlTable Lay(TomlTable site)
    {
        var laid = Over(site);
        Remove(laid);
        return laid;
    }

    /// <summary>The same, nothing taken away yet.</summary>
    /// <param name="site">Tables of site.toml, or of a variant.</param>
    public TomlTable Over(TomlTable site)
    {
        var laid = new TomlTable(site.Place, new Dictionary<string, TomlEntry>(site.Entries, StringComparer.Ordinal));
        foreach (var (key, entry) in variant.Site.Entries)
        {
            var below = laid.Entries.GetValueOrDefault(key);
            laid.Entries[key] = key is "house" or "space" or "mishap"
                ? entry with
                {
                    Value = OverList(below?.Value, entry.Value),
                }
                : entry with
                {
                    Value = OverSection(key, below?.Value, entry.Value),
                };
        }

        return laid;
    }

    // A weather of another kind has other keys.
    private static TomlValue OverSection(string key, TomlValue? below, TomlValue above) =>
        below is TomlTable old && above is TomlTable change && !(key is "weather" && change.Entries.ContainsKey("kind"))
            ? Over(old, change)
            : above;

    // Houses and spaces that are there take the keys given, in their place in the order; new ones come last.
    private static TomlValue OverList(TomlValue? below, TomlValue above)
    {
        if (below is not TomlList old || above is not TomlList change)
        {
            return above;
        }

        var items = new List<TomlValue>(old.Items);
        var mended = new HashSet<int>();
        foreach (var item in change.Items)
        {
            var at = IdOf(item) is { } id
                ? items.FindIndex(0, old.Items.Count, each => IdOf(each) is { } known && Spelling.IsSame(known, id))
                : -1;
            if (at >= 0 && mended.Add(at))
            {
                // The id stays as the base has it.
                var written = ((TomlTable)items[at]).Entries["id"];
                var laid = Over((TomlTable)items[at], (TomlTable)item);
                laid.Entries["id"] = written;
                items[at] = laid;
            }
            else
            {
                items.Add(item);
            }
        }

        return new TomlList(change.Place, items);
    }

    private static TomlTable Over(TomlTable below, TomlTable above)
    {
        var laid = new TomlTable(above.Place, new Dictionary<string, TomlEntry>(below.Entries, StringComparer.Ordinal));
        foreach (var other in above.Entries.Keys.SelectMany(key => s_putAside.GetValueOrDefault(key) ?? []))
        {
            laid.Entries.Remove(other);
        }

        foreach (var (key, entry) in above.Entries)
        {
            laid.Entries[key] = entry;
        }

        return laid;
    }

    private void Remove(TomlTable laid)
    {
        var known = ItemsOf(laid, "house").Concat(ItemsOf(laid, "space")).Select(IdOf).OfType<string>().ToArray();
        foreach (var removed in variant.Removed)
        {
            if (!known.Contains(removed.Text, StringComparer.Ordinal))
            {
                var near = Spelling.Nearest(removed.Text, known);
                faults.Add(
                    removed.Place,
                    $"there is no house or space {Words.Quote(removed.Text)} to remove",
                    near is null ? $"the houses and spaces are {Words.List(known)}" : $"did you mean {Words.Quote(near)}"
                );
            }
            else if (ItemsOf(laid, "space").FirstOrDefault(space => IsLeftIn(space, removed.Text)) is { } left)
            {
                faults.Add(
                    removed.Place,
                    $"the house {Words.Quote(removed.Text)} is removed, but the space {Words.Quote(IdOf(left) ?? "")} is in it",
                    "remove that space too, or put it into another house"
                );
            }
        }

        Take(laid, "space");
        Take(laid, "house");
    }

    private bool IsLeftIn(TomlValue space, string house) =>
        space is TomlTable table
        && string.Equals(TextOf(table, "house"), house, StringComparison.Ordinal)
        && !variant.Removes(IdOf(table) ?? "");

    private void Take(TomlTable laid, string kind)
    {
        if (laid.Entries.TryGetValue(kind, out var entry) && entry.Value is TomlList list)
        {
            laid.Entries[kind] = entry with { Value = new TomlList(list.Place, [.. list.Items.Where(item => !IsTaken(laid, kind, item))]) };
        }
    }

    // A house with a space left in it stays, so that its spaces are not reported a second time.
    private bool IsTaken(TomlTable laid, string kind, TomlValue item) =>
        IdOf(item) is { } id && variant.Removes(id) && (kind is "space" || !ItemsOf(laid, "space").Any(space => IsLeftIn(space, id)));

    private static List<TomlValue> ItemsOf(TomlTable table, string key) =>
        table.Entries.TryGetValue(key, out var entry) && entry.Value is TomlList list ? list.Items : [];

    private static string? IdOf(TomlValue item) => item is TomlTable table ? TextOf(table, "id") : null;

    private static string? TextOf(TomlTable table, string key) =>
        table.Entries.TryGetValue(key, out var entry) && entry.Value is TomlScalar scalar ? scalar.Text : null;
}
