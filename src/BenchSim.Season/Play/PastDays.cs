using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// The days of a season that are over (docs/model.md section 10): places are taken and left, trays go, as it was, each at the round of its
/// day; then what stands is set down with the heat that its places and its luck have given it.
/// </summary>
internal sealed class PastDays
{
    private readonly SeasonState _state;
    private readonly SeasonPast _past;
    private readonly PastLots _lots;
    private readonly Step[] _steps;
    private int _next;

    public PastDays(SeasonState state, SeasonPast past)
    {
        (_state, _past, _lots) = (state, past, new PastLots(state));

        // Flats before the trays that are filled from them, and what goes after all that comes.
        _steps =
        [
            .. past
                .Batches.SelectMany((batch, index) => batch.Trays.SelectMany(trays => StepsOf(index, trays)))
                .OrderBy(step => step.Day)
                .ThenBy(step => step.Stay < 0)
                .ThenBy(step => !step.Trays.AreFlats)
                .ThenBy(step => step.Batch),
        ];
    }

    /// <summary>The first day that is played.</summary>
    public int Today => _past.Today;

    /// <summary>Begins a season.</summary>
    public void Begin() => _next = 0;

    /// <summary>Does what was done on a day.</summary>
    public void Live(int day)
    {
        while (_next < _steps.Length && _steps[_next].Day <= day)
        {
            var step = _steps[_next++];
            if (step.Stay >= 0)
            {
                Stand(step);
            }
            else
            {
                Go(step);
            }
        }
    }

    /// <summary>Sets the state from which the rest of the season is played.</summary>
    public void Settle()
    {
        foreach (var batch in _state.Batches)
        {
            var past = _past.Batches[batch.Index];
            (batch.Unsown, batch.NextSown, batch.LastSown) = (past.Unsown ?? batch.Unsown, past.NextSown, past.LastSown);
            (batch.Filled, batch.WaitsFrom, batch.NightsFrom) = (past.Filled, Today, Today);
            foreach (var trays in past.Trays.Where(trays => trays.End == TrayEnd.Stands))
            {
                var lot = _lots.Of(batch, trays, Today);
                _state.Moves.Add(batch, ListOf(batch, lot), lot);
            }

            if (batch.IsPotUp && batch.Filled >= batch.Plan.Trays)
            {
                PotUp.DiscardSurplus(_state, batch);
            }
        }
    }

    private List<Lot> ListOf(BatchState batch, Lot lot) =>
        _state.Scenario.Spaces[lot.Space].Kind switch
        {
            SpaceKind.Mat => batch.OnMat,
            SpaceKind.Bench => batch.OnBench,
            _ => batch.OnTable,
        };

    private static IEnumerable<Step> StepsOf(int batch, TrayPast trays)
    {
        for (var stay = trays.Borrowed; stay < trays.Path.Length; stay++)
        {
            yield return new(trays.Path[stay].Day, batch, trays, stay);
        }

        if (trays.End != TrayEnd.Stands)
        {
            yield return new(trays.EndDay, batch, trays, -1);
        }
    }

    private void Stand(Step step)
    {
        var (batch, trays) = (_state.Batches[step.Batch], step.Trays);
        var each = batch.PlacesEach(trays.AreFlats);
        var lot = PastLots.Named(trays, step.Stay);
        _state.Places.Hold(batch, lot.Space, trays.Count * each);
        if (step.Stay > trays.Borrowed)
        {
            var from = trays.Path[step.Stay - 1].Space;
            _state.Places.Hold(batch, from, -trays.Count * each);
            _state.Ledger.KeepMove(batch, lot, from);
        }
        else if (step.Stay == 0)
        {
            lot.SowHour = _state.Now;
            _state.Ledger.KeepSown(batch, lot);
        }
        else
        {
            _state.Ledger.KeepCome(batch, lot, trays.PottedDay is not null, trays.SowDay);
        }
    }

    private void Go(Step step)
    {
        var (batch, trays) = (_state.Batches[step.Batch], step.Trays);
        _state.Places.Hold(batch, trays.Path[^1].Space, -trays.Count * batch.PlacesEach(trays.AreFlats));
        if (trays.AreFlats)
        {
            _state.Ledger.KeepFlatsGone(batch, trays.Count, trays.End == TrayEnd.UsedUp);
            return;
        }

        var lot = _lots.Of(batch, trays, trays.EndDay);
        if (trays.End == TrayEnd.Out)
        {
            _lots.Finish(batch, lot);
            _state.Ledger.KeepOut(batch, lot, trays.Plants);
        }
        else
        {
            _state.Ledger.KeepTraysGone(batch, lot);
        }

        _state.Moves.Recycle(lot);
    }

    // A stay that begins, or, below 0, the end.
    private readonly record struct Step(int Day, int Batch, TrayPast Trays, int Stay);
}
