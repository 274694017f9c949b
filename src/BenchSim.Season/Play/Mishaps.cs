using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;

namespace BenchSim.Season.Play;

/// <summary>
/// What goes wrong in a season (docs/model.md section 2): each mishap at most once, at the midnight that opens a day drawn evenly, wherever
/// its trays then stand.
/// </summary>
internal sealed class Mishaps(SeasonState state)
{
    private readonly PhiloxKey[] _keys = [.. state.Scenario.Mishaps.Select(mishap => PhiloxKey.Of(state.Seed, mishap.Id))];

    /// <summary>Number of mishaps of the site; none while planned dates are worked out.</summary>
    public int Count => state.IsPlanning ? 0 : _keys.Length;

    /// <summary>Day on which one strikes in the season that is played; -1 where it does not.</summary>
    public int DayOf(int index)
    {
        var mishap = state.Scenario.Mishaps[index];
        var block = Philox.Block(new PhiloxBlock(0, (uint)state.Season, (uint)LuckPurpose.Mishap, 0), _keys[index]);
        var days = mishap.To.DayNumber - mishap.From.DayNumber + 1;
        return block.Uniform0 < mishap.Chance
            ? mishap.From.DayNumber - state.Scenario.Window.Opens.DayNumber + (int)(block.Uniform1 * days)
            : -1;
    }

    /// <summary>One strikes.</summary>
    public void Strike(int index, double hour)
    {
        foreach (var batch in state.Batches)
        {
            Strike(index, hour, batch, batch.OnMat);
            Strike(index, hour, batch, batch.OnBench);
            Strike(index, hour, batch, batch.OnTable);
        }
    }

    private void Strike(int index, double hour, BatchState batch, List<Lot> lots)
    {
        var mishap = state.Scenario.Mishaps[index];
        foreach (var lot in SeasonState.Each(lots))
        {
            if (mishap.Strikes(state.Scenario.Spaces[lot.Space], batch.Crop.Id))
            {
                lot.Spared *= 1 - mishap.Loss;
                state.Result.MishapTrays[index] += lot.Count;
                state.Witness?.Struck(new TraysStruck(batch.Index, index, lot.IsFlat, lot.First, lot.Count, lot.Space, hour));
            }
        }
    }
}
