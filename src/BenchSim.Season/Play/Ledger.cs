using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>What is kept of a season as it is played: what moved, what stands and waits at the end of each day, and what left.</summary>
internal sealed class Ledger(SeasonState state)
{
    private readonly PlantCount _plants = new(state);

    /// <summary>Instant of emergence, hours, and mean temperature of the medium up to it, of the lot that went out last.</summary>
    public (double EmergedHour, double PathMeanC) LastOut { get; private set; }

    private int Day => state.Day;

    private SeasonResult Result => state.Result;

    public void Begin()
    {
        var scenario = state.Scenario;
        Result.Prepare(
            state.Places.Spaces,
            scenario.Houses.Length,
            state.Batches.Length,
            state.Places.HeldByGrower.Length,
            state.Tables.Days,
            state.Rules.Reliefs.Length,
            scenario.Mishaps.Length
        );
        Result.Season = state.Season;
    }

    /// <summary>Trays or flats were sown.</summary>
    public void KeepSown(BatchState batch, Lot lot)
    {
        Result.Sown[Day] += lot.Count;
        var outcome = Outcome(batch);
        outcome.SownFirst = outcome.SownFirst < 0 ? Day : outcome.SownFirst;
        if (lot.IsFlat)
        {
            outcome.FlatsSown += lot.Count;
            Result.SeedsSown[Day] += (long)lot.Count * batch.Plan.Order.SeedsPerFlat;
        }
        else
        {
            outcome.TraysStarted += lot.Count;
            var cells = (long)lot.Count * batch.Plan.Tray.Cells;
            Result.CellsSown[Day] += cells;
            Result.SeedsSown[Day] += cells * batch.Plan.Order.SeedsPerCell;
        }

        state.Witness?.Moved(new TrayMove(batch.Index, lot.IsFlat, lot.First, lot.Count, -1, lot.Space, state.Now));
    }

    /// <summary>Trays or flats were moved to the space in which they now stand.</summary>
    public void KeepMove(BatchState batch, Lot lot, int from)
    {
        var outcome = Outcome(batch);
        if (state.Scenario.Spaces[from].Kind == SpaceKind.Mat)
        {
            outcome.OffMat = lot.OffMatDay = Day;
        }

        if (outcome.Finishing < 0 && batch.FinishesOn(lot.Space))
        {
            outcome.Finishing = Day;
        }

        if (state.Scenario.Spaces[lot.Space].Kind == SpaceKind.Table && outcome.OnTable < 0)
        {
            outcome.OnTable = Day;
        }

        Result.Moved[Day] += lot.Count;
        state.Witness?.Moved(new TrayMove(batch.Index, lot.IsFlat, lot.First, lot.Count, from, lot.Space, state.Now));
    }

    /// <summary>A flat is emptied into trays, which are not on their benches yet.</summary>
    public void KeepPotted(BatchState batch, int flat, int seedlings, int trays)
    {
        Result.Potted[Day] += trays;
        Result.PlantsPotted[Day] += Math.Min(batch.Carry + seedlings, (long)trays * batch.Plan.Tray.Cells);
        var outcome = Outcome(batch);
        outcome.FlatsPotted++;
        outcome.TraysStarted += trays;
        outcome.PottedUp = Day;
        state.Witness?.Potted(new FlatPotted(batch.Index, flat, seedlings, batch.Filled, trays, state.Now));
    }

    /// <summary>Trays moved early, by a relief.</summary>
    public void KeepRelief(Relief? relief, int trays)
    {
        if (relief is { } kind && trays > 0)
        {
            Result.ReliefUses[state.Rules.Reliefs.IndexOf(kind)] += trays;
        }
    }

    /// <summary>Trays or flats came that nobody saw sown here: filled from flats, or found.</summary>
    public void KeepCome(BatchState batch, Lot lot, bool areFilled, int sowDay)
    {
        var outcome = Outcome(batch);
        if (areFilled)
        {
            Result.Potted[Day] += lot.Count;
            Result.PlantsPotted[Day] += (long)lot.Count * batch.Plan.Tray.Cells;
            outcome.PottedUp = Day;
        }
        else
        {
            outcome.SownFirst = outcome.SownFirst < 0 ? sowDay : outcome.SownFirst;
        }

        outcome.FlatsSown += lot.IsFlat ? lot.Count : 0;
        outcome.TraysStarted += lot.IsFlat ? 0 : lot.Count;
    }

