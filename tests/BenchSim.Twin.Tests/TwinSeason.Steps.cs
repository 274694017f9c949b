using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Twin.Tests;

/// <summary>The steps of a round.</summary>
internal sealed partial class TwinSeason
{
    /// <summary>The first work round at or after an instant, as a day.</summary>
    private int FirstRoundFrom(double instant)
    {
        var found = 0;
        while ((24 * found) + _rules.RoundAt.ToTimeSpan().TotalHours < instant || !_rules.IsWorkDay(_plan.FirstDay.AddDays(found)))
        {
            found++;
        }

        return found;
    }

    private int DueDay(TwinTray tray) => FirstRoundFrom(tray.Grown + (24 * tray.Batch.Crop.HardeningNights));

    private void ThrowOut()
    {
        foreach (var tray in Standing().Where(tray => Kind(tray) != SpaceKind.Table).ToList())
        {
            if (tray.Emerged > _now)
            {
                if (_day - tray.SownDay >= tray.Batch.Crop.EmergeGiveUpDays)
                {
                    Discard(tray, DiscardReason.NeverCameUp);
                }
            }
            else if (tray.Grown <= _now)
            {
                if (tray.IsFlat && _day - FirstRoundFrom(tray.Grown) >= tray.Batch.Crop.FlatDiscardDays)
                {
                    Discard(tray, DiscardReason.FlatOverHeld);
                }
                else if (!tray.IsFlat && _day - DueDay(tray) >= tray.Batch.Crop.DiscardAfterDays)
                {
                    Discard(tray, DiscardReason.OverHeld);
                }
            }
        }
    }

    private void ThrowOutFromTable()
    {
        foreach (var tray in Standing().Where(tray => Kind(tray) == SpaceKind.Table && tray.Grown <= _now).ToList())
        {
            if (_day - DueDay(tray) >= tray.Batch.Crop.DiscardAfterDays)
            {
                Discard(tray, DiscardReason.OverHeld);
            }
        }
    }

    private void Discard(TwinTray tray, DiscardReason reason)
    {
        Leave(tray, TrayFate.ThrownOut);
        tray.Batch.Outcome.Discarded[(int)reason]++;
        _ = tray.IsFlat ? tray.Batch.Outcome.FlatsDiscarded++ : tray.Batch.Outcome.TraysDiscarded++;
    }

    // A tray is over-held by the day on which it leaves.
    private void Leave(TwinTray tray, TrayFate fate)
    {
        CountOverHeld(tray);
        (tray.Fate, tray.RefusedBy, tray.Held) = (fate, -1, false);
    }

    private void CountOverHeld(TwinTray tray)
    {
        if (tray.IsFlat || tray.Grown > _now)
        {
            return;
        }

        var late = _day - DueDay(tray);
        tray.Batch.Outcome.OverHeld += late > tray.Batch.Crop.HoldDays ? 1 : 0;
        tray.Batch.Outcome.OverHeldForPlace +=
            late > tray.Batch.Crop.HoldDays && late - tray.RefusedDaysSinceGrown <= tray.Batch.Crop.HoldDays ? 1 : 0;
    }

    private void SetOut(TwinTray tray)
    {
        if (Kind(tray) != SpaceKind.Table || tray.Grown > _now)
        {
            return;
        }

        var crop = tray.Batch.Crop;
        var dateAllows = _day >= tray.Batch.SetOutDay - _rules.SetOutEarlyDays;
        if (tray.NightsCounted < crop.HardeningNights)
        {
            tray.Held = dateAllows && tray.NightsStood >= crop.HardeningNights;
            return;
        }

        var labour = _rules.SetOutTraysADay is not { } most || _setOutToday < most;
        if (dateAllows && !_climate.FieldAllowed(_day, tray.Batch.Plan))
        {
            tray.Held = labour;
        }
        else if (dateAllows && labour)
        {
            _setOutToday++;
            Result.SetOut[_day]++;
            tray.OutDay = _day;
            tray.Plants = tray.Batch.PlantsOf(tray);
            tray.Batch.GoneOut.Add(tray);
            Leave(tray, TrayFate.Out);
        }
    }

    private void BenchToTable(TwinTray tray)
    {
        if (tray.IsFlat || Kind(tray) != SpaceKind.Bench)
        {
            return;
        }

        var crop = tray.Batch.Crop;
        var early = tray.Grown > _now;
        if (early && !(_open.Contains(Relief.TableEarly) && tray.HasGrown(_rules.EarlyTableAt, _now)))
        {
            return;
        }

        if (
            _day < tray.Batch.SetOutDay - crop.HardeningNights - _rules.TableLeadDays
            && (tray.Batch.Plan.Finish.Contains(tray.Space) ? tray.Batch.Plan.Finish : tray.Batch.Plan.Benches).Any(bench =>
                Free(bench) > 0
            )
        )
        {
            return;
        }

        var tables = tray.Batch.Plan.Tables;
        var allowed = tables.Where(table => _climate.TableAllowed(table, _day, crop)).ToList();
        if (allowed.Count == 0)
        {
            tray.Held = !early && tables.Any(table => HasRoom(table, tray.PlacesEach));
            return;
        }

        var found = FirstWithRoom(allowed, tray);
        if (found < 0)
        {
            if (!early)
            {
                _barred.UnionWith(allowed);
                Refuse(tray, tables, 1);
            }

            return;
        }

        Move(tray, found);
        Result.ReliefUses[Relief.TableEarly] += early ? 1 : 0;
        tray.Batch.Outcome.OnTable = tray.Batch.Outcome.OnTable < 0 ? _day : tray.Batch.Outcome.OnTable;
    }

