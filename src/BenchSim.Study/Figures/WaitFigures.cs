using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>
/// What one season tells of the trays that wait in one space, or unsown, for another. In tray-days: places refused, by days.
/// </summary>
public sealed class WaitSeason : OwnerSeason
{
    internal WaitSeason(PlanShape shape, WaitPair pair) => (Pair, Weeks) = (pair, shape.Weeks);

    internal WaitPair Pair { get; }

    internal int Weeks { get; }

    internal int[] ByWeek { get; private set; } = [];

    internal long TrayDays { get; private set; }

    internal override void Read(SeasonResult season, RoomySeason roomy)
    {
        ByWeek = season.Refused[Pair.From, Pair.By];
        TrayDays = Rows.Sum(ByWeek);
    }
}

/// <summary>The figures of those that wait in one space for another.</summary>
public static class WaitFigures
{
    /// <summary>All of them.</summary>
    public static FigureList<WaitSeason> All { get; } = new();

    /// <summary>Tray-days refused in a season.</summary>
    public static AmountFigure<WaitSeason> TrayDays { get; } =
        All.Wide("tray_days", "tray-days refused", "tray-days", wait => wait.TrayDays);

    /// <summary>Chance that some tray of a season waits so.</summary>
    public static ChanceFigure<WaitSeason> Happens { get; } = All.Chance("happens", "happens", wait => wait.TrayDays > 0);

    /// <summary>Tray-days refused by week, the first week from day 0.</summary>
    public static DailyFigure<WaitSeason> ByWeek { get; } =
        All.Daily("by_week", "tray-days refused by week", "tray-days", wait => wait.Weeks, wait => wait.ByWeek);
}
