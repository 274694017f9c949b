using System.Runtime.Intrinsics;
using BenchSim.Season.Heat;

namespace BenchSim.Season.Climate;

/// <summary>
/// An air through many days, several hours or several days a step: outdoors, or in a house max(S, min(T + L, max(V, T + R))) with the
/// outdoor
/// air T, the heating set-point S, the vent set-point V, the lift L of the sun with vents shut and the rise R with them open
/// (docs/model.md section 6).
/// </summary>
public sealed class AirHours
{
    /// <summary>Hours, or days, worked out at a step.</summary>
    public const int Step = 8;

    private const int Noon = 12;

    // In the hours before noon that are dark, the ground gives back what the day before brought.
    private static readonly double[] s_isMorning = [.. Enumerable.Range(0, HourlyClimate.Hours).Select(hour => hour < Noon ? 1.0 : 0.0)];

    private readonly HouseAir? _house;

    // The house as it was on the days before another.
    private readonly AirHours? _was;
    private readonly int _wasUntil;

    // The same house unheated, its vents never open.
    private readonly AirHours? _shut;
    private readonly HouseSun _sun;
    private readonly bool _isSunny;
    private readonly double _ventC;
    private readonly double[] _liftK = new double[HourlyClimate.Hours];
    private readonly double[] _leastC = new double[HourlyClimate.Hours];

    /// <summary>Makes one of an air.</summary>
    /// <param name="house">What makes the air of a house; null for the air outdoors.</param>
    public AirHours(HouseAir? house)
    {
        _house = house;
        if (house is not { } under)
        {
            return;
        }

        if (under.Was is { } was)
        {
            (_was, _wasUntil) = (new AirHours(was.Air), was.Until);
        }

        _ventC = under.VentC;
        _shut = double.IsPositiveInfinity(_ventC)
            ? null
            : new AirHours(under with { NightC = null, DayC = null, VentC = double.PositiveInfinity, Was = null });
        (_isSunny, _sun) = (under.Sun is not null, under.Sun ?? default);
        for (var hour = 0; hour < HourlyClimate.Hours; hour++)
        {
            _liftK[hour] = HourlyClimate.LiftK(hour, under.DayLiftK);

            // An unheated house never is below a set-point.
            _leastC[hour] = under.SetPointC(hour) ?? double.NegativeInfinity;
        }
    }

    /// <summary>The air through a day, degrees Celsius.</summary>
    /// <param name="outdoors">The days outdoors.</param>
    /// <param name="day">Day, 0 or later.</param>
    /// <param name="airC">Filled; 24 long.</param>
    public void FillDay(Outdoors outdoors, int day, Span<double> airC)
    {
        if (day < _wasUntil)
        {
            _was!.FillDay(outdoors, day, airC);
            return;
        }

        var (tmin, tmax) = (outdoors.TminC[day + 1], outdoors.TmaxC[day + 1]);
        var (middle, half) = (Vector512.Create((tmax + tmin) / 2), Vector512.Create((tmax - tmin) / 2));
        var back = _isSunny ? (Before: BackK(outdoors, day - 1), After: BackK(outdoors, day)) : default;
        for (var hour = 0; hour < HourlyClimate.Hours; hour += Step)
        {
            var outdoor = middle + (half * Vector512.Create(HourlyClimate.Swing.Slice(hour, Step)));
            if (_house is null)
            {
                outdoor.CopyTo(airC[hour..]);
                continue;
            }

            var (lift, vented) = (Vector512.Create(_liftK, hour), Vector512<double>.Zero);
            if (_isSunny)
            {
                var sun = Vector512.Create(outdoors.Sun!.HoursOf(day).Slice(hour, Step)) * outdoors.SunMj[day + 1];
                var isMorning = Vector512.GreaterThan(Vector512.Create(s_isMorning, hour), Vector512<double>.Zero);
                var dark = Vector512.ConditionalSelect(isMorning, Vector512.Create(back.Before), Vector512.Create(back.After));
                (lift, vented) = Under(sun, dark);
            }

            Inside(outdoor, lift, vented, Vector512.Create(_leastC, hour)).CopyTo(airC[hour..]);
        }
    }

    /// <summary>A day in the house in a few figures.</summary>
    /// <param name="outdoors">The days outdoors.</param>
    /// <param name="day">Day, 0 or later.</param>
    internal DayInHouse Look(Outdoors outdoors, int day)
    {
        if (day < _wasUntil)
        {
            return _was!.Look(outdoors, day);
        }

        Span<double> shut = stackalloc double[HourlyClimate.Hours];
        Span<double> air = stackalloc double[HourlyClimate.Hours];
        _shut!.FillDay(outdoors, day, shut);
        FillDay(outdoors, day, air);
        var (open, heated) = (false, 0);
        for (var hour = 0; hour < HourlyClimate.Hours; hour++)
        {
            open |= shut[hour] > air[hour];
            heated += shut[hour] < _leastC[hour] ? 1 : 0;
            shut[hour] = Math.Max(shut[hour], _leastC[hour]);
        }

        return new DayInHouse(shut[Noon], air[Noon], open, heated);
    }

