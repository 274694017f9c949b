using BenchSim.Season.Climate;

namespace BenchSim.Season.Play;

/// <summary>What a lot's stay will bring and has brought: when it is up, ready to pot and grown (docs/model.md sections 4 and 5).</summary>
internal sealed class LotHeat(SeasonState state)
{
    /// <summary>Begins a stay: looks up when the lot will be up, ready to pot and grown, should it stay.</summary>
    public void BeginStay(BatchState batch, Lot lot, int space)
    {
        var (now, layout) = (state.Now, state.Layout);
        lot.Space = space;
        lot.EntryHour = now;
        lot.MovedRound = state.Round;
        lot.Hindrance = Hindrance.None;
        var emerged = lot.EmergedHour <= now;
        if (!emerged || lot.LeaveMatHour > now)
        {
            var heat = state.Climate.EmergenceSum(layout.EmergenceOf(batch.CropIndex), layout.MediumOf(space));
            var sofar = heat.At(now) - lot.EmergenceHeat;
            lot.LeaveMatHour = heat.FirstAtOrAbove(sofar + batch.LeaveNeed, now);
            if (!emerged)
            {
                lot.EmergedHour = heat.FirstAtOrAbove(sofar + batch.EmergeNeed, now);
            }
        }

        LookUpGrowth(batch, lot);
        state.Stays?.Override(batch, lot, state.Scenario.Spaces[space].Kind, now);
    }

    /// <summary>Ends a stay: banks the heats it brought.</summary>
    public void EndStay(BatchState batch, Lot lot)
    {
        var now = state.Now;
        if (double.IsNaN(lot.PathMeanC))
        {
            if (lot.EmergedHour <= now)
            {
                lot.PathMeanC = PathMeanOf(lot);
            }
            else
            {
                var warmth = state.Climate.TemperatureSum(state.Layout.MediumOf(lot.Space));
                lot.TemperatureSum += warmth.At(now) - warmth.At(lot.EntryHour);
            }
        }

        if (lot.LeaveMatHour > now || lot.EmergedHour > now)
        {
            lot.EmergenceHeat = OfEmergence(batch, lot);
        }

        lot.GrowthHeat = OfGrowth(batch, lot);
    }

    /// <summary>Mean temperature of the medium from sowing to emergence, degrees Celsius, of a lot that is up.</summary>
    public double PathMeanOf(Lot lot)
    {
        if (!double.IsNaN(lot.PathMeanC))
        {
            return lot.PathMeanC;
        }

        var warmth = state.Climate.TemperatureSum(state.Layout.MediumOf(lot.Space));
        var sum = lot.TemperatureSum + warmth.At(lot.EmergedHour) - warmth.At(lot.EntryHour);
        return (sum / HeatTable.UnitsADegreeDay * 24 / (lot.EmergedHour - lot.SowHour)) - SeasonClimate.TemperatureShift;
    }

    /// <summary>Heat of emergence up to now.</summary>
    public long OfEmergence(BatchState batch, Lot lot)
    {
        var heat = state.Climate.EmergenceSum(state.Layout.EmergenceOf(batch.CropIndex), state.Layout.MediumOf(lot.Space));
        return lot.EmergenceHeat + heat.At(state.Now) - heat.At(lot.EntryHour);
    }

    /// <summary>Heat of growth up to now.</summary>
    public long OfGrowth(BatchState batch, Lot lot)
    {
        if (!(lot.EmergedHour < state.Now))
        {
            return lot.GrowthHeat;
        }

        var growth = GrowthSum(batch, lot);
        return lot.GrowthHeat + growth.At(state.Now) - growth.At(Math.Max(lot.EntryHour, lot.EmergedHour));
    }

    private void LookUpGrowth(BatchState batch, Lot lot)
    {
        var start = Math.Max(state.Now, lot.EmergedHour);
        if (double.IsPositiveInfinity(start))
        {
            lot.PotHour = start;
            lot.GrownHour = start;
            return;
        }

        var growth = GrowthSum(batch, lot);
        var sofar = growth.At(start) - lot.GrowthHeat;
        if (lot.IsFlat)
        {
            lot.PotHour = lot.PotHour <= state.Now ? lot.PotHour : growth.FirstAtOrAbove(sofar + batch.PotUpNeed, start);
            lot.GrownHour = double.PositiveInfinity;
        }
        else if (!(lot.GrownHour <= state.Now))
        {
            lot.GrownHour = growth.FirstAtOrAbove(sofar + lot.GrowthNeed, start);
        }
    }

    private HeatTable GrowthSum(BatchState batch, Lot lot) =>
        state.Climate.GrowthSum(state.Layout.GrowthOf(batch.CropIndex), state.Layout.AirOf(lot.Space));
}
