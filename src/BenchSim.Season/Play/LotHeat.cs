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
            lot.LeaveMatHour = heat.FirstAtOrAbove(sofar + batch.LeaveNeed, from);
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
        if (!(lot.EmergedHour < until))
        {
            return lot.GrowthHeat;
        }

        var growth = GrowthSum(batch, lot);
        return lot.GrowthHeat + growth.At(until) - growth.At(Math.Max(lot.BankedHour, lot.EmergedHour));
    }

    private void LookUpGrowth(BatchState batch, Lot lot, double from)
    {
        var start = Math.Max(from, lot.EmergedHour);
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
            lot.PotHour = lot.PotHour <= from ? lot.PotHour : growth.FirstAtOrAbove(sofar + batch.PotUpNeed, start);
            lot.GrownHour = double.PositiveInfinity;
        }
        else if (!(lot.GrownHour <= from))
        {
            lot.GrownHour = growth.FirstAtOrAbove(sofar + lot.GrowthNeed, start);
        }
    }

    private HeatTable EmergenceSum(BatchState batch, Lot lot) =>
        state.Climate.EmergenceSum(state.Layout.EmergenceOf(batch.CropIndex), state.Layout.MediumOf(lot.Space));

    private HeatTable GrowthSum(BatchState batch, Lot lot) =>
        state.Climate.GrowthSum(state.Layout.GrowthOf(batch.CropIndex), state.Layout.AirOf(lot.Space));
}
