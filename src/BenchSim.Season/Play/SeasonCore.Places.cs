using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Places: who holds them, who may take them, and what a lot's stay will bring.</summary>
internal sealed partial class SeasonCore
{
    /// <summary>Most trays of a size that still fit a space, 0 when it is shut or kept for others.</summary>
    private int Fits(int space, int placesEach)
    {
        if (closedInStep[space] == step || closedInPass[space] == pass)
        {
            return 0;
        }

        return Math.Max(0, Room(space)) / placesEach;
    }

    private int Room(int space)
    {
        var places = capacity[space][day];
        if (aisleOpen && places > 0)
        {
            places += tables.Aisle[space];
        }

        return places - held[space];
    }

    private void Hold(BatchState batch, int space, int places)
    {
        held[space] += places;
        heldByGrower[batch.Grower] += places;

        // Held from the next evening on for every day to come, until they are left: cheaper than a count each evening.
        result.TrayDays[batch.Grower][space] += (long)places * (tables.Days - daysKept);
    }

    // After a refusal nobody behind in the order may take what the refused tray was after: no overtaking.
    private void CloseForStep(int[] group)
    {
        foreach (var space in group)
        {
            closedInStep[space] = step;
        }
    }

    private bool IsFull(int[] group)
    {
        foreach (var space in group)
        {
            if (Room(space) > 0)
            {
                return false;
            }
        }

        return true;
    }

    // Puts a lot into a list in the order of entry, then of lowest index.
    private static void Insert(List<Lot> lots, Lot lot)
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

    /// <summary>Begins a stay: looks up when the lot will be up, ready to pot and grown, should it stay.</summary>
    private void Settle(BatchState batch, Lot lot, int space)
    {
        lot.Space = space;
        lot.EntryHour = now;
        lot.MovedRound = round;
        lot.Hindrance = Hindrance.None;
        var emerged = lot.EmergedHour <= now;
        if (!emerged || lot.LeaveMatHour > now)
        {
            var heat = climate.EmergenceSum(layout.EmergenceOf(batch.CropIndex), layout.MediumOf(space));
            var sofar = heat.At(now) - lot.EmergenceHeat;
            lot.LeaveMatHour = heat.FirstAtOrAbove(sofar + batch.LeaveNeed, now);
            if (!emerged)
            {
                lot.EmergedHour = heat.FirstAtOrAbove(sofar + batch.EmergeNeed, now);
            }
        }

        LookUpGrowth(batch, lot);
        Stays?.Override(batch, lot, scenario.Spaces[space].Kind, now);
    }

    private void LookUpGrowth(BatchState batch, Lot lot)
    {
        var start = Math.Max(now, lot.EmergedHour);
        if (double.IsPositiveInfinity(start))
        {
            lot.PotHour = start;
            lot.GrownHour = start;
            return;
        }

        var growth = climate.GrowthSum(layout.GrowthOf(batch.CropIndex), layout.AirOf(lot.Space));
        var sofar = growth.At(start) - lot.GrowthHeat;
        if (lot.IsFlat)
        {
            lot.PotHour = lot.PotHour <= now ? lot.PotHour : growth.FirstAtOrAbove(sofar + batch.PotUpNeed, start);
            lot.GrownHour = double.PositiveInfinity;
        }
        else if (!(lot.GrownHour <= now))
        {
            lot.GrownHour = growth.FirstAtOrAbove(sofar + lot.GrowthNeed, start);
        }
    }

    /// <summary>Ends a stay: banks the heats it brought.</summary>
    private void Bank(BatchState batch, Lot lot)
    {
        var medium = layout.MediumOf(lot.Space);
        if (double.IsNaN(lot.PathMeanC))
        {
            var warmth = climate.TemperatureSum(medium);
            if (lot.EmergedHour <= now)
            {
                lot.PathMeanC = PathMeanOf(lot);
            }
            else
            {
                lot.TemperatureSum += warmth.At(now) - warmth.At(lot.EntryHour);
            }
        }

        if (lot.LeaveMatHour > now || lot.EmergedHour > now)
        {
            lot.EmergenceHeat = HeatOfEmergence(batch, lot);
        }

        lot.GrowthHeat = HeatOfGrowth(batch, lot);
    }

    /// <summary>Mean temperature of the medium from sowing to emergence, degrees Celsius, of a lot that is up.</summary>
    private double PathMeanOf(Lot lot)
    {
        if (!double.IsNaN(lot.PathMeanC))
        {
            return lot.PathMeanC;
        }

        var warmth = climate.TemperatureSum(layout.MediumOf(lot.Space));
        var sum = lot.TemperatureSum + warmth.At(lot.EmergedHour) - warmth.At(lot.EntryHour);
        return (sum / HeatTable.UnitsADegreeDay * 24 / (lot.EmergedHour - lot.SowHour)) - SeasonClimate.TemperatureShift;
    }

    private long HeatOfEmergence(BatchState batch, Lot lot)
    {
        var heat = climate.EmergenceSum(layout.EmergenceOf(batch.CropIndex), layout.MediumOf(lot.Space));
        return lot.EmergenceHeat + heat.At(now) - heat.At(lot.EntryHour);
    }

    private long HeatOfGrowth(BatchState batch, Lot lot)
    {
        if (!(lot.EmergedHour < now))
        {
            return lot.GrowthHeat;
        }

        var growth = climate.GrowthSum(layout.GrowthOf(batch.CropIndex), layout.AirOf(lot.Space));
        return lot.GrowthHeat + growth.At(now) - growth.At(Math.Max(lot.EntryHour, lot.EmergedHour));
    }

    /// <summary>Takes the first trays of a lot out of it as a lot of their own; the whole lot when it is all of it.</summary>
    private Lot Split(Lot lot, int count)
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

    /// <summary>
    /// Moves as many trays of a lot as find room, lowest indices first, each to the first space of the group with room.
    /// </summary>
    /// <returns>Trays left without a place; the lot then holds just those.</returns>
    private int MoveInto(BatchState batch, Lot lot, int[] group, List<Lot> target)
    {
        var each = batch.PlacesEach(lot.IsFlat);
        var from = lot.Space;
        foreach (var space in group)
        {
            var count = Math.Min(lot.Count, Fits(space, each));
            if (count == 0)
            {
                continue;
            }

            var all = count == lot.Count;
            var part = Split(lot, count);
            Hold(batch, from, -count * each);
            Bank(batch, part);
            Settle(batch, part, space);
            Hold(batch, space, count * each);
            Insert(target, part);
            batch.WakeHour = 0;
            KeepMove(batch, from, space);
            result.Moved[day] += count;
            moves += count;
            witness?.Moved(batch, part.IsFlat, part.First, count, from, space, now);
            if (all)
            {
                return 0;
            }
        }

        return lot.Count;
    }

    private void KeepMove(BatchState batch, int from, int to)
    {
        var outcome = result.Batches[batch.Index];
        if (scenario.Spaces[from].Kind == SpaceKind.Mat)
        {
            outcome.OffMat = day;
        }

        if (scenario.Spaces[to].Kind == SpaceKind.Table && outcome.OnTable < 0)
        {
            outcome.OnTable = day;
        }
    }

    private static void Refuse(Lot lot, int placesEach)
    {
        lot.Hindrance = Hindrance.Place;
        lot.PlacesRefused = placesEach;
    }
}
