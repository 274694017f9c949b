using BenchSim.Season.Climate;

namespace BenchSim.Season.Play;

/// <summary>What a lot's stay will bring and has brought: when it is up, ready to pot and grown (docs/model.md sections 4 and 5).</summary>
internal sealed class LotHeat(SeasonState state)
{
    /// <summary>Begins a stay: looks up when the lot will be up, ready to pot and grown, should it stay.</summary>
    public void BeginStay(BatchState batch, Lot lot, int space)
    {
        lot.Space = space;
        lot.EntryHour = state.Now;
        lot.MovedRound = state.Round;
        lot.Hindrance = Hindrance.None;
        Resume(batch, lot, state.Now);
        state.Stays?.Override(batch, lot, state.Scenario.Spaces[space].Kind, state.Now);
    }

    /// <summary>Looks up what the rest of a stay will bring, its heats banked at an instant.</summary>
    public void Resume(BatchState batch, Lot lot, double from)
    {
        lot.BankedHour = from;
        var emerged = lot.EmergedHour <= from;
        if (!emerged || lot.LeaveMatHour > from)
        {
            var heat = EmergenceSum(batch, lot);
            var sofar = heat.At(from) - lot.EmergenceHeat;
            // In the dark seedlings stretch: they leave as half of them are up, if no sooner.
            var leave = IsDark(lot) ? Math.Min(batch.LeaveNeed, batch.EmergeNeed) : batch.LeaveNeed;
            lot.LeaveMatHour = heat.FirstAtOrAbove(sofar + leave, from);
            if (!emerged)
            {
                lot.EmergedHour = heat.FirstAtOrAbove(sofar + batch.EmergeNeed, from);
            }
        }

        LookUpGrowth(batch, lot, from);
    }

    /// <summary>Banks the heats that a stay has brought up to an instant.</summary>
    public void Bank(BatchState batch, Lot lot, double until)
    {
        if (double.IsNaN(lot.PathMeanC))
        {
            if (lot.EmergedHour <= until)
            {
                lot.PathMeanC = PathMeanOf(lot);
            }
            else
            {
                var warmth = state.Climate.TemperatureSum(state.Layout.MediumOf(lot.Space));
                lot.TemperatureSum += warmth.At(until) - warmth.At(lot.BankedHour);
            }
        }

        if (lot.LeaveMatHour > until || lot.EmergedHour > until)
        {
            lot.EmergenceHeat = OfEmergence(batch, lot, until);
        }

        lot.GrowthHeat = OfGrowth(batch, lot, until);
    }

    /// <summary>Mean temperature of the medium from sowing to emergence, degrees Celsius, of a lot that is up.</summary>
    public double PathMeanOf(Lot lot)
    {
        if (!double.IsNaN(lot.PathMeanC))
        {
            return lot.PathMeanC;
        }

        var warmth = state.Climate.TemperatureSum(state.Layout.MediumOf(lot.Space));
        var sum = lot.TemperatureSum + warmth.At(lot.EmergedHour) - warmth.At(lot.BankedHour);
        return (sum / HeatTable.UnitsADegreeDay * 24 / (lot.EmergedHour - lot.SowHour)) - HeatLaw.WarmthShift;
    }

    /// <summary>Heat of emergence up to an instant.</summary>
    public long OfEmergence(BatchState batch, Lot lot, double until)
    {
        var heat = EmergenceSum(batch, lot);
        return lot.EmergenceHeat + heat.At(until) - heat.At(lot.BankedHour);
    }

    /// <summary>Heat of growth up to an instant.</summary>
    public long OfGrowth(BatchState batch, Lot lot, double until)
    {
        if (!(lot.EmergedHour < until) || IsDark(lot))
        {
            return lot.GrowthHeat;
        }

        var growth = GrowthSum(batch, lot);
        return lot.GrowthHeat + growth.At(until) - growth.At(Math.Max(lot.BankedHour, lot.EmergedHour));
    }

    private void LookUpGrowth(BatchState batch, Lot lot, double from)
    {
        var start = Math.Max(from, lot.EmergedHour);
        if (double.IsPositiveInfinity(start) || IsDark(lot))
        {
            start = double.PositiveInfinity;
            lot.PotHour = lot.FinishHour = lot.GrownHour = start;
            return;
        }

        LookUpFinish(batch, lot, start);

        lot.GrownHour = lot.IsFlat ? double.PositiveInfinity : lot.GrownHour;
        if ((lot.IsFlat ? lot.PotHour : lot.GrownHour) <= from)
        {
            // It is there already: where it stands by then, outdoors above all, no heat need be summed.
            return;
        }

        var growth = GrowthSum(batch, lot);
        var sofar = growth.At(start) - lot.GrowthHeat;
        if (lot.IsFlat)
        {
            lot.PotHour = growth.FirstAtOrAbove(sofar + batch.PotUpNeed, start);
        }
        else
        {
            lot.GrownHour = growth.FirstAtOrAbove(sofar + lot.GrowthNeed, start);
        }
    }

    // Grown trays that have not finished anywhere may go there at once.
    private void LookUpFinish(BatchState batch, Lot lot, double start)
    {
        if (batch.Finish.Length == 0 || lot.IsFlat || batch.FinishesOn(lot.Space))
        {
            lot.FinishHour = double.PositiveInfinity;
        }
        else if (batch.Plan.FinishAfterDays is { } days)
        {
            lot.FinishHour = (double.IsNaN(lot.PottedHour) ? lot.EmergedHour : lot.PottedHour) + (days * 24.0);
        }
        else if (!(lot.FinishHour <= start))
        {
            var growth = GrowthSum(batch, lot);
            var need = (long)Math.Ceiling(batch.Plan.FinishAt!.Value * lot.GrowthNeed);
            lot.FinishHour = growth.FirstAtOrAbove(growth.At(start) - lot.GrowthHeat + need, start);
        }
    }

    private bool IsDark(Lot lot) => state.Tables.IsDark[lot.Space];

    private HeatTable EmergenceSum(BatchState batch, Lot lot) =>
        state.Climate.EmergenceSum(state.Layout.EmergenceOf(batch.CropIndex), state.Layout.MediumOf(lot.Space));

    private HeatTable GrowthSum(BatchState batch, Lot lot) =>
        state.Climate.GrowthSum(state.Layout.GrowthOf(batch.CropIndex), state.Layout.AirOf(lot.Space));
}