    /// <summary>Flats went: used up by potting up, or otherwise.</summary>
    public void KeepFlatsGone(BatchState batch, int flats, bool areUsedUp)
    {
        Outcome(batch).FlatsPotted += areUsedUp ? flats : 0;
        Outcome(batch).FlatsDiscarded += areUsedUp ? 0 : flats;
    }

    /// <summary>Trays went otherwise than to the field, for a reason that nobody asks.</summary>
    public void KeepTraysGone(BatchState batch, Lot lot)
    {
        Outcome(batch).TraysDiscarded += lot.Count;
        KeepStay(batch, lot);
    }

    /// <summary>Trays went to the field.</summary>
    /// <param name="batch">Their batch.</param>
    /// <param name="lot">The trays.</param>
    /// <param name="counted">Plants in them, where somebody counted; null to draw them.</param>
    public void KeepOut(BatchState batch, Lot lot, int? counted = null)
    {
        var outcome = Outcome(batch);
        var plants = counted ?? _plants.Of(batch, lot);
        state.Witness?.WentOut(
            new TraysOut(batch.Index, lot.First, lot.Count, lot.Space, plants, lot.HoldDays, lot.SowHour, lot.EmergedHour, state.Now)
        );
        var raw = Math.Max(0, Day - batch.SetOutDay);
        var late = Math.Max(0, raw - lot.HoldDays);
        var wanted = Math.Clamp(batch.Plan.Order.Plants - batch.PlantsOut, 0, plants);
        outcome.LatePlantDays += (long)wanted * late;
        batch.PlantsOut += plants;
        batch.PlantsInTime += late <= state.Rules.LateDays ? plants : 0;
        batch.PlantsInTimeWeatherCounted += raw <= state.Rules.LateDays ? plants : 0;
        batch.OutByDay.Add((Day, lot.Count));
        outcome.TraysOut += lot.Count;
        outcome.GrowingHours += lot.Count * (long)Math.Floor(lot.GrownHour - lot.SowHour);
        outcome.OutFirst = outcome.OutFirst < 0 ? Day : outcome.OutFirst;
        outcome.OutLast = Day;
        Result.SetOut[Day] += lot.Count;
        KeepStay(batch, lot);
        LastOut = (lot.EmergedHour, state.Heat.PathMeanOf(lot));
    }

    /// <summary>Takes a lot out of a list and off its space, and counts it as thrown out.</summary>
    public void ThrowOut(BatchState batch, List<Lot> lots, int index, DiscardReason reason)
    {
        var lot = lots[index];
        lots.RemoveAt(index);
        state.Places.Hold(batch, lot.Space, -lot.Count * batch.PlacesEach(lot.IsFlat));
        state.Changes += lot.Count;
        var ready = reason == DiscardReason.FlatOverHeld ? lot.PotHour : lot.GrownHour + (batch.Crop.HardeningNights * 24.0);
        state.Witness?.Discarded(new TraysDiscarded(batch.Index, lot.IsFlat, lot.First, lot.Count, lot.Space, reason, ready, state.Now));
        var outcome = Outcome(batch);
        outcome.Discarded[(int)reason] += lot.Count;
        if (lot.IsFlat)
        {
            outcome.FlatsDiscarded += lot.Count;
        }
        else
        {
            outcome.TraysDiscarded += lot.Count;
            KeepStay(batch, lot);
        }

        state.Moves.Recycle(lot);
    }

    /// <summary>Unsown trays or flats are given up.</summary>
    public void GiveUp(BatchState batch)
    {
        state.Witness?.GaveUp(new SowingsGivenUp(batch.Index, batch.Unsown, state.Now));
        Outcome(batch).GivenUp += batch.Unsown;
        batch.Unsown = 0;
        batch.SowWaiting = 0;
    }

    /// <summary>Whether a lot is so long past the day it was due that it is thrown out.</summary>
    public bool IsTooLate(BatchState batch, Lot lot) =>
        // The day it is due is never before the day it was grown: most are told apart by that alone.
        lot.GrownHour <= state.Now
        && Day - (int)(lot.GrownHour / 24) >= batch.Crop.DiscardAfterDays
        && Day - DueDay(batch, lot) >= batch.Crop.DiscardAfterDays;

    /// <summary>Counts of a tray that leaves, or stands on the last day, what only its whole stay tells.</summary>
    public void KeepStay(BatchState batch, Lot lot)
    {
        CountThinned(batch, lot);
        CountOverHeld(batch, lot);
    }

