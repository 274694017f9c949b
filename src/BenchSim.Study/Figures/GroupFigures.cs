using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>What one season tells of all spaces of a kind together.</summary>
public sealed class GroupSeason : OwnerSeason
{
    private readonly SpaceGroup _group;
    private readonly int[] _ownWanted;
    private readonly int[] _ownWaiting;
    private readonly int[] _excess;

    internal GroupSeason(SpaceGroup group)
    {
        _group = group;
        (_ownWanted, _ownWaiting, _excess) = (new int[Days], new int[Days], new int[Days]);
    }

    internal int Days => _group.Places.Length;

    internal int[] Wanted { get; private set; } = [];

    internal int[] Waiting { get; private set; } = [];

    internal int RunsOutOn { get; private set; }

    internal int Shortage { get; private set; }

    internal int ShortageOn { get; private set; }

    internal int WorstWaiting { get; private set; }

    internal int WorstWaitingOn { get; private set; }

    internal override void Read(SeasonResult season, RoomySeason roomy)
    {
        Waiting = Sum(season.Waiting, _ownWaiting);
        Wanted = Sum(roomy.Held, _ownWanted);
        RunsOutOn = Waiting.AsSpan().IndexOfAnyExcept(0);
        WorstWaiting = RunsOutOn < 0 ? 0 : Rows.Most(Waiting);
        WorstWaitingOn = RunsOutOn < 0 ? -1 : Array.IndexOf(Waiting, WorstWaiting);
        Rows.Excess(Wanted, _group.Places, _excess);
        Shortage = Rows.Most(_excess);
        ShortageOn = Shortage > 0 ? Array.IndexOf(_excess, Shortage) : -1;
    }

    private int[] Sum(int[][] bySpace, int[] own)
    {
        var first = bySpace[_group.Spaces[0]];
        if (_group.Spaces.Length == 1)
        {
            return first;
        }

        first.CopyTo(own, 0);
        foreach (var space in _group.Spaces.AsSpan(1))
        {
            Rows.Add(bySpace[space], own);
        }

        return own;
    }
}

/// <summary>The figures of all spaces of a kind together.</summary>
public static class GroupFigures
{
    /// <summary>All of them.</summary>
    public static FigureList<GroupSeason> All { get; } = new();

    /// <summary>Places wanted by day.</summary>
    public static DailyFigure<GroupSeason> Wanted { get; } =
        All.Daily("wanted", "wanted", "places", group => group.Days, group => group.Wanted);

    /// <summary>Places refused by day.</summary>
    public static DailyFigure<GroupSeason> Waiting { get; } =
        All.Daily("waiting", "waiting", "places", group => group.Days, group => group.Waiting);

    /// <summary>Chance that some tray of a season is refused a place here.</summary>
    public static ChanceFigure<GroupSeason> RunsOut { get; } = All.Chance("runs_out", "runs out", group => group.RunsOutOn >= 0);

    /// <summary>First day on which a tray is refused a place here, in the seasons in which one is.</summary>
    public static DateFigure<GroupSeason> RunsOutOn { get; } = All.Date("runs_out_on", "runs out on", group => group.RunsOutOn);

    /// <summary>Largest shortage of a season: most that wanted exceeds places by on any day, 0 when it never does.</summary>
    public static AmountFigure<GroupSeason> Shortage { get; } = All.Amount("shortage", "shortage", "places", group => group.Shortage);

    /// <summary>Day of the largest shortage, in the seasons that have one.</summary>
    public static DateFigure<GroupSeason> ShortageOn { get; } = All.Date("shortage_on", "shortage on", group => group.ShortageOn);

    /// <summary>Most places refused on any one day of a season.</summary>
    public static AmountFigure<GroupSeason> WorstWaiting { get; } =
        All.Amount("worst_waiting", "most waiting on a day", "places", group => group.WorstWaiting);

    /// <summary>First day with the most places refused, in the seasons in which one is.</summary>
    public static DateFigure<GroupSeason> WorstWaitingOn { get; } =
        All.Date("worst_waiting_on", "most waiting on", group => group.WorstWaitingOn);
}
