using BenchSim.Engine;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// One season as events, by the three-phase method: the clock goes to what is bound to happen next (a sowing falls due, a lot is up, ready
/// to pot, grown or
/// given up, places change, a day's round), all of it happens, and then the round tries what may happen (docs/mechanisms.md). Nothing is
/// allocated a
/// season once the lots have been made.
/// </summary>
internal sealed class SeasonCore : IThreePhaseModel
{
    // The kinds of events, in the order in which they happen at one instant; none of them looks at another.
    private const int PlacesChange = 0;
    private const int LotIsDue = 1;
    private const int SowingFallsDue = 2;
    private const int DayComes = 3;
    private const int MishapStrikes = 4;

    private readonly SeasonState _state;
    private readonly SiteTables _tables;
    private readonly WorkRound _round;
    private readonly SeasonEnd _end;
    private readonly Mishaps _mishaps;
    private readonly Clock _clock = new();
    private readonly BatchState[] _bySowHour;
    private readonly List<BatchState> _woken = [];
    private readonly List<BatchState> _merged = [];
    private readonly bool _isAnyTime;
    private readonly bool _maySleep;
    private readonly bool _batchesAreApart;
    private readonly bool _potUpsShareLabour;
    private readonly UnhinderedPlaces _unhindered = new();
    private PlacesInTime _places = null!;
    private readonly PastDays? _past;
    private SeasonView? _view;
    private bool _roundIsDue;
    private bool _dayIsDue;
    private bool _roundWasMade;

    public SeasonCore(SeasonState state)
    {
        (_state, _tables) = (state, state.Tables);
        _round = new WorkRound(state);
        _end = new SeasonEnd(state, _round);
        _mishaps = new Mishaps(state);
        _past = state.Past is { } past ? new PastDays(state, past) : null;
        var rules = state.Rules;
        _isAnyTime = rules.Rounds == RoundKind.AnyTime;

        var mayBeEarly = rules.Reliefs.Contains(Relief.OffMatEarly) || rules.Reliefs.Contains(Relief.TableEarly);

        // Where a lot may move before it is due, or emergence may be given up between two rounds, all are asked always.
        _maySleep = (!_isAnyTime || state.Stays is not null) && !rules.MoveBack && !mayBeEarly;
        _batchesAreApart = !_isAnyTime && !mayBeEarly && rules is { SowTraysADay: null, SetOutTraysADay: null };
        _potUpsShareLabour = rules.PotUpTraysADay is not null;
        var ranked = state
            .Batches.OrderBy(batch => batch.SetOutDay)
            .ThenBy(batch => batch.SowDay)
            .ThenBy(batch => batch.Plan.Order.Id, IdOrder.Instance)
            .ToArray();
        for (var rank = 0; rank < ranked.Length; rank++)
        {
            ranked[rank].Rank = rank;
        }

        _bySowHour = [.. state.Batches.OrderBy(SowHour)];
    }

    public SeasonState State => _state;

    /// <summary>Plays a season.</summary>
    public void Play(
        int season,
        PlaceLimits limits,
        SeasonClimate climate,
        SeasonResult result,
        ISeasonWitness? witness = null,
        SeasonStart? start = null
    )
    {
        _places = _tables.Under(limits);
        _state.Begin(season, climate, result, witness);
        _past?.Begin();
        foreach (var batch in _state.Batches)
        {
            _state.DrawLuck(batch);
        }

        _view = witness is null ? null : new SeasonView(_state, witness);
        _view?.Begin();
        if (start is not null)
        {
            Starting.Set(_state, start);
        }

        PlayFrom(start?.Day ?? 0);
        _state.Day = _tables.Days - 1;
        _state.Holds.Nights();
        _end.Keep();
    }

    /// <summary>
    /// Plays a season with places as given, and works out the places that would be held on each day were there no limits, and whether it
    /// would
    /// fit. Without limits of labour batches meet only where places lack: those that have met no limit stand as they do, and the others
    /// alone
    /// are played again.
    /// </summary>
    /// <param name="season">Number of the season.</param>
    /// <param name="climate">Its climate.</param>
    /// <param name="asGiven">Filled.</param>
    /// <param name="withoutLimits">Filled where a limit ever bit; in it the places held and what is told of the season as a whole are to be
    /// read.</param>
    public void PlayBoth(int season, SeasonClimate climate, SeasonResult asGiven, SeasonResult withoutLimits)
    {
        Play(season, PlaceLimits.AsGiven, climate, asGiven);
        if (!asGiven.LimitEverBit)
        {
            return;
        }

        if (!_batchesAreApart || _past is not null)
        {
            Play(season, PlaceLimits.None, climate, withoutLimits);
            return;
        }

        var potUpsMet = _potUpsShareLabour && Array.Exists(_state.Batches, batch => batch.IsPotUp && batch.HasMetLimit);
        foreach (var batch in _state.Batches)
        {
            batch.HasMetLimit |= potUpsMet && batch.IsPotUp;
            batch.IsPlayed = batch.HasMetLimit;
        }

        _unhindered.Take(asGiven.Held, _state.Batches);
        _places = _tables.Under(PlaceLimits.None);
        _state.Begin(season, climate, withoutLimits, null);
        PlayFrom(Math.Clamp(_state.Batches.Where(batch => batch.IsPlayed).Min(batch => batch.SowDay), 0, _tables.Days - 1));
        _unhindered.AddTo(withoutLimits.Held);
        _state.Day = _tables.Days - 1;
        _end.KeepOutcomes(asGiven.Batches);
        foreach (var batch in _state.Batches)
        {
            batch.IsPlayed = true;
        }
    }

