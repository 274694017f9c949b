using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>What one season tells of one space.</summary>
public sealed class SpaceSeason : OwnerSeason
{
    private readonly int _space;
    private readonly int[] _places;

    // Fewest places on a day that has any: below it no day can be full.
    private readonly int _fewest;

    internal SpaceSeason(PlanShape shape, int space)
    {
        (_space, _places) = (space, shape.Places[space]);
        _fewest = _places.Where(places => places > 0).DefaultIfEmpty(int.MaxValue).Min();
    }

    internal int Days => _places.Length;

    internal int[] Held { get; private set; } = [];

    internal int[] Wanted { get; private set; } = [];

    internal int[] Waiting { get; private set; } = [];

    internal int Peak { get; private set; }

    internal int PeakOn { get; private set; }

    internal int DaysFull { get; private set; }

    internal long TrayDays { get; private set; }

    internal long WaitedDays { get; private set; }

    internal override void Read(SeasonResult season, RoomySeason roomy)
    {
        (Held, Waiting, Wanted) = (season.Held[_space], season.Waiting[_space], roomy.Held[_space]);
        Peak = Rows.Most(Held);
        PeakOn = Peak > 0 ? Array.IndexOf(Held, Peak) : -1;
        DaysFull = Peak < _fewest ? 0 : CountFull();
        TrayDays = Rows.Sum(Held);
        WaitedDays = Rows.Sum(Waiting);
    }

    // Trays in the aisle, or places given up under standing trays, put held above places: that is full too.
    private int CountFull()
    {
        var full = 0;
        for (var day = 0; day < _places.Length; day++)
        {
            full += _places[day] > 0 && Held[day] >= _places[day] ? 1 : 0;
        }

        return full;
    }
}

/// <summary>The figures of a space.</summary>
public static class SpaceFigures
{
    /// <summary>All of them.</summary>
    public static FigureList<SpaceSeason> All { get; } = new();

    /// <summary>Places held just after the round, by day.</summary>
    public static DailyFigure<SpaceSeason> Held { get; } =
        All.Daily("held", "held", "places", space => space.Days, space => space.Held, "places held just after the work round");

    /// <summary>Places wanted by day: what it would hold had every space no limit and every crop its first open preference.</summary>
    public static DailyFigure<SpaceSeason> Wanted { get; } =
        All.Daily(
            "wanted",
            "wanted",
            "places",
            space => space.Days,
            space => space.Wanted,
            "places the season would hold if no space had a limit"
        );

    /// <summary>Places refused by day to trays whose first preference this is.</summary>
    public static DailyFigure<SpaceSeason> Waiting { get; } =
        All.Daily(
            "waiting",
            "waiting",
            "places",
            space => space.Days,
            space => space.Waiting,
            "places refused to trays that would take this space first"
        );

    /// <summary>Most places held on any day of a season.</summary>
    public static AmountFigure<SpaceSeason> Peak { get; } =
        All.Amount("peak", "most held on a day", "places", space => space.Peak, "most places held on any day of a season");

    /// <summary>Earliest day with the most places held.</summary>
    public static DateFigure<SpaceSeason> PeakOn { get; } =
        All.Date("peak_on", "fullest day", space => space.PeakOn, "the earliest day with the most held");

    /// <summary>Days on which held equals places (places above 0).</summary>
    public static AmountFigure<SpaceSeason> DaysFull { get; } =
        All.Amount("days_full", "days full", "days", space => space.DaysFull, "days on which held equals places");

    /// <summary>Tray-days held: the sum over days of places held.</summary>
    public static AmountFigure<SpaceSeason> TrayDays { get; } =
        All.Wide("tray_days", "tray-days held", "tray-days", space => space.TrayDays);

    /// <summary>Tray-days waited: the sum over days of places refused.</summary>
    public static AmountFigure<SpaceSeason> WaitedDays { get; } =
        All.Wide("waited_tray_days", "tray-days waited", "tray-days", space => space.WaitedDays, "tray-days waited for a place here");
}
