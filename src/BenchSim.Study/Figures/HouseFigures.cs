using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>What one season tells of one house. Heat is counted in whole watt-hours and told as the fuel it takes.</summary>
public sealed class HouseSeason : OwnerSeason
{
    private readonly int _index;
    private readonly int[] _firstDays;

    internal HouseSeason(SeasonPlan plan, int index)
    {
        _index = index;
        House = plan.Scenario.Houses[index];
        DateOnly[] days = [.. Enumerable.Range(0, plan.Days).Select(day => plan.FirstDay.AddDays(day))];
        Months = [.. days.Where((date, day) => day == 0 || date.Day == 1)];
        _firstDays = [.. Months.Select(month => month.DayNumber - plan.FirstDay.DayNumber), plan.Days];
        ByMonth = new long[Months.Length];
    }

    internal House House { get; }

    /// <summary>First days of the calendar months of the play, the first perhaps begun.</summary>
    internal ImmutableArray<DateOnly> Months { get; }

    internal bool Burns => SeasonEnergy.Burns(House);

    internal double WattHoursAUnit => Burns ? 1 / House.Heat!.Fuel.Units(1, House.Heat.Efficiency) : 1;

    internal long WattHours { get; private set; }

    internal long[] ByMonth { get; }

    internal int DaysOpen { get; private set; }

    internal override void Read(SeasonResult season, RoomySeason roomy)
    {
        var heat = season.HeatWattHours[_index];
        for (var month = 0; month < ByMonth.Length; month++)
        {
            ByMonth[month] = Rows.Sum(heat.AsSpan(_firstDays[month].._firstDays[month + 1]));
        }

        WattHours = Rows.Sum(ByMonth);
        DaysOpen = season.DaysOpen[_index];
    }
}

/// <summary>The figures of a house.</summary>
public static class HouseFigures
{
    /// <summary>All of them.</summary>
    public static FigureList<HouseSeason> All { get; } = new();

    /// <summary>Days open.</summary>
    public static AmountFigure<HouseSeason> DaysOpen { get; } = All.Amount("days_open", "days open", "days", house => house.DaysOpen);

    /// <summary>
    /// Fuel of the season, in the unit it is bought by; of a house whose shell or heater is not given, or that is unheated, none is told.
    /// </summary>
    public static AmountFigure<HouseSeason> Fuel { get; } =
        All.Joined(
            new AmountFigure<HouseSeason>("fuel", "fuel", "units", house => house.WattHours)
            {
                IsWide = true,
                IsTold = house => house.Burns,
                Parts = house => house.WattHoursAUnit,
            }
        );

    /// <summary>Fuel by calendar month of the play, in the same unit.</summary>
    public static RowFigure<HouseSeason> FuelByMonth { get; } =
        All.Joined(
            new RowFigure<HouseSeason>("fuel", "month", "fuel by month", "units", house => house.Months.Length, house => house.ByMonth)
            {
                IsWide = true,
                IsTold = house => house.Burns,
                Parts = house => house.WattHoursAUnit,
            }
        );
}
