using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Engine.Randomness;
using BenchSim.Folder.Faults;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Plan;

/// <summary>Expands the rows of the plan to batches and checks their ids.</summary>
internal sealed class PlanExpander(FaultList faults)
{
    /// <summary>Most batches of a plan, successions counted.</summary>
    public const int MostBatches = 10_000;

    /// <summary>Most plants of a plan, successions counted.</summary>
    public const long MostPlants = 1_000_000_000;

    /// <summary>Most places that the trays of a plan may want, counted before any seed fails.</summary>
    public const long MostPlaces = 10_000_000;

    private readonly Dictionary<string, SourcePlace> _ids = new(StringComparer.Ordinal);
    private readonly Dictionary<ulong, string> _hashes = [];

    /// <summary>The batches in the order of the file; rows with a fault are left out.</summary>
    public ImmutableArray<BatchOrder> Expand(IReadOnlyList<PlanRow> rows)
    {
        var total = rows.Sum(row => (long)row.Line.Times);
        if (total > MostBatches)
        {
            var widest = rows.MaxBy(row => row.Line.Times)!;
            faults.Add(
                widest.Line.Times > 1 ? widest.Row["times"].Place : rows[MostBatches].Place,
                $"the plan has {total.ToString(CultureInfo.InvariantCulture)} batches with its successions",
                "a plan may have up to 10,000: check the column times, or split the plan"
            );
            return [];
        }

        var wanted = rows.Sum(row => (long)row.Order.Plants * row.Line.Times);
        if (wanted > MostPlants)
        {
            faults.Add(
                rows.MaxBy(row => (long)row.Order.Plants * row.Line.Times)!.Place,
                $"the plan wants {wanted.ToString("#,##0", CultureInfo.InvariantCulture)} plants in all, the most of them here",
                "a plan may want up to 1,000,000,000: check the columns plants and times"
            );
            return [];
        }

        var places = rows.Sum(PlacesOf);
        if (places > MostPlaces)
        {
            faults.Add(
                rows.MaxBy(PlacesOf)!.Place,
                $"the trays of the plan want {places.ToString("#,##0", CultureInfo.InvariantCulture)} places at least, the most of "
                    + "them here",
                "a plan may want up to 10,000,000: check the columns plants, trays and times, and cells and places_each of the tray"
            );
            return [];
        }

        var batches = ImmutableArray.CreateBuilder<BatchOrder>();
        foreach (var row in rows)
        {
            CheckPacket(row);
            for (var index = 0; index < row.Line.Times && row.Order.Id.Length > 0; index++)
            {
                var id = row.Line.Times == 1 ? row.Order.Id : $"{row.Order.Id}-{(index + 1).ToString(CultureInfo.InvariantCulture)}";
                if (IsNew(id, row) && row is { Crop: not null, Tray: not null, Order.Plants: > 0 })
                {
                    var days = index * row.Line.EveryDays;
                    batches.Add(
                        row.Order with
                        {
                            Id = id,
                            Sow = row.Order.Sow?.AddDays(days),
                            SetOut = row.Order.SetOut?.AddDays(days),
                            Place = row.Place,
                        }
                    );
                }
            }
        }

        CheckPacketsAgainst(rows, batches);
        return batches.ToImmutable();
    }

    private static long PlacesOf(PlanRow row) =>
        row is { Tray: { } tray, Order: { Plants: > 0 } order }
            ? Math.Max(order.Trays ?? 0, ((long)order.Plants + tray.Cells - 1) / tray.Cells) * tray.PlacesEach * row.Line.Times
            : 0;

    private bool IsNew(string id, PlanRow row)
    {
        if (_ids.TryGetValue(id, out var first))
        {
            var made = row.Line.Times > 1 ? " (a succession)" : "";
            faults.Add(
                row.Place,
                $"the batch id {Words.Quote(id)}{made} is taken already, on line {first.Line}",
                "give every batch an id of its own"
            );
            return false;
        }

        _ids.Add(id, row.Place);
        CheckHash(id, row.Place);
        return true;
    }

    // A batch without a packet draws its seed by its own name.
    private void CheckPacketsAgainst(IEnumerable<PlanRow> rows, IEnumerable<BatchOrder> batches)
    {
        var alone = batches.Where(batch => batch.PacketId is null).Select(batch => batch.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var row in rows.Where(row => row.Order.PacketId is { } packet && alone.Contains(packet)))
        {
            faults.Add(
                row.Row["packet"].Place,
                $"the packet {Words.Quote(row.Order.PacketId!)} has the name of a batch that names no packet, and would come up like "
                    + "it",
                "give the packet another name, or write it for that batch too"
            );
        }
    }

    private void CheckPacket(PlanRow row)
    {
        if (row.Order.PacketId is { } packet)
        {
            CheckHash(packet, row.Row["packet"].Place);
        }
    }

    // The luck of a batch is named by a hash of its id: two names with one hash would share their luck.
    private void CheckHash(string name, SourcePlace place)
    {
        var hash = PhiloxKey.Hash(name);
        if (!_hashes.TryAdd(hash, name) && !string.Equals(_hashes[hash], name, StringComparison.Ordinal))
        {
            faults.Add(
                place,
                $"the names {Words.Quote(name)} and {Words.Quote(_hashes[hash])} would get the same draws by an accident of arithmetic",
                "change one of them a little"
            );
        }
    }
}