    /// <summary>
    /// The coldest of the air in the night after each day's round, from 18:00 to 05:00, degrees Celsius; outdoors the next day's lowest.
    /// </summary>
    /// <param name="outdoors">The days outdoors, one day more than nights.</param>
    /// <param name="nightsC">Filled, day 0 first.</param>
    public void FillNights(Outdoors outdoors, Span<double> nightsC)
    {
        if (_house is null)
        {
            outdoors.TminC.Slice(2, nightsC.Length).CopyTo(nightsC);
            return;
        }

        for (var day = 0; day < nightsC.Length; day += Step)
        {
            var lowest = Vector512.Create(double.PositiveInfinity);
            for (var hour = HourlyClimate.NightStarts; hour < HourlyClimate.Hours + HourlyClimate.DayStarts; hour++)
            {
                var (of, at) = hour < HourlyClimate.Hours ? (day, hour) : (day + 1, hour - HourlyClimate.Hours);
                var (outdoor, lift, vented) = DaysAt(outdoors, of, at);
                lowest = Vector512.MinNative(lowest, Inside(outdoor, lift, vented, Vector512.Create(_leastC[at])));
            }

            Put(lowest, nightsC[day..]);
        }

        _was?.FillNights(outdoors, nightsC[..Math.Min(_wasUntil, nightsC.Length)]);
    }

    /// <summary>Kelvin-hours the heater must make up, by day; 0 in an unheated house and outdoors.</summary>
    /// <param name="outdoors">The days outdoors.</param>
    /// <param name="kelvinHours">Filled, day 0 first.</param>
    public void FillHeating(Outdoors outdoors, Span<double> kelvinHours)
    {
        FillOwnHeating(outdoors, kelvinHours);
        _was?.FillHeating(outdoors, kelvinHours[..Math.Min(_wasUntil, kelvinHours.Length)]);
    }

    private void FillOwnHeating(Outdoors outdoors, Span<double> kelvinHours)
    {
        if (_house is not { NightC: not null })
        {
            kelvinHours.Clear();
            return;
        }

        for (var day = 0; day < kelvinHours.Length; day += Step)
        {
            var sum = Vector512<double>.Zero;
            for (var hour = 0; hour < HourlyClimate.Hours; hour++)
            {
                var (outdoor, lift, _) = DaysAt(outdoors, day, hour);
                sum += Vector512.MaxNative(Vector512.Create(_leastC[hour]) - outdoor - lift, Vector512<double>.Zero);
            }

            Put(sum, kelvinHours[day..]);
        }
    }

    // Outdoor air, lift and vented rise at an hour of several days.
    private (Vector512<double> Outdoor, Vector512<double> Lift, Vector512<double> Vented) DaysAt(Outdoors outdoors, int day, int hour)
    {
        var (tmin, tmax) = (Vector512.Create(outdoors.TminC.Slice(day + 1, Step)), Vector512.Create(outdoors.TmaxC.Slice(day + 1, Step)));
        var outdoor = ((tmax + tmin) / 2) + ((tmax - tmin) / 2 * HourlyClimate.Swing[hour]);
        if (!_isSunny)
        {
            return (outdoor, Vector512.Create(_liftK[hour]), Vector512<double>.Zero);
        }

        var sun = Vector512.Create(outdoors.Sun!.DaysAt(hour).Slice(day + 1, Step)) * Vector512.Create(outdoors.SunMj.Slice(day + 1, Step));
        var from = hour < Noon ? day : day + 1;
        var dark = GroundK(Vector512.Create(outdoors.SunMj.Slice(from, Step)), Vector512.Create(outdoors.Sun.ANightHour.Slice(from, Step)));
        var (lift, vented) = Under(sun, dark);
        return (outdoor, lift, vented);
    }

    // Lift and vented rise: by the sun where there is any, else from the ground.
    private (Vector512<double> Lift, Vector512<double> Vented) Under(Vector512<double> sun, Vector512<double> darkK) =>
        (
            Vector512.ConditionalSelect(Vector512.GreaterThan(sun, Vector512<double>.Zero), sun * _sun.RiseKPerWatt, darkK),
            sun * _sun.VentedKPerWatt
        );

    private double BackK(Outdoors outdoors, int day) =>
        _sun.FromGround(outdoors.SunMj[day + 1], outdoors.Sun!.ANightHour[day + 1]) * _sun.BackKPerWatt;

    private Vector512<double> GroundK(Vector512<double> sun, Vector512<double> aNightHour) =>
        Vector512.MinNative(
            Vector512.Create(HouseSun.MostGivenBack),
            Vector512.Create(HouseSun.GivenBack * HouseSun.IntoGround * _sun.RiseKPerWatt) * sun * aNightHour
        ) * _sun.BackKPerWatt;

    // What lies past the end of the days is left out.
    private static void Put(Vector512<double> values, Span<double> into)
    {
        for (var at = 0; at < Math.Min(Step, into.Length); at++)
        {
            into[at] = values[at];
        }
    }

    // The processor's own least and greatest may take the other of two zeros; no sum and no comparison can tell them apart.
    private Vector512<double> Inside(
        Vector512<double> outdoor,
        Vector512<double> lift,
        Vector512<double> vented,
        Vector512<double> least
    ) => Vector512.MaxNative(least, Vector512.MinNative(outdoor + lift, Vector512.MaxNative(Vector512.Create(_ventC), outdoor + vented)));
}
