using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Makes lots of trays that stand by what was seen: they go their way once more, stay by stay, for the heat of it.</summary>
internal sealed class PastLots(SeasonState state)
{
    /// <summary>A lot that only names trays in one of their stays.</summary>
    public static Lot Named(TrayPast trays, int stay)
    {
        var lot = new Lot();
        lot.Clear();
        (lot.IsFlat, lot.First, lot.Count, lot.Space) = (trays.AreFlats, trays.First, trays.Count, trays.Path[stay].Space);
        return lot;
    }

    /// <summary>The trays as they stand before the round of a day.</summary>
    public Lot Of(BatchState batch, TrayPast trays, int until)
    {
        var lot = state.Moves.NewLot();
        lot.Clear();
        (lot.First, lot.Count, lot.MovedRound) = (trays.First, trays.Count, 0);
        lot.Hindrance = Hindrance.None;
        lot.IsFlat = batch.IsPotUp;
        lot.SowHour = InstantOf(trays.SowDay);
        lot.GrowthNeed = batch.GrowthNeed;
        for (var stay = 0; stay < trays.Path.Length; stay++)
        {
            var (space, day) = trays.Path[stay];
            var hour = InstantOf(day);
            if (stay > 0)
            {
                state.Heat.Bank(batch, lot, hour);
                lot.OffMatDay = state.Scenario.Spaces[lot.Space].Kind == SpaceKind.Mat ? day : lot.OffMatDay;
            }

            if (lot.IsFlat && !trays.AreFlats && (day >= trays.PottedDay || stay == trays.Path.Length - 1))
            {
                Fill(batch, lot, hour);
            }

            (lot.Space, lot.EntryHour) = (space, hour);
            state.Heat.Resume(batch, lot, hour);
            if (state.Scenario.Spaces[space].Kind == SpaceKind.Table)
            {
                state.Holds.Count(batch, lot, day, stay + 1 < trays.Path.Length ? trays.Path[stay + 1].Day : until);
            }
        }

        return lot;
    }

    /// <summary>Trays that went out are up and grown, whatever the luck of the season says.</summary>
    public void Finish(BatchState batch, Lot lot)
    {
        lot.EmergedHour = Math.Min(lot.EmergedHour, state.Now);
        lot.GrownHour = Math.Min(lot.GrownHour, state.Now);
        if (double.IsNaN(lot.PathMeanC) && !(lot.EmergedHour > lot.SowHour))
        {
            lot.PathMeanC = batch.Crop.GerminateAtC;
        }
    }

    // As potting up does: the flat's past, and the check of it.
    private static void Fill(BatchState batch, Lot lot, double hour)
    {
        lot.IsFlat = false;
        lot.GrowthNeed = batch.GrowthNeed + batch.CheckUnits;
        lot.PotHour = lot.FinishHour = lot.GrownHour = double.PositiveInfinity;
        lot.PottedHour = hour;
    }

    private double InstantOf(int day) => (day * 24.0) + state.Tables.RoundHour;
}
