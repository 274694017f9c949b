using System.Runtime.Intrinsics;

namespace BenchSim.Season.Heat;

/// <summary>
/// An air through many days, several hours or several days a step: what <see cref="HourlyClimate"/> says of each hour, by the same
/// operations in the same order.
/// </summary>
internal sealed class AirHours
{
    /// <summary>Hours, or days, worked out at a step.</summary>
    public const int Step = 8;

    private readonly HouseAir? _house;
    private readonly bool _isOutdoors;
    private readonly double _ventC;
    private readonly double[] _liftK = new double[HourlyClimate.Hours];
    private readonly double[] _leastC = new double[HourlyClimate.Hours];

    /// <summary>Makes one of an air.</summary>
    /// <param name="house">What makes the air of a house; null for the air outdoors.</param>
    public AirHours(HouseAir? house)
    {
        _house = house;
        _isOutdoors = house is null;
        if (house is not { } under)
        {
            return;
        }

        _ventC = under.VentC;
        for (var hour = 0; hour < HourlyClimate.Hours; hour++)
        {
            _liftK[hour] = HourlyClimate.LiftK(hour, under.DayLiftK);

            // An unheated house never is below a set-point.
            _leastC[hour] = HourlyClimate.SetPointC(under, hour) ?? double.NegativeInfinity;
        }
    }

    /// <summary>The air through a day, degrees Celsius.</summary>
    /// <param name="tminC">Lowest outdoor temperature of the day, degrees Celsius.</param>
    /// <param name="tmaxC">Highest outdoor temperature of the day, degrees Celsius.</param>
    /// <param name="airC">Filled; 24 long.</param>
    public void FillDay(double tminC, double tmaxC, Span<double> airC)
    {
        for (var hour = 0; hour < HourlyClimate.Hours; hour += Step)
        {
            From(hour, tminC, tmaxC).CopyTo(airC[hour..]);
        }
    }

    /// <summary>The air of <see cref="Step"/> hours from one on, degrees Celsius.</summary>
    /// <param name="hour">First hour, 0 to 16.</param>
    /// <param name="tminC">Lowest outdoor temperature of the day, degrees Celsius.</param>
    /// <param name="tmaxC">Highest outdoor temperature of the day, degrees Celsius.</param>
    public Vector512<double> From(int hour, double tminC, double tmaxC)
    {
        var swing = Vector512.Create(HourlyClimate.Swing.Slice(hour, Step));
        var outdoor = Vector512.Create((tmaxC + tminC) / 2) + (Vector512.Create((tmaxC - tminC) / 2) * swing);
        return _isOutdoors
            ? outdoor
            : Inside(outdoor, Vector512.Create(_liftK, hour), Vector512.Create(_ventC), Vector512.Create(_leastC, hour));
    }

    /// <summary>
    /// The coldest of the air in the night after each day's round, from 18:00 to 05:00, degrees Celsius; outdoors the next day's lowest.
    /// </summary>
    /// <param name="tminC">Lowest outdoor temperatures by day, one day more than nights, degrees Celsius.</param>
    /// <param name="tmaxC">Highest outdoor temperatures by day, degrees Celsius.</param>
    /// <param name="nightsC">Filled.</param>
    public void FillNights(ReadOnlySpan<double> tminC, ReadOnlySpan<double> tmaxC, Span<double> nightsC)
    {
        if (_house is not { } house)
        {
            tminC.Slice(1, nightsC.Length).CopyTo(nightsC);
            return;
        }

        var day = 0;
        for (; day <= nightsC.Length - Step; day += Step)
        {
            var lowest = Vector512.Create(double.PositiveInfinity);
            for (var hour = HourlyClimate.NightStarts; hour < HourlyClimate.Hours + HourlyClimate.DayStarts; hour++)
            {
                var of = hour < HourlyClimate.Hours ? day : day + 1;
                var (tmin, tmax) = (Vector512.Create(tminC.Slice(of, Step)), Vector512.Create(tmaxC.Slice(of, Step)));
                var at = hour % HourlyClimate.Hours;
                var outdoor = ((tmax + tmin) / 2) + ((tmax - tmin) / 2 * HourlyClimate.Swing[at]);
                var inside = Inside(outdoor, Vector512.Create(_liftK[at]), Vector512.Create(_ventC), Vector512.Create(_leastC[at]));
                lowest = Vector512.MinNative(lowest, inside);
            }

            lowest.CopyTo(nightsC[day..]);
        }

        for (; day < nightsC.Length; day++)
        {
            nightsC[day] = HourlyClimate.LowestOfNightC(house, (tminC[day], tmaxC[day]), (tminC[day + 1], tmaxC[day + 1]));
        }
    }

    /// <summary>Kelvin-hours the heater must make up, by day; 0 in an unheated house and outdoors.</summary>
    /// <param name="tminC">Lowest outdoor temperatures by day, degrees Celsius.</param>
    /// <param name="tmaxC">Highest outdoor temperatures by day, degrees Celsius.</param>
    /// <param name="kelvinHours">Filled.</param>
    public void FillHeating(ReadOnlySpan<double> tminC, ReadOnlySpan<double> tmaxC, Span<double> kelvinHours)
    {
        if (_house is not { NightC: not null } house)
        {
            kelvinHours.Clear();
            return;
        }

        var day = 0;
        for (; day <= kelvinHours.Length - Step; day += Step)
        {
            var (tmin, tmax) = (Vector512.Create(tminC.Slice(day, Step)), Vector512.Create(tmaxC.Slice(day, Step)));
            var (middle, half) = ((tmax + tmin) / 2, (tmax - tmin) / 2);
            var sum = Vector512<double>.Zero;
            for (var hour = 0; hour < HourlyClimate.Hours; hour++)
            {
                var wanting =
                    Vector512.Create(_leastC[hour]) - middle - (half * HourlyClimate.Swing[hour]) - Vector512.Create(_liftK[hour]);
                sum += Vector512.MaxNative(wanting, Vector512<double>.Zero);
            }

            sum.CopyTo(kelvinHours[day..]);
        }

        for (; day < kelvinHours.Length; day++)
        {
            kelvinHours[day] = HourlyClimate.HeatingKelvinHours(house, tminC[day], tmaxC[day]);
        }
    }

    // The processor's own least and greatest may take the other of two zeros; no sum and no comparison can tell them apart.
    private static Vector512<double> Inside(
        Vector512<double> outdoor,
        Vector512<double> lift,
        Vector512<double> vent,
        Vector512<double> least
    ) => Vector512.MaxNative(least, Vector512.MinNative(outdoor + lift, Vector512.MaxNative(vent, outdoor)));
}
