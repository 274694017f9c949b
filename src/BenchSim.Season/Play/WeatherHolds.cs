using BenchSim.Season.Climate;

namespace BenchSim.Season.Play;

/// <summary>Whether the weather keeps trays where they are, and what a night on the table brings (docs/model.md section 7).</summary>
internal sealed class WeatherHolds(SeasonState state)
{
    public bool FromField(BatchState batch) =>
        !state.IsPlanning && WeatherHold.FromField(state.Climate.Weather, state.Day, state.Rules, batch.Crop.FieldAboveC);

    /// <summary>The tables whose every forecast night, under cover where it is cold, is warm enough.</summary>
    public int[] TablesWithout(BatchState batch)
    {
        if (state.IsPlanning)
        {
            return batch.Tables;
        }

        var open = 0;
        foreach (var table in batch.Tables)
        {
            open += FromTable(batch, table) ? 0 : 1;
        }

        return open == batch.Tables.Length ? batch.Tables
            : open == 0 ? []
            : SomeTablesWithout(batch);
    }

    /// <summary>The night after the round: counted when warm enough under cover, carried in when it would do damage.</summary>
    public void Night(BatchState batch)
    {
        foreach (var lot in SeasonState.Each(batch.OnTable))
        {
            lot.Nights++;
            if (state.IsPlanning)
            {
                lot.NightsCounted++;
                continue;
            }

            var night = state.Climate.NightC(state.Layout.AirOf(lot.Space))[state.Day];
            var under = WeatherHold.UnderCover(night, state.Rules, batch.Crop.HardenAboveC);
            if (under >= batch.Crop.HardenAboveC)
            {
                lot.NightsCounted++;
            }
            else if (under < batch.Crop.DamageBelowC)
            {
                state.Result.CarriedIn[state.Day] += lot.Count;
            }
        }
    }

    // By itself, or every look would make what the lambda captures.
    private int[] SomeTablesWithout(BatchState batch) => [.. batch.Tables.Where(table => !FromTable(batch, table))];

    private bool FromTable(BatchState batch, int table) =>
        WeatherHold.FromTable(state.Climate.NightC(state.Layout.AirOf(table)), state.Day, state.Rules, batch.Crop.HardenAboveC);
}
