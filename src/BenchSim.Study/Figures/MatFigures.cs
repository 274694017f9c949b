using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>What one season tells of the mats of one space, whose power is given.</summary>
public sealed class MatSeason : OwnerSeason
{
    private const int HoursADay = 24;
    private readonly int _index;

    internal MatSeason(Scenario scenario, int index) => (_index, Space) = (index, scenario.Spaces[index]);

    internal Space Space { get; }

    internal int Days { get; private set; }

    internal double DaysAKilowattHour => 1 / MatElectricity.KilowattHours(Space.Power!.Watts, HoursADay, Space.Power.Duty);

    internal override void Read(SeasonResult season, RoomySeason roomy) => Days = season.MatDays[_index];
}

/// <summary>The figures of the mats of one space.</summary>
public static class MatFigures
{
    /// <summary>All of them.</summary>
    public static FigureList<MatSeason> All { get; } = new();

    /// <summary>Kilowatt-hours of the season: counted as days with trays on the mats.</summary>
    public static AmountFigure<MatSeason> KilowattHours { get; } =
        All.Joined(
            new AmountFigure<MatSeason>("kilowatt_hours", "electricity of the heat mats", "kWh", mats => mats.Days)
            {
                Parts = mats => mats.DaysAKilowattHour,
            }
        );
}
