namespace BenchSim.Season.Play;

/// <summary>Step 6: sowing.</summary>
internal sealed partial class SeasonCore
{
    private void Sow()
    {
        step++;
        foreach (var batch in Each(asked))
        {
            // What is active and unsown is due.
            if (batch.Unsown == 0)
            {
                continue;
            }

            batch.SowWaiting = 0;
            var waited = day - batch.SowDay;
            var wantsMat = batch.Mats.Length > 0;
            if (wantsMat)
            {
                SowInto(batch, batch.Mats, batch.OnMat);
            }

            if (batch.Unsown > 0 && (!wantsMat || waited >= rules.SowWaitDays))
            {
                SowInto(batch, batch.Benches, batch.OnBench);
            }

            if (batch.Unsown > 0 && CanSowToday(1) > 0)
            {
                RefuseSowing(batch, wantsMat, waited >= rules.SowWaitDays);
            }
        }
    }

    private void RefuseSowing(BatchState batch, bool wantsMat, bool triedBench)
    {
        batch.SowWaiting = batch.Unsown;
        batch.SowWaitingAt = wantsMat ? batch.Mats[0] : batch.Benches[0];
        if (wantsMat)
        {
            CloseForStep(batch.Mats);
        }

        if (!wantsMat || triedBench)
        {
            CloseForStep(batch.Benches);
        }
    }

    // Once the round has tried everything, its reliefs too.
    private void GiveUpSowings()
    {
        foreach (var batch in Each(asked))
        {
            if (batch.Unsown > 0 && day - batch.SowDay >= rules.SowGiveUpDays && mode == PlayMode.Season)
            {
                GiveUp(batch);
            }
        }
    }

    private void GiveUp(BatchState batch)
    {
        witness?.GaveUp(batch, batch.Unsown, now);
        result.Batches[batch.Index].GivenUp += batch.Unsown;
        batch.Unsown = 0;
        batch.SowWaiting = 0;
    }

    private void SowInto(BatchState batch, int[] group, List<Lot> target)
    {
        var each = batch.PlacesEach(batch.IsPotUp);
        foreach (var space in group)
        {
            var count = CanSowToday(Math.Min(batch.Unsown, Fits(space, each)));
            if (count == 0)
            {
                continue;
            }

            var lot = NewLot();
            Begin(batch, lot, count);
            Settle(batch, lot, space);
            Hold(batch, space, count * each);
            AddLot(batch, target, lot);
            Count(batch, count);
            witness?.Moved(batch, batch.IsPotUp, lot.First, count, -1, space, now);
            if (batch.Unsown == 0)
            {
                return;
            }
        }
    }

    private void Begin(BatchState batch, Lot lot, int count)
    {
        lot.IsFlat = batch.IsPotUp;
        lot.First = batch.NextSown;
        lot.Count = count;
        lot.SowHour = now;
        lot.EmergenceHeat = 0;
        lot.TemperatureSum = 0;
        lot.EmergedHour = double.PositiveInfinity;
        lot.LeaveMatHour = double.PositiveInfinity;
        lot.PathMeanC = double.NaN;
        lot.GrowthHeat = 0;
        lot.GrowthNeed = batch.GrowthNeed;
        lot.PotHour = double.PositiveInfinity;
        lot.GrownHour = double.PositiveInfinity;
        lot.Nights = 0;
        lot.NightsCounted = 0;
        lot.HoldDays = 0;
        lot.PlaceDays = 0;
        lot.PlacesRefused = 0;
        lot.PottedPlants = 0;
        lot.HardenedHour = double.PositiveInfinity;
    }

    private void Count(BatchState batch, int count)
    {
        batch.NextSown += count;
        batch.Unsown -= count;
        sownToday += count;
        moves += count;
        result.Sown[day] += count;
        var outcome = result.Batches[batch.Index];
        outcome.SownFirst = outcome.SownFirst < 0 ? day : outcome.SownFirst;
        batch.LastSown = day;
        if (batch.IsPotUp)
        {
            outcome.FlatsSown += count;
        }
        else
        {
            outcome.TraysStarted += count;
        }
    }

    // A new lot, or one a tray where lots are kept tray by tray.
    private void AddLot(BatchState batch, List<Lot> target, Lot lot)
    {
        batch.WakeHour = 0;
        while (Grain == LotGrain.TrayByTray && lot.Count > 1)
        {
            Insert(target, Split(lot, 1));
        }

        Insert(target, lot);
    }
}