    /// <summary>Planned dates: walks the one batch of a planning core from a sow day, alone and without limits.</summary>
    /// <param name="sowDay">Day of sowing, a work day.</param>
    /// <param name="normal">Normal climate.</param>
    /// <param name="scratch">Room to work in.</param>
    /// <returns>The dates; null when it is not out by the last day.</returns>
    public WalkDates? Walk(int sowDay, SeasonClimate normal, SeasonResult scratch)
    {
        _places = _tables.Under(PlaceLimits.None);
        _state.Begin(0, normal, scratch, null);
        var batch = _state.Batches[0];
        batch.SowDay = sowDay;
        _state.DrawLuck(batch);
        _view = null;
        PlayFrom(sowDay);
        var outcome = scratch.Batches[0];
        var last = _state.Ledger.LastOut;
        return outcome.OutLast < 0 || batch.IsStanding
            ? null
            : new WalkDates(
                (int)(last.EmergedHour / 24),
                outcome.OffMat,
                outcome.PottedUp,
                outcome.Finishing,
                outcome.OnTable,
                outcome.OutLast,
                last.PathMeanC
            );
    }

    void IThreePhaseModel.Happen(BoundEvent happening)
    {
        switch (happening.Kind)
        {
            case PlacesChange:
                _state.Places.Set(_places.ByDay, _places.ChangeDays[happening.Subject]);
                ScheduleChange(happening.Subject + 1);
                break;
            case LotIsDue:
                Wake(_state.Batches[happening.Subject]);
                break;
            case MishapStrikes:
                _mishaps.Strike(happening.Subject, _clock.Now);
                break;
            case SowingFallsDue:
                Ask(_bySowHour[happening.Subject]);
                ScheduleSowing(happening.Subject + 1);
                _roundIsDue |= _isAnyTime;
                break;
            case DayComes:
                _state.Day = happening.Subject;
                _roundIsDue |= _isAnyTime || _tables.IsWorkDay[happening.Subject];
                _dayIsDue = true;
                break;
        }
    }

    void IThreePhaseModel.Attempt()
    {
        if (_past is not null && _dayIsDue && _state.Day <= _past.Today)
        {
            LivePast(_past);
        }

        if (_roundIsDue)
        {
            _roundIsDue = false;
            if (!(_state.Day < _past?.Today))
            {
                MakeRounds();
            }
        }

        if (_dayIsDue)
        {
            _dayIsDue = false;
            EndDay();
        }

        if (_roundWasMade)
        {
            _roundWasMade = false;
            Rest();
        }
    }

    private void LivePast(PastDays past)
    {
        _state.Now = _clock.Now;
        past.Live(_state.Day);
        if (_state.Day == past.Today)
        {
            past.Settle();
            _state.Witness?.PastEnds();
            foreach (var batch in _state.Batches.Where(batch => batch.IsStanding))
            {
                Ask(batch);
            }
        }
    }

    private void PlayFrom(int firstDay)
    {
        _woken.Clear();
        (_roundIsDue, _dayIsDue, _roundWasMade) = (false, false, false);
        _clock.Reset(firstDay * 24.0);
        _state.Day = firstDay;
        _state.Places.Set(_places.ByDay, firstDay);
        ScheduleChange(_places.FirstChangeAfter(firstDay));
        if (firstDay < _tables.Days)
        {
            _clock.Schedule(InstantOf(firstDay), DayComes, firstDay);
        }

        ScheduleSowing(0);
        ScheduleMishaps(firstDay);
        _clock.Run(this);
    }

    private double InstantOf(int day) => (day * 24) + _tables.RoundHour;

    private double SowHour(BatchState batch) => _state.Stays?.SowHour(batch.Index) ?? InstantOf(batch.SowDay);

    // One after the other, so that the calendar stays short.
    private void ScheduleSowing(int sowing)
    {
        while (sowing < _bySowHour.Length && !_bySowHour[sowing].IsPlayed)
        {
            sowing++;
        }

        if (sowing < _bySowHour.Length)
        {
            _clock.Schedule(Math.Max(_clock.Now, SowHour(_bySowHour[sowing])), SowingFallsDue, sowing);
        }
    }

