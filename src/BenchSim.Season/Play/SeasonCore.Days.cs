using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>What is kept of a day: places held and refused, hold days, and the night on the tables.</summary>
internal sealed partial class SeasonCore
{
    private void KeepDay()
    {
        for (var space = 0; space < held.Length; space++)
        {
            result.Held[space][day] = held[space];
        }

        for (var grower = 0; grower < heldByGrower.Length; grower++)
        {
            result.HeldByGrower[grower][day] = heldByGrower[grower];
        }

        daysKept++;

        KeepAisle();
        foreach (var batch in Each(asked))
        {
            if (batch.SowWaiting > 0)
            {
                KeepWaiting(batch, held.Length, batch.SowWaitingAt, batch.SowWaiting, batch.PlacesEach(batch.IsPotUp));
            }

            if (IsAwake(batch))
            {
                KeepHindrances(batch, batch.OnMat, batch.Benches);
                KeepBench(batch);
                if (Grain == LotGrain.Merged)
                {
                    Merge(batch.OnMat);
                    Merge(batch.OnBench);
                }

                batch.WakeHour = NextWake(batch);
            }

            KeepHindrances(batch, batch.OnTable, batch.Tables);
            Night(batch);
            if (Grain == LotGrain.Merged)
            {
                Merge(batch.OnTable);
            }
        }
    }

    private void KeepAisle()
    {
        var relief = rules.Reliefs.IndexOf(Relief.Aisle);
        for (var space = 0; relief >= 0 && space < held.Length; space++)
        {
            // A space that has no places that day has no aisle.
            result.ReliefUses[relief] +=
                capacity[space][day] == 0 ? 0 : Math.Clamp(held[space] - capacity[space][day], 0, tables.Aisle[space]);
        }
    }

    // Trays on a bench wait for a table; flats wait for room on the benches to be potted up.
    private void KeepBench(BatchState batch)
    {
        foreach (var lot in Each(batch.OnBench))
        {
            // A refused flat asks for the places of its trays; the flats behind it are not asked.
            KeepHindrance(batch, lot, lot.IsFlat ? batch.Benches : batch.Tables, lot.IsFlat ? 1 : lot.Count);
        }
    }

    private void KeepHindrances(BatchState batch, List<Lot> lots, int[] group)
    {
        foreach (var lot in Each(lots))
        {
            KeepHindrance(batch, lot, group, lot.Count);
        }
    }

    private void KeepHindrance(BatchState batch, Lot lot, int[] group, int asking)
    {
        switch (lot.Hindrance)
        {
            case Hindrance.Place:
                KeepWaiting(batch, lot.Space, group[0], asking, lot.PlacesRefused);
                if (lot.GrownHour <= now)
                {
                    lot.PlaceDays++;
                }

                break;
            case Hindrance.Hold:
                lot.HoldDays++;
                result.Batches[batch.Index].HoldTrayDays += lot.Count;
                break;
        }
    }

    // From the space where they stand, or from outside, as the space after the last, where they are not sown yet.
    private void KeepWaiting(BatchState batch, int from, int space, int trays, int placesEach)
    {
        result.Waiting[space][day] += trays * placesEach;
        result.Refused[SeasonResult.RefusedRow(from, space, held.Length)][day / SeasonResult.DaysAWeek] += trays * placesEach;
        result.Batches[batch.Index].BlockedTrayDays[space] += trays;
    }

    // The night after the round: counted when warm enough under cover, carried in when it would do damage.
    private void Night(BatchState batch)
    {
        foreach (var lot in Each(batch.OnTable))
        {
            lot.Nights++;
            if (mode == PlayMode.Planning)
            {
                lot.NightsCounted++;
                continue;
            }

            var night = WeatherHold.UnderCover(climate.NightC(layout.AirOf(lot.Space))[day], rules, batch.Crop.HardenAboveC);
            if (night >= batch.Crop.HardenAboveC)
            {
                lot.NightsCounted++;
            }
            else if (night < batch.Crop.DamageBelowC)
            {
                result.CarriedIn[day] += lot.Count;
            }
        }
    }

    private void Merge(List<Lot> lots)
    {
        for (var index = lots.Count - 1; index > 0; index--)
        {
            var (left, right) = (lots[index - 1], lots[index]);
            if (left.First + left.Count == right.First && left.SharesPast(right))
            {
                left.Count += right.Count;
                lots.RemoveAt(index);
                spare.Push(right);
            }
        }
    }
}
