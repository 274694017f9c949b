using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Counts all spaces of one kind together.</summary>
internal sealed class GroupTally(SpaceGroup group)
{
    private readonly ExactTally[] _wanted = TallyArrays.Make<ExactTally>(group.Places.Length);
    private readonly ExactTally[] _waiting = TallyArrays.Make<ExactTally>(group.Places.Length);
    private readonly ExactTally _runsOutOn = new();
    private readonly ExactTally _shortage = new();
    private readonly ExactTally _shortageOn = new();
    private readonly ExactTally _worstWaiting = new();

    /// <summary>Counts one season.</summary>
    /// <param name="waiting">Places refused by space and day.</param>
    /// <param name="wanted">Places held by space and day, places without limit.</param>
    public void Add(int[][] waiting, int[][] wanted)
    {
        int runsOutOn = -1;
        int worstWaiting = 0;
        int shortage = 0;
        int shortageOn = -1;
        for (int day = 0; day < group.Places.Length; day++)
        {
            int waits = 0;
            int wants = 0;
            foreach (int space in group.Spaces)
            {
                waits += waiting[space][day];
                wants += wanted[space][day];
            }

            _waiting[day].Add(waits);
            _wanted[day].Add(wants);
            if (waits > 0 && runsOutOn < 0)
                runsOutOn = day;
            worstWaiting = Math.Max(worstWaiting, waits);
            if (wants - group.Places[day] > shortage)
            {
                shortage = wants - group.Places[day];
                shortageOn = day;
            }
        }

        if (runsOutOn >= 0)
            _runsOutOn.Add(runsOutOn);
        _worstWaiting.Add(worstWaiting);
        _shortage.Add(shortage);
        if (shortageOn >= 0)
            _shortageOn.Add(shortageOn);
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

    /// <summary>What was counted.</summary>
    public GroupResult ToResult(DateOnly firstDay, int seasons, StudentFactors student) => new()
    {
        Kind = group.Kind,
        Places = [.. group.Places],
        Wanted = _wanted.ToDaySpreads(),
        Waiting = _waiting.ToDaySpreads(),
        RunsOut = Chances.Of(_runsOutOn.Moments().Seasons, seasons),
        RunsOutOn = _runsOutOn.ToDates(firstDay, seasons),
        Shortage = _shortage.ToEstimate(student),
        ShortageOn = _shortageOn.ToDates(firstDay, seasons),
        WorstWaiting = _worstWaiting.ToEstimate(student),
    };
}
