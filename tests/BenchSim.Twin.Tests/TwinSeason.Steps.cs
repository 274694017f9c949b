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
        while ((24 * found) + rules.RoundAt.ToTimeSpan().TotalHours < instant || !rules.IsWorkDay(plan.FirstDay.AddDays(found)))
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
            if (tray.Emerged > now)
            {
                if (day - tray.SownDay >= tray.Batch.Crop.EmergeGiveUpDays)
                {
                    Discard(tray, DiscardReason.NeverCameUp);
                }
            }
            else if (tray.Grown <= now)
            {
                if (tray.IsFlat && day - FirstRoundFrom(tray.Grown) >= tray.Batch.Crop.FlatDiscardDays)
                {
                    Discard(tray, DiscardReason.FlatOverHeld);
                }
                else if (!tray.IsFlat && day - DueDay(tray) >= tray.Batch.Crop.DiscardAfterDays)
                {
                    Discard(tray, DiscardReason.OverHeld);
                }
            }
        }
    }

    private void ThrowOutFromTable()
    {
        foreach (var tray in Standing().Where(tray => Kind(tray) == SpaceKind.Table && tray.Grown <= now).ToList())
        {
            if (day - DueDay(tray) >= tray.Batch.Crop.DiscardAfterDays)
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
        if (tray.IsFlat || tray.Grown > now)
        {
            return;
        }

        var late = day - DueDay(tray);
        tray.Batch.Outcome.OverHeld += late > tray.Batch.Crop.HoldDays ? 1 : 0;
        tray.Batch.Outcome.OverHeldForPlace +=
            late > tray.Batch.Crop.HoldDays && late - tray.RefusedDaysSinceGrown <= tray.Batch.Crop.HoldDays ? 1 : 0;
    }

    private void SetOut(TwinTray tray)
    {
        if (Kind(tray) != SpaceKind.Table || tray.Grown > now)
        {
            return;
        }

        var crop = tray.Batch.Crop;
        var dateAllows = day >= tray.Batch.SetOutDay - rules.SetOutEarlyDays;
        if (tray.NightsCounted < crop.HardeningNights)
        {
            tray.Held = dateAllows && tray.NightsStood >= crop.HardeningNights;
            return;
        }

        var labour = rules.SetOutTraysADay is not { } most || setOutToday < most;
        if (dateAllows && !climate.FieldAllowed(day, crop))
        {
            tray.Held = labour;
        }
        else if (dateAllows && labour)
        {
            setOutToday++;
            Result.SetOut[day]++;
            tray.OutDay = day;
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
        var early = tray.Grown > now;
        if (early && !(open.Contains(Relief.TableEarly) && tray.HasGrown(rules.EarlyTableAt, now)))
        {
            return;
        }

        if (
            day < tray.Batch.SetOutDay - crop.HardeningNights - rules.TableLeadDays
            && tray.Batch.Plan.Benches.Any(bench => Free(bench) > 0)
        )
        {
            return;
        }

        var tables = tray.Batch.Plan.Tables;
        var allowed = tables.Where(table => climate.TableAllowed(table, day, crop)).ToList();
        if (allowed.Count == 0)
        {
            tray.Held = tables.Any(table => HasRoom(table, tray.PlacesEach));
            return;
        }

        var found = FirstWithRoom(allowed, tray);
        if (found < 0)
        {
            if (!early)
            {
                barred.UnionWith(allowed);
                Refuse(tray, tables, 1);
            }

            return;
        }

        Move(tray, found);
        Result.ReliefUses[Relief.TableEarly] += early ? 1 : 0;
        tray.Batch.Outcome.OnTable = tray.Batch.Outcome.OnTable < 0 ? day : tray.Batch.Outcome.OnTable;
    }

    private void MoveBack(TwinTray tray)
    {
        if (Kind(tray) != SpaceKind.Bench)
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

        var early = !tray.IsUp(tray.Batch.Crop.LeaveMatAt, now);
        if (early && !(open.Contains(Relief.OffMatEarly) && tray.IsUp(rules.EarlyOffMatAt, now)))
        {
            return;
        }

        var found = FirstWithRoom(tray.Batch.Plan.Benches, tray);
        if (found < 0)
        {
            // Going early is not waiting.
            if (!early)
            {
                barred.UnionWith(tray.Batch.Plan.Benches);
                Refuse(tray, tray.Batch.Plan.Benches, 1);
            }

            return;
        }

        Move(tray, found);
        Result.ReliefUses[Relief.OffMatEarly] += early ? 1 : 0;
        tray.Batch.Outcome.OffMat = day;
    }

    private void Sow(TwinTray tray)
    {
        var batch = tray.Batch;
        if (tray.Fate != TrayFate.Unsown || day < batch.SowDay || (rules.SowTraysADay is { } most && sownToday >= most))
        {
            return;
        }

        var first = batch.Plan.Mats.IsEmpty ? batch.Plan.Benches : batch.Plan.Mats;
        var group = !batch.Plan.Mats.IsEmpty && day - batch.SowDay >= rules.SowWaitDays ? first.AddRange(batch.Plan.Benches) : first;
        var found = FirstWithRoom(group, tray);
        if (found < 0)
        {
            barred.UnionWith(group);
            Refuse(tray, first, 1);
            return;
        }

        tray.Sow(found, now, day);
        (tray.RefusedBy, batch.LastSownDay) = (-1, day);
        sownToday++;
        Result.Sown[day]++;
        batch.Outcome.SownFirst = batch.Outcome.SownFirst < 0 ? day : batch.Outcome.SownFirst;
        _ = tray.IsFlat ? batch.Outcome.FlatsSown++ : batch.Outcome.TraysStarted++;
    }

    private void Move(TwinTray tray, int space)
    {
        tray.MoveTo(space, now);

        // What has moved in a round is neither refused nor held that day, be it only back to a better bench.
        (tray.RefusedBy, tray.Held) = (-1, false);
        Result.Moved[day]++;
    }
}
