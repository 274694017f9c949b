using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Step 2. Bench to table: ready, date (or the benches are full), weather hold, place.</summary>
internal sealed class ToTable(SeasonState state) : Activity(state)
{
    protected override List<BatchState> Batches => State.WithBenches;

    protected override void Attempt(BatchState batch)
    {
        // The tables without a hold are the same for all lots of the batch in a round, and looked up when the first asks.
        int[]? open = null;
        foreach (var lot in State.Moves.TakeInHand(batch.OnBench))
        {
            if (!lot.IsFlat && lot.MovedRound != State.Round && IsReady(batch, lot))
            {
                Move(batch, lot, ref open);
            }
        }
    }

    private bool IsReady(BatchState batch, Lot lot) =>
        lot.GrownHour <= State.Now
        || (
            State.MayTableEarly
            && lot.EmergedHour <= State.Now
            && State.Heat.OfGrowth(batch, lot, State.Now) >= State.Rules.EarlyTableAt * lot.GrowthNeed
        );

    private void Move(BatchState batch, Lot lot, ref int[]? open)
    {
        var onDate = State.IsPlanning || State.Day >= batch.TableFromDay;
        if (!onDate && !State.Places.AreBenchesFull(batch, lot))
        {
            return;
        }

        open ??= State.Holds.TablesWithout(batch);
        if (open.Length == 0)
        {
            // What would only go early, by a relief, is not kept by the weather: it is not grown.
            lot.Hindrance =
                lot.GrownHour <= State.Now && State.Places.AnyFits(batch, batch.Tables, batch.PlacesEach(flat: false))
                    ? Hindrance.Hold
                    : Hindrance.None;
            return;
        }

        Relief? relief = lot.GrownHour <= State.Now ? null : Relief.TableEarly;
        if (onDate)
        {
            State.Moves.IntoOrRefuse(batch, lot, open, batch.OnBench, batch.OnTable, relief);
        }
        else
        {
            MoveWhileFull(batch, lot, open, relief);
        }
    }

    // Before its date a tray goes only while the benches are full, so each is asked by itself.
    private void MoveWhileFull(BatchState batch, Lot lot, int[] open, Relief? relief)
    {
        while (lot.Count > 1 && State.Places.AreBenchesFull(batch, lot))
        {
            var before = lot.Count;
            var one = State.Moves.Split(lot, 1);
            LotMoves.Insert(batch.OnBench, one);
            State.Moves.IntoOrRefuse(batch, one, open, batch.OnBench, batch.OnTable, relief);
            if (one.Hindrance == Hindrance.Place)
            {
                // Refused: it stands with the rest again, and they are refused with it.
                batch.OnBench.Remove(one);
                lot.First--;
                lot.Count = before;
                State.Moves.Recycle(one);
                LotMoves.Refuse(lot, batch.PlacesEach(flat: false));
                return;
            }
        }

        if (State.Places.AreBenchesFull(batch, lot))
        {
            State.Moves.IntoOrRefuse(batch, lot, open, batch.OnBench, batch.OnTable, relief);
        }
    }
}