    private void ScheduleMishaps(int firstDay)
    {
        for (var index = 0; index < _mishaps.Count; index++)
        {
            // What opens the first day that is played is of the past: its rows are done.
            if (_mishaps.DayOf(index) is var day && day >= firstDay && !(day <= _past?.Today))
            {
                _clock.Schedule(day * 24.0, MishapStrikes, index);
            }
        }
    }

    private void ScheduleChange(int change)
    {
        if (change < _places.ChangeDays.Length)
        {
            _clock.Schedule(_places.ChangeDays[change] * 24.0, PlacesChange, change);
        }
    }

    // What was put on the calendar for a lot that has moved since is passed over.
    private void Wake(BatchState batch)
    {
        if (_clock.Now.Equals(batch.WakesAt))
        {
            batch.WakesAt = double.PositiveInfinity;
            batch.IsAwake = true;
            Ask(batch);
            _roundIsDue |= _isAnyTime;
        }
    }

    private void Ask(BatchState batch)
    {
        if (!batch.IsAsked)
        {
            batch.IsAsked = true;
            _woken.Add(batch);
        }
    }

    // Each work day one round; at any time, round after round until nothing changes any more.
    private void MakeRounds()
    {
        _state.Now = _clock.Now;
        if (!_isAnyTime)
        {
            FindAsked();
            _round.Make();
        }
        else
        {
            _state.Day = Math.Min((int)(_clock.Now / 24), _tables.Days - 1);
            do
            {
                _state.Changes = 0;
                FindAsked();
                _round.Make();
            } while (_state.Changes > 0);
        }

        _roundWasMade = true;
    }

    // Leaves out who has nothing to ask any more, and takes in by rank who has been woken. No step of a round brings in another.
    private void FindAsked()
    {
        var asked = _state.Asked;
        _merged.Clear();
        _woken.Sort(static (left, right) => left.Rank.CompareTo(right.Rank));
        var next = 0;
        foreach (var batch in asked)
        {
            if (!batch.HasToAsk)
            {
                batch.IsAsked = false;
                continue;
            }

            while (next < _woken.Count && _woken[next].Rank < batch.Rank)
            {
                _merged.Add(_woken[next++]);
            }

            _merged.Add(batch);
        }

        _merged.AddRange(SeasonState.Each(_woken)[next..]);
        asked.Clear();
        asked.AddRange(SeasonState.Each(_merged));
        _woken.Clear();
    }

    private void EndDay()
    {
        _state.Ledger.KeepDay();
        _view?.EndDay();
        var next = _state.Day + 1;
        if (next < _tables.Days && !IsOver())
        {
            _clock.Schedule(InstantOf(next), DayComes, next);
        }
        else
        {
            _clock.Stop();
        }
    }

    // Whether nothing is left to happen: all is sown or given up, and nothing stands anywhere. A witness sees all days.
    private bool IsOver()
    {
        if (_view is not null || !_state.Places.AreEmpty || _state.Day < _past?.Today)
        {
            return false;
        }

        foreach (var batch in _state.Batches)
        {
            if (batch.IsPlayed && batch.Unsown > 0)
            {
                return false;
            }
        }

        return true;
    }

    // Most trays do nothing but grow on most days, and when that ends is known from the day they came: the batch is not asked until then.
    private void Rest()
    {
        foreach (var batch in SeasonState.Each(_state.Asked))
        {
            if (_maySleep && batch.IsAwake)
            {
                var due = Math.Min(batch.NextDue(_state.Now), NextDueOnTable(batch));
                batch.IsAwake = due <= _state.Now;
                WakeAt(batch, batch.IsAwake ? double.PositiveInfinity : due);
            }

            if (_isAnyTime)
            {
                WakeAt(batch, batch.NextThreshold(_state.Now));
            }
        }
    }

    // The earliest round at which trays on a table may do anything but stand there: they have stood their nights and their date has come,
    // or they are past saving. Now, where that may be the next round.
    private double NextDueOnTable(BatchState batch)
    {
        var next = int.MaxValue;
        foreach (var lot in SeasonState.Each(batch.OnTable))
        {
            var due = batch.NightsFrom + batch.Crop.HardeningNights - lot.Nights;
            if (!_state.IsPlanning)
            {
                due = Math.Min(Math.Max(due, batch.OutFromDay), _state.Ledger.DueDay(batch, lot) + batch.Crop.DiscardAfterDays);
            }

            next = Math.Min(next, _state.Stays is null ? due : 0);
        }

        return next == int.MaxValue ? double.PositiveInfinity
            : next <= _state.Day + 1 ? _state.Now
            : InstantOf(next);
    }

    private void WakeAt(BatchState batch, double hour)
    {
        if (hour < double.PositiveInfinity && !hour.Equals(batch.WakesAt))
        {
            batch.WakesAt = hour;
            _clock.Schedule(hour, LotIsDue, batch.Index);
        }
    }
}
