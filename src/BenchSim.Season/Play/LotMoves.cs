using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>How lots are split, moved, refused and kept in order.</summary>
internal sealed class LotMoves(SeasonState state)
{
    private readonly Stack<Lot> _spare = new();
    private Lot[] _hand = new Lot[16];

    public Lot NewLot() => _spare.TryPop(out var lot) ? lot : new Lot();

    public void Recycle(Lot lot) => _spare.Push(lot);

    public void Recycle(List<Lot> lots)
    {
        foreach (var lot in lots)
        {
            _spare.Push(lot);
        }

        lots.Clear();
    }

    /// <summary>The lots as they stand before any of them moves.</summary>
    public ReadOnlySpan<Lot> TakeInHand(List<Lot> lots)
    {
        if (_hand.Length < lots.Count)
        {
            _hand = new Lot[2 * lots.Count];
        }

        lots.CopyTo(_hand);
        return _hand.AsSpan(0, lots.Count);
    }

    /// <summary>Puts a lot into a list in the order of entry, then of lowest index.</summary>
    public static void Insert(List<Lot> lots, Lot lot)
    {
        var at = lots.Count;
        while (
            at > 0
            && (lots[at - 1].EntryHour > lot.EntryHour || (lots[at - 1].EntryHour.Equals(lot.EntryHour) && lots[at - 1].First > lot.First))
        )
        {
            at--;
        }

        lots.Insert(at, lot);
    }

    /// <summary>Puts a new lot into a list, as one lot a tray where lots are kept tray by tray.</summary>
    public void Add(BatchState batch, List<Lot> target, Lot lot)
    {
        batch.IsAwake = true;
        while (state.Grain == LotGrain.TrayByTray && lot.Count > 1)
        {
            Insert(target, Split(lot, 1));
        }

        Insert(target, lot);
    }

    /// <summary>Takes the first trays of a lot out of it as a lot of their own; the whole lot when it is all of it.</summary>
    public Lot Split(Lot lot, int count)
    {
        if (count == lot.Count)
        {
            return lot;
        }

        var part = NewLot();
        part.CopyFrom(lot);
        part.Count = count;
        lot.First += count;
        lot.Count -= count;
        return part;
    }

    /// <summary>Moves as many trays of a lot as find room, lowest indices first, each to the first space of the group with room.</summary>
    /// <returns>Trays left without a place; the lot then holds just those.</returns>
    public int Into(BatchState batch, Lot lot, ReadOnlySpan<int> group, List<Lot> target)
    {
        var each = batch.PlacesEach(lot.IsFlat);
        var from = lot.Space;
        foreach (var space in group)
        {
            var count = state.Places.Fits(batch, space, each, lot.Count);
            if (count == 0)
            {
                continue;
            }

            var all = count == lot.Count;
            var part = Split(lot, count);
            state.Places.Hold(batch, from, -count * each);
            state.Heat.Bank(batch, part, state.Now);
            state.Heat.BeginStay(batch, part, space);
            state.Places.Hold(batch, space, count * each);
            Insert(target, part);
            batch.IsAwake = true;
            state.Ledger.KeepMove(batch, part, from);
            state.Changes += count;
            if (all)
            {
                return 0;
            }
        }

        return lot.Count;
    }

    /// <summary>
    /// Moves what fits; what does not is refused, and nobody behind it may take a place it was after. What would go early is never refused.
    /// </summary>
    /// <param name="batch">Batch.</param>
    /// <param name="lot">Trays that are ready.</param>
    /// <param name="group">Spaces it may go to, in order of preference.</param>
    /// <param name="source">Where it stands.</param>
    /// <param name="target">Where what moves is kept.</param>
    /// <param name="relief">The relief by which it goes early; null where it goes in its time.</param>
    public void IntoOrRefuse(BatchState batch, Lot lot, int[] group, List<Lot> source, List<Lot> target, Relief? relief)
    {
        if (state.Places.AnyFits(batch, group, batch.PlacesEach(lot.IsFlat)))
        {
            var before = lot.Count;
            source.Remove(lot);
            var left = Into(batch, lot, group, target);
            state.Ledger.KeepRelief(relief, before - left);
            if (left == 0)
            {
                return;
            }

            Insert(source, lot);
        }

        if (relief is null)
        {
            Refuse(lot, batch.PlacesEach(lot.IsFlat));
            state.Places.CloseForStep(group);
        }
    }

    public static void Refuse(Lot lot, int placesEach)
    {
        lot.Hindrance = Hindrance.Place;
        lot.PlacesRefused = placesEach;
    }

    /// <summary>Joins neighbours that differ in nothing but their indices.</summary>
    public void Merge(List<Lot> lots)
    {
        for (var index = lots.Count - 1; index > 0; index--)
        {
            var (left, right) = (lots[index - 1], lots[index]);
            if (left.First + left.Count == right.First && left.SharesPast(right))
            {
                left.Count += right.Count;
                lots.RemoveAt(index);
                Recycle(right);
            }
        }
    }
}
