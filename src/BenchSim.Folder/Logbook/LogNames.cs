using System.Globalization;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Logbook;

/// <summary>The batches, spaces and houses that a log may name.</summary>
internal sealed class LogNames
{
    private readonly CellReader _cells;
    private readonly Dictionary<string, BatchOrder> _batches;
    private readonly HashSet<string> _ids;
    private readonly string[] _spaces;
    private readonly string[] _houses;
    private readonly Dictionary<string, Space> _known;
    private readonly ILookup<string, string> _spoken;

    /// <summary>Takes the names.</summary>
    /// <param name="cells">Takes the faults.</param>
    /// <param name="site">The site.</param>
    /// <param name="batches">Batches of the plan.</param>
    /// <param name="isWhole">False when the plan or the site had a fault, so that a name may be one of what could not be read.</param>
    public LogNames(CellReader cells, SiteDraft site, IEnumerable<BatchOrder> batches, bool isWhole)
    {
        _cells = cells;
        IsWhole = isWhole;
        _batches = batches.ToDictionary(batch => batch.Id, StringComparer.Ordinal);
        _ids = new HashSet<string>(_batches.Keys, StringComparer.Ordinal);
        _spaces = [.. site.SpaceIds.Keys];
        _houses = [.. site.Scenario.Houses.Select(house => house.Id), LogFields.Outdoors];
        _known = site.Scenario.Spaces.ToDictionary(space => space.Id, StringComparer.Ordinal);
        _spoken = site.Scenario.Spaces.ToLookup(space => Spelling.Loose(space.Name), space => space.Id, StringComparer.Ordinal);
    }

    /// <summary>Whether a name that is not among them is a fault.</summary>
    public bool IsWhole { get; }

    /// <summary>The batch of an id; null where it is none, or could not be read.</summary>
    public BatchOrder? BatchOf(string? id) => id is null ? null : _batches.GetValueOrDefault(id);

    /// <summary>The space of an id; null where it is none, or could not be read.</summary>
    public Space? SpaceOf(string? id) => id is null ? null : _known.GetValueOrDefault(id);

    /// <summary>The batch that is probably meant, to say nothing more of it; null for none.</summary>
    public string? NearBatch(string written) => Spelling.Nearest(written, _ids);

    /// <summary>The batch that a cell names; the written text where there is none, which is a fault.</summary>
    public string Batch(Cell cell, string written)
    {
        var meant = Spelling.Meant(written, _ids);
        if (!IsWhole || _ids.Contains(meant))
        {
            return meant;
        }

        var sowings = _ids.Where(id => IsSuccession(id, written)).ToArray();
        if (sowings.Length > 0)
        {
            _cells.Refuse(
                cell,
                $"is {Words.Quote(written)}, which is sown {sowings.Length.ToString(CultureInfo.InvariantCulture)} times",
                $"write which sowing it is: {Words.Shown(sowings[0])} to {Words.Shown(sowings[^1])}"
            );
            return written;
        }

        _cells.Refuse(
            cell,
            $"is {Words.Quote(written)}, and the plan has no such batch",
            NearBatch(written) is { } near
                ? $"did you mean {Words.Quote(near)}"
                : "name a batch of plan.csv; add a sowing that was not planned to plan.csv first"
        );
        return written;
    }

    /// <summary>The space that a cell names, by id or by name, or the house where that may be; null with a fault.</summary>
    public string? Space(Cell cell, string written, bool mayBeHouse)
    {
        var known = mayBeHouse ? [.. _spaces, .. _houses] : _spaces;
        var meant = Spelling.Meant(written, known);
        if (!IsWhole || known.Contains(meant, StringComparer.Ordinal))
        {
            return string.Equals(meant, LogFields.Outdoors, StringComparison.Ordinal) ? null : meant;
        }

        string[] spoken = [.. _spoken[Spelling.Loose(written)].Take(2)];
        if (spoken.Length == 1)
        {
            return spoken[0];
        }

        var things = mayBeHouse ? "house or space" : "space";
        _cells.Refuse(
            cell,
            $"is {Words.Quote(written)}, and the site has no such {things}",
            Spelling.Nearest(written, known) is { } near ? $"did you mean {Words.Quote(near)}"
                : known.Length <= 6 ? $"write {Words.List(known, "or")}"
                : $"name a {things} of site.toml"
        );
        return null;
    }

    private static bool IsSuccession(string id, string written) =>
        id.Length > written.Length + 1
        && id[written.Length] == '-'
        && id.StartsWith(written, StringComparison.OrdinalIgnoreCase)
        && id.AsSpan(written.Length + 1).IndexOfAnyExceptInRange('0', '9') < 0;
}
