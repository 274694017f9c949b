using BenchSim.Season.Climate;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Play;

/// <summary>What became of the batches (docs/model.md section 9).</summary>
internal sealed partial class SeasonCore
{
    private double[] trayDraws = [];
    private (double EmergedHour, double PathMeanC) lastOut;

    private void KeepOut(BatchState batch, Lot lot)
    {
        var outcome = result.Batches[batch.Index];
        var plants = PlantsOf(batch, lot);
        witness?.WentOut(batch, lot, plants, now);
        var raw = Math.Max(0, day - batch.SetOutDay);
        var late = Math.Max(0, raw - lot.HoldDays);
        var wanted = Math.Clamp(batch.Plan.Order.Plants - batch.PlantsOut, 0, plants);
        outcome.LatePlantDays += (long)wanted * late;
        batch.PlantsOut += plants;
        batch.PlantsInTime += late <= rules.LateDays ? plants : 0;
        batch.PlantsInTimeWeatherCounted += raw <= rules.LateDays ? plants : 0;
        batch.TraysOut += lot.Count;
        batch.OutByDay.Add((day, lot.Count));
        outcome.TraysOut += lot.Count;
        outcome.OutFirst = outcome.OutFirst < 0 ? day : outcome.OutFirst;
        outcome.OutLast = day;
        CountOverHeld(batch, lot);
        lastOut = (lot.EmergedHour, PathMeanOf(lot));
    }

    // Plants in the trays of a lot when it leaves. They share a past, and so the chance of a plant in a cell; each has its own luck.
    private int PlantsOf(BatchState batch, Lot lot)
    {
        if (lot.PottedPlants > 0)
        {
            return PlantsOfPartTrays(batch, lot);
        }

        var chance = 1 - batch.Crop.StandLoss;
        if (!batch.IsPotUp)
        {
            var seed = batch.PacketGermination * Stand.RelativeGermination(batch.Crop, PathMeanOf(lot));
            chance *= Stand.CellChance(seed, batch.Plan.Order.SeedsPerCell);
        }

        if (chance >= 1)
        {
            return lot.Count * batch.Plan.Tray.Cells;
        }

        var plants = 0;
        foreach (var u in TrayDraws(batch, lot))
        {
            plants += batch.Fill.Quantile(chance, u);
        }

        return plants;
    }

    private int PlantsOfPartTrays(BatchState batch, Lot lot)
    {
        Span<double> cumulative = stackalloc double[lot.PottedPlants + 1];
        Binomial.Cumulative(lot.PottedPlants, 1 - batch.Crop.StandLoss, cumulative);
        var plants = 0;
        foreach (var u in TrayDraws(batch, lot))
        {
            plants += Binomial.Quantile(cumulative, u);
        }

        return plants;
    }

    private ReadOnlySpan<double> TrayDraws(BatchState batch, Lot lot)
    {
        if (trayDraws.Length < lot.Count)
        {
            trayDraws = new double[2 * lot.Count];
        }

        var draws = trayDraws.AsSpan(0, lot.Count);
        if (mode == PlayMode.Planning)
        {
            draws.Fill(0.5);
        }
        else
        {
            batch.Luck.Fill(season, LuckPurpose.Tray, lot.First, draws);
        }

        return draws;
    }

    private void CountOverHeld(BatchState batch, Lot lot)
    {
        if (!(lot.GrownHour <= now) || mode == PlayMode.Planning)
        {
            return;
        }

        var past = day - DueDay(batch, lot);
        if (past <= batch.Crop.HoldDays)
        {
            return;
        }

        var outcome = result.Batches[batch.Index];
        outcome.OverHeld += lot.Count;
        if (past - lot.PlaceDays <= batch.Crop.HoldDays)
        {
            outcome.OverHeldForPlace += lot.Count;
        }
    }

    private void Finish()
    {
        KeepHeat();
        result.SownInTime = true;
        result.NoneOverHeldForPlace = true;
        result.PlantsInTime = result.PlantsInTimeWeatherCounted = result.PlantsOut = 0;
        var wanted = 0L;
        foreach (var batch in batches)
        {
            var outcome = result.Batches[batch.Index];
            CountStanding(batch, outcome);
            FinishBatch(batch, outcome);
            wanted += batch.Plan.Order.Plants;
            result.SownInTime &= outcome.SownLast >= 0 && outcome.SownLast <= LastSowDay(batch);
            result.NoneOverHeldForPlace &= outcome.OverHeldForPlace == 0;
            result.PlantsInTime += outcome.PlantsInTime;
            result.PlantsInTimeWeatherCounted += outcome.PlantsInTimeWeatherCounted;
            result.PlantsOut += Math.Min(outcome.PlantsOut, batch.Plan.Order.Plants);
        }

        // In decimal: 0.55 of 100 plants is 55, not 55.00000000000001.
        var goal = (decimal)rules.ServiceGoal * wanted;
        var room = result.SownInTime && result.NoneOverHeldForPlace;
        result.Fits = room && result.PlantsInTime >= goal;
        result.FitsWeatherCounted = room && result.PlantsInTimeWeatherCounted >= goal;
        result.Gridlock = AnythingWaits();
    }

    // The sowing waits its days, and one work day more.
    private int LastSowDay(BatchState batch) => tables.NextWorkDay[Math.Min(batch.SowDay + rules.SowWaitDays + 1, tables.Days)];

    private void FinishBatch(BatchState batch, BatchOutcome outcome)
    {
        var plants = batch.Plan.Order.Plants;
        outcome.SownLast = batch.Unsown == 0 && outcome.GivenUp == 0 ? batch.LastSown : -1;
        outcome.PlantsOut = batch.PlantsOut;
        outcome.PlantsInTime = Math.Min(plants, batch.PlantsInTime);
        outcome.PlantsInTimeWeatherCounted = Math.Min(plants, batch.PlantsInTimeWeatherCounted);
        outcome.PlantsShort = Math.Max(0, plants - batch.PlantsOut);
        outcome.LatePlantDays += (long)outcome.PlantsShort * Math.Max(0, tables.Days - 1 - batch.SetOutDay);
        outcome.OutMedian = MedianOut(batch);
    }

    // Days come in order; the smallest by which at least half of the trays that went out had done so.
    private static int MedianOut(BatchState batch)
    {
        var sofar = 0;
        foreach (var (day, trays) in batch.OutByDay)
        {
            sofar += trays;
            if (2 * sofar >= batch.TraysOut)
            {
                return day;
            }
        }

        return -1;
    }

    private void CountStanding(BatchState batch, BatchOutcome outcome)
    {
        CountStanding(batch, outcome, batch.OnMat);
        CountStanding(batch, outcome, batch.OnBench);
        CountStanding(batch, outcome, batch.OnTable);
    }

    private void CountStanding(BatchState batch, BatchOutcome outcome, List<Lot> lots)
    {
        foreach (var lot in lots)
        {
            if (lot.IsFlat)
            {
                outcome.FlatsStanding += lot.Count;
            }
            else
            {
                outcome.TraysStanding += lot.Count;
                CountOverHeld(batch, lot);
            }
        }
    }
}
