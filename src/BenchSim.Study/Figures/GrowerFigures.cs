using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>What one season tells of one grower.</summary>
public sealed class GrowerSeason : OwnerSeason
{
    private readonly int _grower;

    internal GrowerSeason(PlanShape shape, int grower) => (_grower, Spaces) = (grower, shape.Places.Length);

    internal int Spaces { get; }

    internal long TrayDays { get; private set; }

    internal long[] TrayDaysBySpace { get; private set; } = [];

    internal int Peak { get; private set; }

    internal override void Read(SeasonResult season, RoomySeason roomy)
    {
        TrayDaysBySpace = season.TrayDays[_grower];
        TrayDays = Rows.Sum(TrayDaysBySpace);
        Peak = Rows.Most(season.HeldByGrower[_grower]);
    }
}

/// <summary>The figures of a grower.</summary>
public static class GrowerFigures
{
    /// <summary>All of them.</summary>
    public static FigureList<GrowerSeason> All { get; } = new();

    /// <summary>Tray-days held, all spaces.</summary>
    public static AmountFigure<GrowerSeason> TrayDays { get; } =
        All.Wide("tray_days", "tray-days", "tray-days", grower => grower.TrayDays, "tray-days held in all spaces");

    /// <summary>Most places held on any day.</summary>
    public static AmountFigure<GrowerSeason> Peak { get; } =
        All.Amount("peak", "most places on a day", "places", grower => grower.Peak, "most places held on any day");

    /// <summary>Tray-days held by position of the space in the scenario.</summary>
    public static RowFigure<GrowerSeason> TrayDaysBySpace { get; } =
        All.Joined(
            new RowFigure<GrowerSeason>(
                "tray_days",
                "space",
                "tray-days by space",
                "tray-days",
                grower => grower.Spaces,
                grower => grower.TrayDaysBySpace
            )
            {
                IsWide = true,
                Meaning = "tray-days held, mean of the seasons, by space",
            }
        );
}
