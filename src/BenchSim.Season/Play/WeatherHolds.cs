using BenchSim.Season.Climate;

namespace BenchSim.Season.Play;

/// <summary>Whether the weather keeps trays where they are, and what a night on the table brings (docs/model.md section 7).</summary>
internal sealed class WeatherHolds(SeasonState state)
{
    public bool FromField(BatchState batch) =>
        !state.IsPlanning
        && WeatherHold.FromField(state.Climate.Weather, state.Day, state.Rules, batch.Crop.FieldAboveC, batch.Plan.Order.FieldCover);

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

    /// <summary>Counts the nights of all trays that stand on a table, the night after this day's round included.</summary>
    public void Nights()
    {
        foreach (var batch in state.Batches)
        {
            Nights(batch, state.Day + 1);
        }
    }

    /// <summary>
    /// Counts the nights on a table up to a day: each counts but those that would do damage under cover, for which the trays are carried
    /// in. As long as trays only stand there they need not be looked at night by night.
    /// </summary>
    /// <param name="batch">Batch.</param>
    /// <param name="until">First day whose night is not counted.</param>
    public void Nights(BatchState batch, int until)
    {
        if (batch.NightsFrom >= until)
        {
            return;
        }

        foreach (var lot in SeasonState.Each(batch.OnTable))
        {
            Count(batch, lot, batch.NightsFrom, until);
        }

        batch.NightsFrom = until;
    }

    /// <summary>Counts the nights of a lot on a table from a day to another, the last left out.</summary>
    public void Count(BatchState batch, Lot lot, int from, int until)
    {
        lot.Nights += until - from;
        if (state.IsPlanning)
        {
            lot.NightsCounted += until - from;
            return;
        }

        var nightsC = state.Climate.NightC(state.Layout.AirOf(lot.Space));
        for (var day = from; day < until; day++)
        {
            var under = WeatherHold.UnderCover(nightsC[day], state.Rules, batch.Crop.TableAboveC);
            if (under >= batch.Crop.DamageBelowC)
            {
                lot.NightsCounted++;
            }
            else
            {
                state.Result.CarriedIn[day] += lot.Count;
            }
        }
    }

    // By itself, or every look would make what the lambda captures.
    private int[] SomeTablesWithout(BatchState batch) => [.. batch.Tables.Where(table => !FromTable(batch, table))];

    private bool FromTable(BatchState batch, int table) =>
        WeatherHold.FromTable(state.Climate.NightC(state.Layout.AirOf(table)), state.Day, state.Rules, batch.Crop.TableAboveC);
}
