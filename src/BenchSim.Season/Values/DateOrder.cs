namespace BenchSim.Season.Values;

/// <summary>The order in which a date of three numbers, such as 3/4/2027, is written.</summary>
public enum DateOrder
{
    /// <summary>Year, month, day.</summary>
    YearFirst,

    /// <summary>Month, day, year.</summary>
    MonthFirst,

    /// <summary>Day, month, year.</summary>
    DayFirst,
}
