namespace BenchSim.Season.Weather;

/// <summary>English month names: reports do not depend on the culture of the machine.</summary>
public static class MonthNames
{
    private static readonly string[] s_names =
    [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ];

    /// <summary>The name of a month.</summary>
    /// <param name="month">Month, from 0 for January.</param>
    public static string Of(int month) => s_names[month];
}
