using BenchSim.Season.Inputs;

namespace BenchSim.Twin.Tests;

/// <summary>The days that are over, as they were (docs/model.md section 10).</summary>
internal sealed partial class TwinSeason
{
    private double RoundOf(int day) => (24 * day) + _rules.RoundAt.ToTimeSpan().TotalHours;

    private void LivePast(SeasonPast past)
    {
        var events =
            from batch in past.Batches.Index()
            from trays in batch.Item.Trays
            from stay in Enumerable.Range(trays.Borrowed, trays.Path.Length - trays.Borrowed + 1)
            let isEnd = stay == trays.Path.Length
            where !isEnd || trays.End != TrayEnd.Stands
            let day = isEnd ? trays.EndDay : trays.Path[stay].Day
            orderby day, isEnd, !trays.AreFlats, batch.Index
            select (Day: day, Batch: _batches[batch.Index], Trays: trays, Stay: stay);
        foreach (var (day, batch, trays, stay) in events)
        {
            (_day, _now) = (day, RoundOf(day));
            if (stay == trays.Path.Length)
            {
                Go(batch, trays);
            }
            else if (stay == trays.Borrowed)
            {
                Come(batch, trays);
            }
            else
            {
                Moves(batch, trays, trays.Path[stay - 1].Space, trays.Path[stay].Space);
            }
        }

        foreach (var trays in past.Batches.Index().SelectMany(batch => batch.Item.Trays, (batch, trays) => (batch.Index, trays)))
        {
            CountHeld(_batches[trays.Index], trays.trays, past.Today);
        }

        for (_day = 0; _day < past.Today; _day++)
        {
            CountAisle();
        }

        (_day, _now) = (past.Today, RoundOf(past.Today));
        foreach (var (batch, was) in _batches.Zip(past.Batches))
        {
            Settle(batch, was);
        }
    }

    private void Settle(TwinBatch batch, BatchPast past)
    {
        (batch.WaitsFrom, batch.LastSownDay, batch.TraysFilled) = (_day, past.LastSown, past.Filled);
        var standing = past.Trays.Where(trays => trays.End == TrayEnd.Stands).SelectMany(trays => Recall(batch, trays, _day)).ToList();
        foreach (var tray in standing)
        {
            CountThinnedBefore(tray, _day - 1);
        }

        _all.AddRange(standing);
        batch.Unsown =
        [
            .. standing.Where(tray => tray.IsFlat || batch.Plan.Flat is null),
            .. Enumerable
                .Range(past.NextSown, past.Unsown ?? (batch.Plan.Flat is null ? batch.Plan.Trays : batch.Plan.Flats))
                .Select(index => new TwinTray(batch, batch.Plan.Flat is not null, index)),
        ];
        _all.AddRange(batch.Unsown.Where(tray => tray.Fate == TrayFate.Unsown));
        if (batch.Plan.Flat is not null && batch.TraysFilled >= batch.Plan.Trays)
        {
            ThrowOutSurplus(batch);
        }
    }

    private void Come(TwinBatch batch, TrayPast trays)
    {
        var (outcome, plan) = (batch.Outcome, batch.Plan);
        var isSown = trays.Borrowed == 0;
        if (isSown || trays.PottedDay is null)
        {
            outcome.SownFirst = outcome.SownFirst < 0 ? (isSown ? _day : trays.SowDay) : outcome.SownFirst;
        }

        if (isSown)
        {
            Result.Sown[_day] += trays.Count;
            Result.CellsSown[_day] += trays.AreFlats ? 0 : trays.Count * plan.Tray.Cells;
            Result.SeedsSown[_day] += trays.Count * (trays.AreFlats ? plan.Order.SeedsPerFlat : plan.Tray.Cells * plan.Order.SeedsPerCell);
        }
        else if (trays.PottedDay is not null)
        {
            Result.Potted[_day] += trays.Count;
            Result.PlantsPotted[_day] += trays.Count * plan.Tray.Cells;
            outcome.PottedUp = _day;
        }

        outcome.FlatsSown += trays.AreFlats ? trays.Count : 0;
        outcome.TraysStarted += trays.AreFlats ? 0 : trays.Count;
    }

    private void Moves(TwinBatch batch, TrayPast trays, int from, int to)
    {
        var outcome = batch.Outcome;
        outcome.OffMat = _scenario.Spaces[from].Kind == SpaceKind.Mat ? _day : outcome.OffMat;
        outcome.Finishing = outcome.Finishing < 0 && batch.Plan.Finish.Contains(to) ? _day : outcome.Finishing;
        outcome.OnTable = outcome.OnTable < 0 && _scenario.Spaces[to].Kind == SpaceKind.Table ? _day : outcome.OnTable;
        Result.Moved[_day] += trays.Count;
    }

