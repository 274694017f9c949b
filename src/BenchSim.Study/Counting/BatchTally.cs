using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Counts one batch.</summary>
internal sealed class BatchTally(int spaces, int wanted, int setOutDay)
{
    private static readonly DiscardReason[] Reasons = Enum.GetValues<DiscardReason>();

    private readonly ExactTally _sownFirst = new();
    private readonly ExactTally _sownLast = new();
    private readonly ExactTally _offMat = new();
    private readonly ExactTally _pottedUp = new();
    private readonly ExactTally _onTable = new();
    private readonly ExactTally _outFirst = new();
    private readonly ExactTally _outMedian = new();
    private readonly ExactTally _outLast = new();
    private readonly ExactTally _plantsOut = new();
    private readonly ExactTally _plantsInTime = new();
    private readonly ExactTally _plantsShort = new();
    private readonly WideTally _latePlantDays = new();
    private readonly ExactTally _daysLate = new();
    private readonly ExactTally _overHeld = new();
    private readonly ExactTally[] _discarded = TallyArrays.Make<ExactTally>(Reasons.Length);
    private readonly ExactTally _givenUp = new();
    private readonly WideTally _holdTrayDays = new();
    private readonly WideTally[] _blockedTrayDays = TallyArrays.Make<WideTally>(spaces);
    private int _complete;

    /// <summary>Counts one season.</summary>
    public void Add(BatchOutcome outcome)
    {
        AddDay(_sownFirst, outcome.SownFirst);
        AddDay(_sownLast, outcome.SownLast);
        AddDay(_offMat, outcome.OffMat);
        AddDay(_pottedUp, outcome.PottedUp);
        AddDay(_onTable, outcome.OnTable);
        AddDay(_outFirst, outcome.OutFirst);
        AddDay(_outMedian, outcome.OutMedian);
        AddDay(_outLast, outcome.OutLast);
        if (outcome.OutLast >= 0)
        {
            _daysLate.Add(Math.Max(0, outcome.OutLast - setOutDay));
        }

        _plantsOut.Add(outcome.PlantsOut);
        _plantsInTime.Add(outcome.PlantsInTime);
        _plantsShort.Add(outcome.PlantsShort);
        _latePlantDays.Add(outcome.LatePlantDays);
        _overHeld.Add(outcome.OverHeld);
        _discarded.Add(outcome.Discarded);
        _givenUp.Add(outcome.GivenUp);
        _holdTrayDays.Add(outcome.HoldTrayDays);
        for (var space = 0; space < _blockedTrayDays.Length; space++)
        {
            _blockedTrayDays[space].Add(outcome.BlockedTrayDays[space]);
        }

        if (outcome.PlantsInTime >= wanted)
        {
            _complete++;
        }
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(BatchTally other)
    {
        _sownFirst.Merge(other._sownFirst);
        _sownLast.Merge(other._sownLast);
        _offMat.Merge(other._offMat);
        _pottedUp.Merge(other._pottedUp);
        _onTable.Merge(other._onTable);
        _outFirst.Merge(other._outFirst);
        _outMedian.Merge(other._outMedian);
        _outLast.Merge(other._outLast);
        _plantsOut.Merge(other._plantsOut);
        _plantsInTime.Merge(other._plantsInTime);
        _plantsShort.Merge(other._plantsShort);
        _latePlantDays.Merge(other._latePlantDays);
        _daysLate.Merge(other._daysLate);
        _overHeld.Merge(other._overHeld);
        _discarded.Merge(other._discarded);
        _givenUp.Merge(other._givenUp);
        _holdTrayDays.Merge(other._holdTrayDays);
        _blockedTrayDays.Merge(other._blockedTrayDays);
        _complete += other._complete;
    }

    /// <summary>Names every count.</summary>
    /// <param name="exchange">Takes or gives them.</param>
    /// <param name="days">Days played.</param>
    public void Exchange(ITallyExchange exchange, int days)
    {
        foreach (var dates in new[] { _sownFirst, _sownLast, _offMat, _pottedUp, _onTable, _outFirst, _outMedian, _outLast, _daysLate })
        {
            exchange.Some(dates, days);
        }

        exchange.Every(_plantsOut);
        exchange.Every(_plantsInTime);
        exchange.Every(_plantsShort);
        exchange.Every(_latePlantDays);
        exchange.Every(_overHeld);
        exchange.Every(_discarded);
        exchange.Every(_givenUp);
        exchange.Every(_holdTrayDays);
        exchange.Every(_blockedTrayDays);
        exchange.Seasons(ref _complete);
    }

    /// <summary>What was counted.</summary>
    public BatchResult ToResult(BatchPlan plan, DateOnly firstDay, int seasons, StudentFactors student) =>
        new()
        {
            Plan = plan,
            SownFirst = _sownFirst.ToDates(firstDay, seasons),
            SownLast = _sownLast.ToDates(firstDay, seasons),
            OffMat = _offMat.ToDates(firstDay, seasons),
            PottedUp = _pottedUp.ToDates(firstDay, seasons),
            OnTable = _onTable.ToDates(firstDay, seasons),
            OutFirst = _outFirst.ToDates(firstDay, seasons),
            OutMedian = _outMedian.ToDates(firstDay, seasons),
            OutLast = _outLast.ToDates(firstDay, seasons),
            PlantsOut = _plantsOut.ToEstimate(student),
            PlantsInTime = _plantsInTime.ToEstimate(student),
            PlantsShort = _plantsShort.ToEstimate(student),
            LatePlantDays = _latePlantDays.ToEstimate(student),
            DaysLate = _daysLate.ToEstimate(student),
            OverHeld = _overHeld.ToEstimate(student),
            Discarded = Reasons.ToImmutableSortedDictionary(
                reason => reason.ToString(),
                reason => _discarded[(int)reason].ToEstimate(student),
                StringComparer.Ordinal
            ),
            GivenUp = _givenUp.ToEstimate(student),
            HoldTrayDays = _holdTrayDays.ToEstimate(student),
            BlockedTrayDays = _blockedTrayDays.ToEstimates(student),
            Complete = Chances.Of(_complete, seasons),
        };

    // A day of -1 means that it never happened.
    private static void AddDay(ExactTally tally, int day)
    {
        if (day >= 0)
        {
            tally.Add(day);
        }
    }
}
