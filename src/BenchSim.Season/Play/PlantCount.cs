using BenchSim.Season.Climate;
using BenchSim.Season.Stands;

namespace BenchSim.Season.Play;

/// <summary>
/// Plants in the trays of a lot when it leaves. They share a past and the losses of their batch, and so the chance of a
/// plant in a cell; each tray has its own luck.
/// </summary>
internal sealed class PlantCount(SeasonState state)
{
    private double[] _draws = [];

    public int Of(BatchState batch, Lot lot)
    {
        var plants = Of(batch, lot, lot.Spared);
        if (lot.Spared < 1)
        {
            state.Result.PlantsLostToMishaps += Of(batch, lot, 1) - plants;
        }

        return plants;
    }

    private int Of(BatchState batch, Lot lot, double spared)
    {
        var kept = (1 - batch.StandLoss) * spared;
        if (lot.PottedPlants > 0)
        {
            return OfPartTrays(batch, lot, kept);
        }

        var chance = kept;
        if (!batch.IsPotUp)
        {
            var seed = batch.PacketGermination * Stand.RelativeGermination(batch.Crop, state.Heat.PathMeanOf(lot));
            chance *= Stand.CellChance(seed, batch.Plan.Order.SeedsPerCell);
        }

        if (chance >= 1)
        {
            return lot.Count * batch.Plan.Tray.Cells;
        }

        var plants = 0;
        foreach (var u in Draws(batch, lot))
        {
            plants += batch.Fill.Quantile(chance, u);
        }

        return plants;
    }

    private int OfPartTrays(BatchState batch, Lot lot, double kept)
    {
        Span<double> cumulative = stackalloc double[lot.PottedPlants + 1];
        Binomial.Cumulative(lot.PottedPlants, kept, cumulative);
        var plants = 0;
        foreach (var u in Draws(batch, lot))
        {
            plants += Binomial.Quantile(cumulative, u);
        }

        return plants;
    }

    private ReadOnlySpan<double> Draws(BatchState batch, Lot lot)
    {
        if (_draws.Length < lot.Count)
        {
            _draws = new double[2 * lot.Count];
        }

        var draws = _draws.AsSpan(0, lot.Count);
        if (state.IsPlanning)
        {
            draws.Fill(0.5);
        }
        else
        {
            batch.Luck.Fill(state.Season, LuckPurpose.Tray, lot.First, draws);
        }

        return draws;
    }
}