    private void Go(TwinBatch batch, TrayPast trays)
    {
        if (trays.AreFlats)
        {
            batch.Outcome.FlatsPotted += trays.End == TrayEnd.UsedUp ? trays.Count : 0;
            batch.Outcome.FlatsDiscarded += trays.End == TrayEnd.UsedUp ? 0 : trays.Count;
            return;
        }

        foreach (var (index, tray) in Recall(batch, trays, _day).Index())
        {
            if (trays.End == TrayEnd.Out)
            {
                tray.Finish(_now);
                (tray.OutDay, tray.Plants) = (_day, trays.Plants is { } all ? (index == 0 ? all : 0) : batch.PlantsOf(tray));
                Result.SetOut[_day]++;
                batch.GoneOut.Add(tray);
            }
            else
            {
                batch.Outcome.TraysDiscarded++;
            }

            CountThinnedBefore(tray, _day);
            Leave(tray, trays.End == TrayEnd.Out ? TrayFate.Out : TrayFate.ThrownOut);
        }
    }

    // Each tray goes its way once more, up to the round of a day.
    private List<TwinTray> Recall(TwinBatch batch, TrayPast trays, int until)
    {
        var made = new List<TwinTray>();
        var isPotted = batch.Plan.Flat is not null && !trays.AreFlats;
        for (var index = trays.First; index < trays.First + trays.Count; index++)
        {
            var tray = new TwinTray(batch, batch.Plan.Flat is not null, index);
            tray.Sow(trays.Path[0].Space, RoundOf(trays.Path[0].Day), trays.SowDay);
            tray.SownHour = RoundOf(trays.SowDay);
            foreach (var (stay, (space, day)) in trays.Path.Index())
            {
                var now = RoundOf(day);
                tray.Look(now);
                if (isPotted && tray.IsFlat && (day >= trays.PottedDay || stay == trays.Path.Length - 1))
                {
                    var flat = tray;
                    tray = new TwinTray(batch, false, index)
                    {
                        Seedlings = batch.Plan.Tray.Cells,
                        NightsStood = flat.NightsStood,
                        NightsCounted = flat.NightsCounted,
                    };
                    tray.LeftMat = stay > 0 && _scenario.Spaces[flat.Space].Kind == SpaceKind.Mat ? day : flat.LeftMat;
                    tray.FillFrom(flat, space, now);
                }
                else if (stay > 0)
                {
                    tray.LeftMat = _scenario.Spaces[tray.Space].Kind == SpaceKind.Mat ? day : tray.LeftMat;
                    tray.MoveTo(space, now);
                }

                var end = stay + 1 < trays.Path.Length ? trays.Path[stay + 1].Day : until;
                for (_day = day; _day < end && _scenario.Spaces[space].Kind == SpaceKind.Table; _day++)
                {
                    Night(tray);
                }
            }

            _day = until;
            tray.Look(RoundOf(until));
            made.Add(tray);
        }

        return made;
    }

    // On the first work day after whose round it stood on no mat and half was up, where that is over.
    private void CountThinnedBefore(TwinTray tray, int last)
    {
        var (order, crop) = (tray.Batch.Plan.Order, tray.Batch.Crop);
        if (_scenario.Spaces[tray.Space].Kind == SpaceKind.Mat || tray.Emerged > RoundOf(last))
        {
            return;
        }

        var day = FirstRoundFrom(Math.Max(tray.Emerged, RoundOf(Math.Max(0, tray.LeftMat))));
        if (day <= last)
        {
            tray.IsThinned = true;
            Result.CellsThinned[day] +=
                order.Method == Method.Direct && order.SeedsPerCell > crop.KeepPerCell ? tray.Batch.Plan.Tray.Cells : 0;
        }
    }

    private void CountHeld(TwinBatch batch, TrayPast trays, int today)
    {
        var each = trays.AreFlats ? batch.Plan.Flat!.PlacesEach : batch.Plan.Tray.PlacesEach;
        var end = trays.End == TrayEnd.Stands ? today : Math.Min(today, trays.EndDay);
        for (var stay = trays.Borrowed; stay < trays.Path.Length; stay++)
        {
            var to = stay + 1 < trays.Path.Length ? Math.Min(end, trays.Path[stay + 1].Day) : end;
            for (var day = trays.Path[stay].Day; day < to; day++)
            {
                Result.Held[trays.Path[stay].Space][day] += trays.Count * each;
            }
        }
    }
}
