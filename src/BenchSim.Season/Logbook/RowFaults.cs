using System.Globalization;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Logbook;

/// <summary>Says what is wrong with rows that cannot have happened as they are written.</summary>
internal sealed class RowFaults(Scenario scenario, IReadOnlyList<LogEntry> entries)
{
    private readonly HashSet<BatchBook> _unsown = [];
    private readonly List<LedgerFault> _faults = [];

    /// <summary>The faults so far.</summary>
    public IEnumerable<LedgerFault> All => _faults;

    /// <summary>A row of a batch of which nothing has been sown; told once a batch.</summary>
    public void Unsown(int index, BatchBook book)
    {
        if (!_unsown.Add(book))
        {
            return;
        }

        var entry = entries[index];
        var later = entries.FirstOrDefault(each =>
            each.What == LogKind.Sown && string.Equals(each.BatchId, book.Order.Id, StringComparison.Ordinal)
        );
        var isThatDay = later?.Date == entry.Date;
        var row =
            later is null ? ""
            : isThatDay ? $": its sown row stands below, on line {Whole(later.Place.Line)}"
            : $": line {Whole(later.Place.Line)} has it sown on {Iso(later.Date)}";
        var instead =
            isThatDay ? "put the sown row above this one"
            : later is null ? "write its sown row, or what was counted of it"
            : "mend one of the two dates";
        Refuse(index, "batch", $"is {Quoted(book)}, which was not sown by {Iso(entry.Date)}{row}", instead);
    }

    /// <summary>A row that takes more than stand in the spaces from which it takes them.</summary>
    public void MoreThanStand(int index, BatchBook book, bool areFlats, int count, IReadOnlyList<(int Space, int Count)> spaces)
    {
        var entry = entries[index];
        var standing = spaces.Sum(each => each.Count);
        var others = book.Spaces(areFlats)
            .Where(each => !spaces.Contains(each) && !string.Equals(scenario.Spaces[each.Space].Id, entry.Space, StringComparison.Ordinal))
            .ToArray();
        var where =
            spaces.Count == 1 ? $" in {Quoted(spaces[0].Space)}"
            : entry.Space is null ? ""
            : " elsewhere";
        var instead =
            standing == 0 && others.Length > 0 ? $"there stand {Listed(others)}: mend the row, or write before it how they came there"
            : standing == 0 ? "mend the row, or write before it how they came there"
            : $"write {(standing == 1 ? "1" : $"{Whole(standing)} or fewer")}, or before it what was counted there";
        Refuse(
            index,
            areFlats ? "flats" : "trays",
            $"is {Whole(count)}, and {Pieces(standing, areFlats)} of {Quoted(book)} {(standing == 1 ? "stands" : "stand")}{where} "
                + $"on {Iso(entry.Date)}",
            instead
        );
    }

    /// <summary>A row that does not say from which of several spaces.</summary>
    public void NotPlain(int index, BatchBook book, IEnumerable<(int Space, int Count)> spaces) =>
        Refuse(index, "from", $"is empty, and of {Quoted(book)} there stand {Listed(spaces)}", "write in from where they stood");

    /// <summary>Trays filled from no flat.</summary>
    public void NoFlatBefore(int index, BatchBook book) =>
        Refuse(index, "flats", $"is 0, and no flat of {Quoted(book)} was used up before", "write the flats that were used up");

    private void Refuse(int index, string column, string what, string instead) => _faults.Add(new(index, column, what, instead));

    private string Listed(IEnumerable<(int Space, int Count)> spaces) =>
        string.Join(" and ", spaces.Select(each => $"{Whole(each.Count)} in {Quoted(each.Space)}"));

    private string Quoted(int space) => $"\"{scenario.Spaces[space].Id}\"";

    private static string Quoted(BatchBook book) => $"\"{book.Order.Id}\"";

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Pieces(int count, bool areFlats) =>
        count switch
        {
            0 => areFlats ? "no flats" : "no trays",
            1 => areFlats ? "1 flat" : "1 tray",
            _ => $"{Whole(count)} {(areFlats ? "flats" : "trays")}",
        };
}
