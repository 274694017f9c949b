using BenchSim.Season.Inputs;

namespace BenchSim.Season.Logbook;

/// <summary>
/// Keeps the ledger row by row. A row that is wrong is taken as it is meant, so that the rows after it are judged by themselves.
/// </summary>
internal sealed class LedgerKeeper
{
    private readonly Scenario _scenario;
    private readonly IReadOnlyList<LogEntry> _entries;
    private readonly BatchBook[] _books;
    private readonly Dictionary<string, BatchBook> _byId;
    private readonly Dictionary<string, int> _spaces;
    private readonly RowFaults _faults;

    public LedgerKeeper(Scenario scenario, IReadOnlyList<LogEntry> entries)
    {
        (_scenario, _entries, _faults) = (scenario, entries, new RowFaults(scenario, entries));
        _books = [.. scenario.Batches.Select((order, index) => new BatchBook(index, order))];
        _byId = _books.ToDictionary(book => book.Order.Id, StringComparer.Ordinal);
        _spaces = scenario.Spaces.Index().ToDictionary(each => each.Item.Id, each => each.Index, StringComparer.Ordinal);
    }

    public BenchLedger Keep(DateOnly until)
    {
        var days = _entries
            .Index()
            .Where(each => each.Item.Date <= until)
            .GroupBy(each => each.Item.Date)
            .OrderBy(day => day.Key)
            .Select(day => day.ToArray());
        foreach (var day in days)
        {
            var seen = Seen(day.Select(each => each.Item));
            foreach (var (index, entry) in day)
            {
                Keep(index, entry, seen);
            }
        }

        return new BenchLedger
        {
            Batches = [.. _books.Select(book => book.Ledger)],
            Differences =
            [
                .. _books
                    .SelectMany((book, batch) => book.Differences, (book, each) => (Batch: Array.IndexOf(_books, book), each))
                    .Where(pair => pair.each.Open != 0)
                    .OrderBy(pair => pair.each.On)
                    .Select(pair => Told(pair.Batch, pair.each)),
            ],
            Elsewhere = [.. _books.SelectMany(book => book.Elsewhere).OrderBy(each => each.On)],
            Faults = [.. _faults.All],
        };
    }

    private static CountedOtherwise Told(int batch, Difference each) =>
        new(each.On, batch, each.AreFlats, each.Space, each.Expected, each.Counted, each.Open, each.IsWalked);

    // What a row of the day puts into a space, or counts there, was seen there.
    private HashSet<(BatchBook Book, bool AreFlats, string Space)> Seen(IEnumerable<LogEntry> day) =>
        [
            .. from entry in day
            where entry is { What: LogKind.Sown or LogKind.Moved or LogKind.PottedUp or LogKind.Counted, Space: not null }
            let book = BookOf(entry)
            where book is not null
            select (book, entry.What != LogKind.PottedUp && entry.Flats is not null, entry.Space),
        ];

    private BatchBook? BookOf(LogEntry entry) => entry.BatchId is { } id ? _byId.GetValueOrDefault(id) : null;

    private int? SpaceOf(string? id) => id is not null && _spaces.TryGetValue(id, out var space) ? space : null;

    private void Keep(int index, LogEntry entry, HashSet<(BatchBook Book, bool AreFlats, string Space)> seen)
    {
        if (entry.What == LogKind.Walked && SpaceOf(entry.Space) is { } walked)
        {
            Walk(walked, entry, seen);
        }

        if (BookOf(entry) is not { } book)
        {
            return;
        }

        var (areFlats, count) = entry.Flats is { } flats ? (true, flats) : (false, entry.Trays ?? 0);
        if (entry.What == LogKind.Counted)
        {
            if (SpaceOf(entry.Space) is { } at)
            {
                book.Count(areFlats, at, count, entry.Date);
            }
        }
        else if (entry.What == LogKind.Sown)
        {
            if (SpaceOf(entry.Space) is { } to)
            {
                book.Sow(count, to, entry.Date);
            }
        }
        else
        {
            if (!book.IsBegun)
            {
                _faults.Unsown(index, book);
            }

            Go(index, entry, book, areFlats, count);
        }
    }

