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
        var total = rows.Sum(row => (long)row.Times);
        if (total > MostBatches)
        {
            var widest = rows.MaxBy(row => row.Times)!;
            faults.Add(
                widest.Times > 1 ? widest.Row["times"].Place : rows[MostBatches].Place,
                $"the plan has {total.ToString(CultureInfo.InvariantCulture)} batches with its successions",
                "a plan may have up to 10,000: check the column times, or split the plan"
            );
            return [];
        }

        var wanted = rows.Sum(row => (long)(row.Plants ?? 0) * row.Times);
        if (wanted > MostPlants)
        {
            faults.Add(
                rows.MaxBy(row => (long)(row.Plants ?? 0) * row.Times)!.Place,
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
                $"the trays of the plan want {places.ToString("#,##0", CultureInfo.InvariantCulture)} places at least, the most of them here",
                "a plan may want up to 10,000,000: check the columns plants, trays and times, and cells and places_each of the tray"
            );
            return [];
        }

        var batches = ImmutableArray.CreateBuilder<BatchOrder>();
        foreach (var row in rows)
        {
            CheckPacket(row);
            for (var index = 0; index < row.Times && row.Id is not null; index++)
            {
                var id = row.Times == 1 ? row.Id : $"{row.Id}-{(index + 1).ToString(CultureInfo.InvariantCulture)}";
                if (IsNew(id, row) && row is { Crop: { } crop, Tray: { } tray, Plants: { } plants })
                {
                    batches.Add(ToBatch(row, id, crop, tray, plants, index * row.EveryDays));
                }
            }
        }

        CheckPacketsAgainst(rows, batches);
        return batches.ToImmutable();
    }

    private static long PlacesOf(PlanRow row) =>
        row is { Tray: { } tray, Plants: { } plants }
            ? Math.Max(row.Trays ?? 0, ((long)plants + tray.Cells - 1) / tray.Cells) * tray.PlacesEach * row.Times
            : 0;

    private static BatchOrder ToBatch(PlanRow row, string id, Crop crop, TrayType tray, int plants, int days) =>
        new()
        {
            Id = id,
            CropId = crop.Id,
            Grower = row.Grower,
            Plants = plants,
            Sow = row.Sow?.AddDays(days),
            SetOut = row.SetOut?.AddDays(days),
            EarlierDays = row.EarlierDays,
            LaterDays = row.LaterDays,
            Method = row.Method,
            TrayId = tray.Id,
            FlatId = row.Flat?.Id,
            Trays = row.Trays,
            Flats = row.Flats,
            SeedsPerCell = row.SeedsPerCell,
            SeedsPerFlat = row.SeedsPerFlat,
            Germination = row.Germination,
            TestedOn = row.TestedOn,
            PacketId = row.Packet,
            ThousandSeeds = row.ThousandSeeds,
            Note = row.Note,
            Place = row.Place,
        };

    private bool IsNew(string id, PlanRow row)
    {
        if (_ids.TryGetValue(id, out var first))
        {
            var made = row.Times > 1 ? " (a succession)" : "";
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
        foreach (var row in rows.Where(row => row.Packet is { } packet && alone.Contains(packet)))
        {
            faults.Add(
                row.Row["packet"].Place,
                $"the packet {Words.Quote(row.Packet!)} has the name of a batch that names no packet, and would share its seed's luck",
                "give the packet another name, or write it for that batch too"
            );
        }
    }

    private void CheckPacket(PlanRow row)
    {
        if (row.Packet is { } packet)
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
                $"the names {Words.Quote(name)} and {Words.Quote(_hashes[hash])} would share their luck by an accident of arithmetic",
                "change one of them a little"
            );
        }
    }
}
