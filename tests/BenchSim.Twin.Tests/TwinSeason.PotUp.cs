using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Twin.Tests;

/// <summary>Potting up: whole flats, in order, until one is refused.</summary>
internal sealed partial class TwinSeason
{
    private void PotUp()
    {
        _barred.Clear();
        foreach (var flat in InOrder())
        {
            // A flat may have been thrown out as surplus since the order was made.
            if (flat.IsFlat && !flat.MovedThisRound && Kind(flat) == SpaceKind.Bench && flat.Grown <= _now && !PotUp(flat))
            {
                return;
            }
        }
    }

    private bool PotUp(TwinTray flat)
    {
        var batch = flat.Batch;
        var seedlings = batch.CarriedOver + batch.SeedlingsOf(flat);
        var cells = batch.Plan.Tray.Cells;
        var isLast = !batch.Unsown.Any(other => other != flat && other.Fate is TrayFate.Standing or TrayFate.Unsown);
        var trays = Math.Min(isLast ? (seedlings + cells - 1) / cells : seedlings / cells, batch.Plan.Trays - batch.TraysFilled);
        if (_flatPottedToday && _rules.PotUpTraysADay is { } most && _pottedToday + trays > most)
        {
            return false;
        }

        var made = Enumerable.Range(batch.TraysFilled, trays).Select(index => new TwinTray(batch, false, index)).ToList();
        flat.Fate = TrayFate.PottedUp;
        foreach (var tray in made)
        {
            var bench = batch.Plan.Benches.FirstOrDefault(bench => HasRoom(bench, tray.PlacesEach), -1);
            if (bench < 0)
            {
                Undo(flat, made);
                return false;
            }

            tray.Seedlings = Math.Min(cells, seedlings);
            seedlings -= tray.Seedlings;
            tray.FillFrom(flat, bench, _now);
            _all.Add(tray);
        }

        batch.CarriedOver = seedlings;
        batch.TraysFilled += trays;
        (_pottedToday, _flatPottedToday) = (_pottedToday + trays, true);
        Result.Potted[_day] += trays;
        Result.PlantsPotted[_day] += made.Sum(tray => tray.Seedlings);
        batch.Outcome.TraysStarted += trays;
        batch.Outcome.FlatsPotted++;
        batch.Outcome.PottedUp = _day;
        if (batch.TraysFilled == batch.Plan.Trays)
        {
            ThrowOutSurplus(batch);
        }

        return true;
    }

    private void Undo(TwinTray flat, List<TwinTray> made)
    {
        _all.RemoveAll(made.Contains);
        flat.Fate = TrayFate.Standing;
        flat.RefusedAsTrays = true;
        Refuse(flat, flat.Batch.Plan.Benches, made.Count);
        _keptForFlat.UnionWith(flat.Batch.Plan.Benches);
    }

    private void ThrowOutSurplus(TwinBatch batch)
    {
        foreach (var flat in batch.Unsown)
        {
            if (flat.Fate == TrayFate.Standing)
            {
                Discard(flat, DiscardReason.Surplus);
            }
            else if (flat.Fate == TrayFate.Unsown)
            {
                (flat.Fate, flat.RefusedBy) = (TrayFate.Dropped, -1);
            }
        }
    }
}
