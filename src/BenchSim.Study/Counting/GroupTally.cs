using System.Runtime.CompilerServices;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Counts all spaces of one kind together.</summary>
internal sealed class GroupTally(SpaceGroup group)
{
    private readonly DayTally _wanted = new(group.Places.Length);
    private readonly DayTally _waiting = new(group.Places.Length);
    private readonly int[] _waits = new int[group.Places.Length];
    private readonly int[] _wants = new int[group.Places.Length];
    private readonly ExactTally _runsOutOn = new();
    private readonly ExactTally _shortage = new();
    private readonly ExactTally _shortageOn = new();
    private readonly ExactTally _worstWaiting = new();

    /// <summary>Counts one season.</summary>
    /// <param name="waiting">Places refused by space and day.</param>
    /// <param name="wanted">Places held by space and day, places without limit.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Add(int[][] waiting, int[][] wanted)
    {
        var runsOutOn = -1;
        var worstWaiting = 0;
        var shortage = 0;
        var shortageOn = -1;
        for (var day = 0; day < group.Places.Length; day++)
        {
            var waits = 0;
            var wants = 0;
            foreach (var space in group.Spaces)
            {
                waits += waiting[space][day];
                wants += wanted[space][day];
            }

            _waits[day] = waits;
            _wants[day] = wants;
            if (waits > 0 && runsOutOn < 0)
            {
                runsOutOn = day;
            }

            worstWaiting = Math.Max(worstWaiting, waits);
            if (wants - group.Places[day] > shortage)
            {
                shortage = wants - group.Places[day];
                shortageOn = day;
            }
        }

        _waiting.Add(_waits);
        _wanted.Add(_wants);
        if (runsOutOn >= 0)
        {
            _runsOutOn.Add(runsOutOn);
        }

        _worstWaiting.Add(worstWaiting);
        _shortage.Add(shortage);
        if (shortageOn >= 0)
        {
            _shortageOn.Add(shortageOn);
        }
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(GroupTally other)
    {
        _wanted.Merge(other._wanted);
        _waiting.Merge(other._waiting);
        _runsOutOn.Merge(other._runsOutOn);
        _shortage.Merge(other._shortage);
        _shortageOn.Merge(other._shortageOn);
        _worstWaiting.Merge(other._worstWaiting);
    }

    /// <summary>Names every count.</summary>
    public void Exchange(ITallyExchange exchange)
    {
        exchange.Every(_wanted);
        exchange.Every(_waiting);
        exchange.Some(_runsOutOn, group.Places.Length);
        exchange.Every(_shortage);
        exchange.Some(_shortageOn, group.Places.Length);
        exchange.Every(_worstWaiting);
    }

    /// <summary>What was counted.</summary>
    public GroupResult ToResult(DateOnly firstDay, int seasons, StudentFactors student) =>
        new()
        {
            Kind = group.Kind,
            Places = [.. group.Places],
            Wanted = _wanted.ToSpreads(),
            Waiting = _waiting.ToSpreads(),
            RunsOut = Chances.Of(_runsOutOn.Moments().Seasons, seasons),
            RunsOutOn = _runsOutOn.ToDates(firstDay, seasons),
            Shortage = _shortage.ToEstimate(student),
            ShortageOn = _shortageOn.ToDates(firstDay, seasons),
            WorstWaiting = _worstWaiting.ToEstimate(student),
        };
}
