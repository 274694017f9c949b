using System.Collections.Immutable;

namespace BenchSim.Season.Weather;

/// <summary>The days of a record as rows of numbers: what the fit walks through many times is worked out once.</summary>
internal sealed class RecordDays
{
    /// <summary>Takes a record apart.</summary>
    /// <param name="days">Record in order of date.</param>
    public RecordDays(ImmutableArray<DailyWeather> days)
    {
        Count = days.Length;
        (Number, Year, Month, Place) = (new int[Count], new int[Count], new int[Count], new int[Count]);
        (IsWet, Tmin, Tmax) = (new bool[Count], new double[Count], new double[Count]);
        for (var day = 0; day < Count; day++)
        {
            var date = days[day].Date;
            (Number[day], Year[day], Month[day]) = (date.DayNumber, date.Year, date.Month - 1);
            Place[day] = MeanPreservingCurve.PlaceOf(date);
            (IsWet[day], Tmin[day], Tmax[day]) = (days[day].RainMm > 0, days[day].TminC, days[day].TmaxC);
            (IsWet[day] ? WetDays : DryDays)[Month[day]]++;
        }
    }

    /// <summary>Days.</summary>
    public int Count { get; }

    /// <summary>Number of each date; 1 more is the next day.</summary>
    public int[] Number { get; }

    /// <summary>Calendar year of each day.</summary>
    public int[] Year { get; }

    /// <summary>Month of each day, from 0.</summary>
    public int[] Month { get; }

    /// <summary>Place of each day in the table of the year.</summary>
    public int[] Place { get; }

    /// <summary>Whether it rained.</summary>
    public bool[] IsWet { get; }

    /// <summary>Lowest temperatures, degrees Celsius.</summary>
    public double[] Tmin { get; }

    /// <summary>Highest temperatures, degrees Celsius.</summary>
    public double[] Tmax { get; }

    /// <summary>Wet days by month.</summary>
    public int[] WetDays { get; } = new int[12];

    /// <summary>Dry days by month.</summary>
    public int[] DryDays { get; } = new int[12];

    /// <summary>Whether a day is the one after the day before it in the record.</summary>
    public bool FollowsOn(int day) => day > 0 && Number[day - 1] + 1 == Number[day];
}