    private void Go(int index, LogEntry entry, BatchBook book, bool areFlats, int count)
    {
        var on = entry.Date;
        switch (entry.What)
        {
            case LogKind.Moved when SpaceOf(entry.Space) is { } to:
                Each(index, entry, book, areFlats, count, to, (from, part) => book.Move(areFlats, from, to, part, on));
                break;
            case LogKind.PottedUp when SpaceOf(entry.Space) is { } to:
                PotUp(index, entry, book, to);
                break;
            case LogKind.SetOut:
                var plants = (int?)entry.Count;
                Each(index, entry, book, areFlats, count, null, (from, part) =>
                {
                    book.SetOut(from, part, plants, on);
                    plants = null;
                });
                break;
            case LogKind.Up or LogKind.Good or LogKind.Ready or LogKind.NotReady:
                book.See(new(on, entry.What, SpaceOf(entry.Space), (int)(entry.Count ?? 0), entry.Of ?? 0, entry.IsPicked, entry.Word));
                break;
            case LogKind.HandedOver:
                Each(index, entry, book, areFlats, count, null, (from, part) => book.HandOver(from, part, on));
                break;
            case LogKind.ThrownOut:
                Each(index, entry, book, areFlats, count, null, (from, part) => book.ThrowOut(areFlats, from, part, on));
                break;
        }
    }

    private void Walk(int space, LogEntry entry, HashSet<(BatchBook Book, bool AreFlats, string Space)> seen)
    {
        foreach (var book in _books.Where(book => book.IsBegun))
        {
            foreach (var areFlats in new[] { true, false })
            {
                if (book.Standing(areFlats, space) > 0 && !seen.Contains((book, areFlats, entry.Space!)))
                {
                    book.Count(areFlats, space, 0, entry.Date, isWalked: true);
                }
            }
        }
    }

    private void PotUp(int index, LogEntry entry, BatchBook book, int to)
    {
        var (flats, trays) = (entry.Flats ?? 0, entry.Trays ?? 0);
        if (flats == 0 && !book.HasUsedAFlat && book.IsBegun)
        {
            _faults.NoFlatBefore(index, book);
        }

        if (flats == 0)
        {
            book.PotUp(0, to, trays, to, entry.Date);
            return;
        }

        // All its trays are filled with the last of the flats.
        var left = flats;
        Each(index, entry, book, true, flats, null, (from, part) =>
        {
            left -= part;
            book.PotUp(part, from, left == 0 ? trays : 0, to, entry.Date);
        });
    }

    // From the space that the row names, or from the only one there is, or from all of them where all go.
    private void Each(int index, LogEntry entry, BatchBook book, bool areFlats, int count, int? to, Action<int, int> take)
    {
        var spaces = book.Spaces(areFlats).Where(each => each.Space != to).ToArray();
        if (SpaceOf(entry.From) is { } from)
        {
            var there = book.Standing(areFlats, from);
            if (there < count && book.IsBegun)
            {
                _faults.MoreThanStand(index, book, areFlats, count, [(from, there)]);
            }

            take(from, count);
            return;
        }

        var standing = spaces.Sum(each => each.Count);
        if (spaces.Length <= 1 || count >= standing)
        {
            if (standing < count && book.IsBegun)
            {
                _faults.MoreThanStand(index, book, areFlats, count, spaces);
            }

            foreach (var (space, there) in spaces.SkipLast(1))
            {
                take(space, there);
                count -= there;
            }

            take(spaces.Length > 0 ? spaces[^1].Space : to ?? 0, count);
            return;
        }

        if (entry.What is LogKind.SetOut or LogKind.HandedOver && Tables(spaces) is [var table] && table.Count >= count)
        {
            take(table.Space, count);
            return;
        }

        _faults.NotPlain(index, book, spaces);
        var largest = spaces.MaxBy(each => each.Count);
        take(largest.Space, Math.Min(count, largest.Count));
    }

    private (int Space, int Count)[] Tables((int Space, int Count)[] spaces) =>
        [.. spaces.Where(each => _scenario.Spaces[each.Space].Kind == SpaceKind.Table)];
}