    private void Finish(TwinTray tray)
    {
        var plan = tray.Batch.Plan;
        if (tray.IsFlat || Kind(tray) != SpaceKind.Bench || plan.Finish.IsEmpty || plan.Finish.Contains(tray.Space) || tray.Emerged > _now)
        {
            return;
        }

        var from = double.IsNaN(tray.Filled) ? tray.Emerged : tray.Filled;
        var isTime = plan.FinishAfterDays is { } days ? _now >= from + (24 * days) : tray.HasGrown(plan.FinishAt!.Value, _now);
        var bench = isTime ? plan.Finish.FirstOrDefault(each => HasRoom(each, tray.PlacesEach), -1) : -1;
        if (bench >= 0)
        {
            Move(tray, bench);
        }
    }

    private void MoveBack(TwinTray tray)
    {
        if (Kind(tray) != SpaceKind.Bench || tray.Batch.Plan.Finish.Contains(tray.Space))
        {
            return;
        }

        foreach (var bench in tray.Batch.Plan.Benches.TakeWhile(bench => bench != tray.Space))
        {
            if (HasRoom(bench, tray.PlacesEach))
            {
                Move(tray, bench);
                return;
            }
        }
    }

    private void MatToBench(TwinTray tray)
    {
        if (Kind(tray) != SpaceKind.Mat)
        {
            return;
        }

        var isDark = _scenario.Spaces[tray.Space].IsChamber;
        var early = !tray.IsUp(isDark ? Math.Min(0.5, tray.Batch.Crop.LeaveMatAt) : tray.Batch.Crop.LeaveMatAt, _now);
        if (early && !(_open.Contains(Relief.OffMatEarly) && tray.IsUp(_rules.EarlyOffMatAt, _now)))
        {
            return;
        }

        var found = FirstWithRoom(tray.Batch.Plan.Benches, tray);
        if (found < 0)
        {
            // Going early is not waiting.
            if (!early)
            {
                _barred.UnionWith(tray.Batch.Plan.Benches);
                Refuse(tray, tray.Batch.Plan.Benches, 1);
            }

            return;
        }

        Move(tray, found);
        Result.ReliefUses[Relief.OffMatEarly] += early ? 1 : 0;
        tray.Batch.Outcome.OffMat = _day;
    }

    private void Sow(TwinTray tray)
    {
        var batch = tray.Batch;
        if (tray.Fate != TrayFate.Unsown || _day < batch.SowDay || (_rules.SowTraysADay is { } most && _sownToday >= most))
        {
            return;
        }

        var first = batch.Plan.Mats.IsEmpty ? batch.Plan.Benches : batch.Plan.Mats;
        var group = !batch.Plan.Mats.IsEmpty && batch.DaysWaited(_day) >= _rules.SowWaitDays ? first.AddRange(batch.Plan.Benches) : first;
        var found = FirstWithRoom(group, tray);
        if (found < 0)
        {
            _barred.UnionWith(group);
            Refuse(tray, first, 1);
            return;
        }

        tray.Sow(found, _now, _day);
        (tray.RefusedBy, batch.LastSownDay) = (-1, _day);
        _sownToday++;
        Result.Sown[_day]++;
        Result.CellsSown[_day] += tray.IsFlat ? 0 : batch.Plan.Tray.Cells;
        Result.SeedsSown[_day] += tray.IsFlat ? batch.Plan.Order.SeedsPerFlat : batch.Plan.Tray.Cells * batch.Plan.Order.SeedsPerCell;
        batch.Outcome.SownFirst = batch.Outcome.SownFirst < 0 ? _day : batch.Outcome.SownFirst;
        _ = tray.IsFlat ? batch.Outcome.FlatsSown++ : batch.Outcome.TraysStarted++;
    }

    private void Move(TwinTray tray, int space)
    {
        tray.MoveTo(space, _now);
        if (tray.Batch.Outcome.Finishing < 0 && tray.Batch.Plan.Finish.Contains(space))
        {
            tray.Batch.Outcome.Finishing = _day;
        }

        // What has moved in a round is neither refused nor held that day, be it only back to a better bench.
        (tray.RefusedBy, tray.Held) = (-1, false);
        Result.Moved[_day]++;
    }
}
