using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Takes a season's state down as a start, and sets a state from one.</summary>
internal static class Starting
{
    /// <summary>The state at the end of a day as a start for the next. Heats are banked at the midnight between.</summary>
    public static SeasonStart Capture(SeasonState state)
    {
        state.Holds.Nights();
        var day = state.Day + 1;
        var counted = state.Result.Copy();
        for (var grower = 0; grower < counted.TrayDays.Length; grower++)
        {
            for (var space = 0; space < state.Places.Spaces; space++)
            {
                counted.TrayDays[grower][space] = state.Places.TrayDaysSoFar(grower, space);
            }
        }

        return new SeasonStart
        {
            Day = day,
            LastRoundHour = state.Now,
            Batches = [.. state.Batches.Select(batch => Capture(state, batch, day * 24.0))],
            Counted = counted,
        };
    }

    /// <summary>Sets a state that is empty.</summary>
    public static void Set(SeasonState state, SeasonStart start)
    {
        if (start.Counted is { } counted)
        {
            state.Result.CopyFrom(counted);
        }

        state.Now = start.LastRoundHour;
        state.Places.EveningsLeft = state.Tables.Days - start.Day;
        foreach (var (batch, from) in state.Batches.Zip(start.Batches))
        {
            Set(state, batch, from, start.Day * 24.0);
        }

        state.Asked.AddRange(state.Batches.Where(batch => batch.IsAsked).OrderBy(batch => batch.Rank));
    }

    private static BatchStart Capture(SeasonState state, BatchState batch, double dawn) =>
        new()
        {
            Unsown = batch.Unsown,
            Sown = batch.NextSown,
            LastSown = batch.LastSown,
            Waiting = batch.SowWaiting,
            WaitingAt = batch.SowWaitingAt,
            Carry = batch.Carry,
            Filled = batch.Filled,
            PlantsOut = batch.PlantsOut,
            PlantsInTime = batch.PlantsInTime,
            PlantsInTimeWeatherCounted = batch.PlantsInTimeWeatherCounted,
            OutByDay = [.. batch.OutByDay],
            Lots = [.. batch.OnMat.Concat(batch.OnBench).Concat(batch.OnTable).Select(lot => Capture(state, batch, lot, dawn))],
        };

    private static LotStart Capture(SeasonState state, BatchState batch, Lot lot, double dawn)
    {
        var banked = new Lot();
        banked.CopyFrom(lot);
        state.Heat.Bank(batch, banked, dawn);
        return new LotStart
        {
            IsFlat = lot.IsFlat,
            First = lot.First,
            Count = lot.Count,
            Space = lot.Space,
            SowHour = lot.SowHour,
            EntryHour = lot.EntryHour,
            EmergenceHeat = banked.EmergenceHeat,
            TemperatureSum = banked.TemperatureSum,
            UpHour = Past(lot.EmergedHour),
            LeaveMatHour = Past(lot.LeaveMatHour),
            PathMeanC = double.IsNaN(banked.PathMeanC) ? null : banked.PathMeanC,
            GrowthHeat = banked.GrowthHeat,
            PotHour = Past(lot.PotHour),
            PottedHour = double.IsNaN(lot.PottedHour) ? null : lot.PottedHour,
            FinishHour = Past(lot.FinishHour),
            GrownHour = Past(lot.GrownHour),
            Nights = lot.Nights,
            NightsCounted = lot.NightsCounted,
            HoldDays = lot.HoldDays,
            PlaceDays = lot.PlaceDays,
            Hindrance = lot.Hindrance,
            PlacesRefused = lot.PlacesRefused,
            PottedPlants = lot.PottedPlants,
            Spared = lot.Spared,
        };

        double? Past(double hour) => hour <= dawn ? hour : null;
    }

    private static void Set(SeasonState state, BatchState batch, BatchStart from, double dawn)
    {
        (batch.Unsown, batch.NextSown, batch.LastSown) = (from.Unsown, from.Sown, from.LastSown);
        (batch.SowWaiting, batch.SowWaitingAt) = (from.Waiting, from.WaitingAt);
        (batch.Carry, batch.Filled) = (from.Carry, from.Filled);
        (batch.PlantsOut, batch.PlantsInTime) = (from.PlantsOut, from.PlantsInTime);
        batch.PlantsInTimeWeatherCounted = from.PlantsInTimeWeatherCounted;
        batch.OutByDay.AddRange(from.OutByDay);
        foreach (var start in from.Lots)
        {
            var lot = state.Moves.NewLot();
            Set(batch, lot, start);
            state.Heat.Resume(batch, lot, dawn);
            state.Places.Hold(batch, lot.Space, lot.Count * batch.PlacesEach(lot.IsFlat));
            LotMoves.Insert(ListOf(batch, state.Scenario.Spaces[lot.Space].Kind), lot);
        }

        batch.NightsFrom = (int)(dawn / 24);
        batch.IsAsked = batch.IsStanding || batch.SowWaiting > 0;
    }

    private static void Set(BatchState batch, Lot lot, LotStart start)
    {
        lot.Clear();
        lot.IsFlat = start.IsFlat;
        lot.First = start.First;
        lot.Count = start.Count;
        lot.Space = start.Space;
        lot.SowHour = start.SowHour;
        lot.EntryHour = start.EntryHour;
        lot.EmergenceHeat = start.EmergenceHeat;
        lot.TemperatureSum = start.TemperatureSum;
        lot.EmergedHour = start.UpHour ?? double.PositiveInfinity;
        lot.LeaveMatHour = start.LeaveMatHour ?? double.PositiveInfinity;
        lot.PathMeanC = start.PathMeanC ?? double.NaN;
        lot.GrowthHeat = start.GrowthHeat;
        lot.GrowthNeed = batch.GrowthNeed + (batch.IsPotUp && !start.IsFlat ? batch.CheckUnits : 0);
        lot.PotHour = start.PotHour ?? double.PositiveInfinity;
        lot.PottedHour = start.PottedHour ?? double.NaN;
        lot.FinishHour = start.FinishHour ?? double.PositiveInfinity;
        lot.GrownHour = start.GrownHour ?? double.PositiveInfinity;
        lot.Nights = start.Nights;
        lot.NightsCounted = start.NightsCounted;
        lot.HoldDays = start.HoldDays;
        lot.PlaceDays = start.PlaceDays;
        lot.Hindrance = start.Hindrance;
        lot.PlacesRefused = start.PlacesRefused;
        lot.PottedPlants = start.PottedPlants;
        lot.Spared = start.Spared;
        lot.MovedRound = 0;
    }

    private static List<Lot> ListOf(BatchState batch, SpaceKind kind) =>
        kind switch
        {
            SpaceKind.Mat => batch.OnMat,
            SpaceKind.Bench => batch.OnBench,
            _ => batch.OnTable,
        };
}
