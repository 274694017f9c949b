using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Counts the heat of one house, in whole watt-hours, by calendar month.</summary>
internal sealed class HouseTally
{
    private readonly House _house;
    private readonly int _index;
    private readonly int[] _monthOfDay;
    private readonly ImmutableArray<DateOnly> _months;
    private readonly long[] _heatByMonth;
    private readonly WideTally _heat = new();
    private readonly WideTally[] _heatOfMonths;
    private readonly ExactTally _daysOpen = new();

    /// <summary>An empty count.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="index">Position of the house.</param>
    public HouseTally(SeasonPlan plan, int index)
    {
        _house = plan.Scenario.Houses[index];
        _index = index;
        DateOnly[] days = [.. Enumerable.Range(0, plan.Days).Select(day => plan.FirstDay.AddDays(day))];
        _months = [.. days.Where((date, day) => day == 0 || date.Day == 1)];
        _monthOfDay = [.. days.Select(date => ((date.Year - days[0].Year) * 12) + date.Month - days[0].Month)];
        _heatByMonth = new long[_months.Length];
        _heatOfMonths = TallyArrays.Make<WideTally>(_months.Length);
    }

    /// <summary>Watt-hours over all seasons.</summary>
    public double AllWattHours => (double)_heat.Moments().Sum;

    /// <summary>Counts one season.</summary>
    public void Add(SeasonResult season)
    {
        Array.Clear(_heatByMonth);
        var heat = season.HeatWattHours[_index];
        long all = 0;
        for (var day = 0; day < heat.Length; day++)
        {
            _heatByMonth[_monthOfDay[day]] += heat[day];
            all += heat[day];
        }

        _heat.Add(all);
        for (var month = 0; month < _heatByMonth.Length; month++)
        {
            _heatOfMonths[month].Add(_heatByMonth[month]);
        }

        _daysOpen.Add(season.DaysOpen[_index]);
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(HouseTally other)
    {
        _heat.Merge(other._heat);
        _heatOfMonths.Merge(other._heatOfMonths);
        _daysOpen.Merge(other._daysOpen);
    }

    /// <summary>Names every count.</summary>
    public void Exchange(ITallyExchange exchange)
    {
        exchange.Every(_heat);
        exchange.Every(_heatOfMonths);
        exchange.Every(_daysOpen);
    }

    /// <summary>What was counted.</summary>
    public HouseResult ToResult(StudentFactors student)
    {
        var heated = _house.Heat is not null && _house.IsHeated;
        var wattHoursAUnit = heated ? 1 / _house.Heat!.Fuel.Units(1, _house.Heat.Efficiency) : 1;
        return new HouseResult
        {
            House = _house,
            DaysOpen = _daysOpen.ToEstimate(student),
            Fuel = heated ? _heat.ToEstimate(student, wattHoursAUnit) : null,
            Months = heated
                ? [.. _months.Select((month, at) => new MonthFuel(month, _heatOfMonths[at].ToEstimate(student, wattHoursAUnit)))]
                : [],
        };
    }
}
