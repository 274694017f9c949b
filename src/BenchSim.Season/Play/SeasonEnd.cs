using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// What became of the season once its last day is over: batches, plants in time, whether it fits (docs/model.md section 9), and the heat.
/// </summary>
internal sealed class SeasonEnd(SeasonState state, WorkRound round)
{
    private readonly HouseDays _houses = new(state);

    /// <summary>Works it out.</summary>
    public void Keep()
    {
        var result = state.Result;
        KeepTrayDays();
        _houses.Keep();
        result.LimitEverBit = Array.Exists(state.Batches, batch => batch.HasMetLimit);
        KeepOutcomes(result.Batches);
        result.Gridlock = round.AnythingWaits();
    }

    /// <summary>Works out what became of the batches, and whether the season fits.</summary>
    /// <param name="others">Outcomes of another play, which stand for the batches that are not played in this one.</param>
    public void KeepOutcomes(BatchOutcome[] others)
    {
        var result = state.Result;
        result.SownInTime = true;
        result.NoneOverHeldForPlace = true;
        result.PlantsInTime = result.PlantsInTimeWeatherCounted = result.PlantsOut = 0;
        var wanted = 0L;
        var missing = default(MissingPlants);
        foreach (var batch in state.Batches)
        {
            var outcome = batch.IsPlayed ? result.Batches[batch.Index] : others[batch.Index];
            if (batch.IsPlayed)
            {
                CountStanding(batch, outcome, batch.OnMat);
                CountStanding(batch, outcome, batch.OnBench);
                CountStanding(batch, outcome, batch.OnTable);
                Keep(batch, outcome);
            }

            wanted += batch.Plan.Order.Plants;
            missing.Add(outcome);
            result.SownInTime &= outcome.SownLast >= 0 && outcome.SownLast <= LastSowDay(batch);
            result.NoneOverHeldForPlace &= outcome.OverHeldForPlace == 0;
            result.PlantsInTime += outcome.PlantsInTime;
            result.PlantsInTimeWeatherCounted += outcome.PlantsInTimeWeatherCounted;
            result.PlantsOut += Math.Min(outcome.PlantsOut, batch.Plan.Order.Plants);
        }

        // In decimal: 0.55 of 100 plants is 55, not 55.00000000000001.
        var goal = (decimal)state.Rules.ServiceGoal * wanted;
        var room = result.SownInTime && result.NoneOverHeldForPlace;
        result.Fits = room && result.PlantsInTime >= goal;
        result.FitsWeatherCounted = room && result.PlantsInTimeWeatherCounted >= goal;
        result.IsShortForThrownOut = missing.AreMostlyThrownOut;
    }

    private void KeepTrayDays()
    {
        for (var grower = 0; grower < state.Result.TrayDays.Length; grower++)
        {
            for (var space = 0; space < state.Places.Spaces; space++)
            {
                state.Result.TrayDays[grower][space] += state.Places.TrayDays(grower, space);
            }
        }
    }

    // The sowing waits its days, and one work day more.
    private int LastSowDay(BatchState batch) =>
        state.Tables.NextWorkDay[Math.Min(batch.SowDay + state.SownInTimeDays + 1, state.Tables.Days)];

    private void Keep(BatchState batch, BatchOutcome outcome)
    {
        var plants = batch.Plan.Order.Plants;
        outcome.SownLast = batch.Unsown == 0 && outcome.GivenUp == 0 ? batch.LastSown : -1;
        outcome.PlantsOut = batch.PlantsOut;
        outcome.PlantsInTime = Math.Min(plants, batch.PlantsInTime);
        outcome.PlantsInTimeWeatherCounted = Math.Min(plants, batch.PlantsInTimeWeatherCounted);
        outcome.PlantsShort = Math.Max(0, plants - batch.PlantsOut);
        outcome.LatePlantDays += (long)outcome.PlantsShort * Math.Max(0, state.Tables.Days - 1 - batch.SetOutDay);
        outcome.OutMedian = MedianOut(batch, outcome.TraysOut);
    }

    // Days come in order; the smallest by which at least half of the trays that went out had done so.
    private static int MedianOut(BatchState batch, int traysOut)
    {
        var sofar = 0;
        foreach (var (day, trays) in batch.OutByDay)
        {
            sofar += trays;
            if (2 * sofar >= traysOut)
            {
                return day;
            }
        }

        return -1;
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
                state.Ledger.KeepStay(batch, lot);
            }
        }
    }
}