    // On the day of the first round after which it stands on no mat and half is up.
    private void CountThinned(BatchState batch, Lot lot)
    {
        if (!batch.Plan.IsThinned || !(lot.EmergedHour <= state.Now) || state.Scenario.Spaces[lot.Space].Kind == SpaceKind.Mat)
        {
            return;
        }

        var day = state.Tables.NextWorkDay[Math.Max(0, Math.Max(lot.OffMatDay, state.Tables.RoundAtOrAfter(lot.EmergedHour)))];
        if (day <= Day)
        {
            Result.CellsThinned[day] += (long)lot.Count * batch.Plan.Tray.Cells;
        }
    }

    // What leaves, or stands on the last day, past its hold.
    private void CountOverHeld(BatchState batch, Lot lot)
    {
        if (!(lot.GrownHour <= state.Now) || state.IsPlanning)
        {
            return;
        }

        var past = Day - DueDay(batch, lot);
        if (past <= batch.Crop.HoldDays)
        {
            return;
        }

        var outcome = Outcome(batch);
        outcome.OverHeld += lot.Count;
        if (past - lot.PlaceDays <= batch.Crop.HoldDays)
        {
            outcome.OverHeldForPlace += lot.Count;
        }
    }

    /// <summary>
    /// The end of a day: places held and refused, hold days, and the night on the tables. Without a round, the last one's waiting goes on.
    /// </summary>
    public void KeepDay()
    {
        var places = state.Places;
        for (var space = 0; space < places.Spaces; space++)
        {
            Result.Held[space][Day] = places.Held[space];
        }

        for (var grower = 0; grower < places.HeldByGrower.Length; grower++)
        {
            Result.HeldByGrower[grower][Day] = places.HeldByGrower[grower];
        }

        places.EveningsLeft--;
        KeepAisle();
        foreach (var batch in SeasonState.Each(state.Asked))
        {
            KeepDay(batch);
        }
    }

    private void KeepDay(BatchState batch)
    {
        if (batch.SowWaiting > 0)
        {
            KeepWaiting(batch, state.Places.Spaces, batch.SowWaitingAt, batch.SowWaiting, batch.PlacesEach(batch.IsPotUp));
        }

        if (batch.IsAwake)
        {
            KeepHindrances(batch, batch.OnMat, batch.Benches);
            KeepBench(batch);
            KeepHindrances(batch, batch.OnTable, batch.Tables);
            state.Holds.Nights(batch, Day + 1);
        }

        if (state.Grain == LotGrain.Merged)
        {
            state.Moves.Merge(batch.OnMat);
            state.Moves.Merge(batch.OnBench);
            state.Moves.Merge(batch.OnTable);
        }
    }

    private void KeepAisle()
    {
        var relief = state.Rules.Reliefs.IndexOf(Relief.Aisle);
        for (var space = 0; relief >= 0 && space < state.Places.Spaces; space++)
        {
            Result.ReliefUses[relief] += state.Places.InAisle(space);
        }
    }

    // Trays on a bench wait for a table; flats wait for room on the benches to be potted up.
    private void KeepBench(BatchState batch)
    {
        foreach (var lot in SeasonState.Each(batch.OnBench))
        {
            // A refused flat asks for the places of its trays; the flats behind it are not asked.
            KeepHindrance(batch, lot, lot.IsFlat ? batch.Benches : batch.Tables, lot.IsFlat ? 1 : lot.Count);
        }
    }

    private void KeepHindrances(BatchState batch, List<Lot> lots, int[] group)
    {
        foreach (var lot in SeasonState.Each(lots))
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
                if (lot.GrownHour <= state.Now)
                {
                    lot.PlaceDays++;
                }

                break;
            case Hindrance.Hold:
                lot.HoldDays++;
                Outcome(batch).HoldTrayDays += lot.Count;
                break;
        }
    }

    // From the space where they stand, or from outside, as the space after the last, where they are not sown yet.
    private void KeepWaiting(BatchState batch, int from, int space, int trays, int placesEach)
    {
        Result.Waiting[space][Day] += trays * placesEach;
        Result.Refused.Add(from, space, Day / SeasonResult.DaysAWeek, trays * placesEach);
        Outcome(batch).BlockedTrayDays[space] += trays;
    }

    /// <summary>The day a lot that is grown is due: the first work round at least the hardening nights after.</summary>
    public int DueDay(BatchState batch, Lot lot) => state.Tables.RoundAtOrAfter(lot.GrownHour + (batch.Crop.HardeningNights * 24.0));

    private BatchOutcome Outcome(BatchState batch) => Result.Batches[batch.Index];
}
