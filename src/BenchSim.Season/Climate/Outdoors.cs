using BenchSim.Season.Heat;

namespace BenchSim.Season.Climate;

/// <summary>
/// Temperatures and sun of the days of a season outdoors, in room that is used again for the next, with the day before the first and some
/// past the end, so that several days can be taken at a step.
/// </summary>
/// <param name="sun">The sun of the place; null where the site does not say where it lies.</param>
public sealed class Outdoors(SunDays? sun)
{
    private double[] _tmin = [];
    private double[] _tmax = [];
    private double[] _sun = [];

    /// <summary>The sun of the place; null where the site does not say where it lies.</summary>
    public SunDays? Sun => sun;

    /// <summary>Lowest temperatures by day, degrees Celsius; day -1 first.</summary>
    public ReadOnlySpan<double> TminC => _tmin;

    /// <summary>Highest temperatures by day, degrees Celsius; day -1 first.</summary>
    public ReadOnlySpan<double> TmaxC => _tmax;

    /// <summary>Radiation by day, megajoules a square metre; day -1 first; empty without a sun.</summary>
    public ReadOnlySpan<double> SunMj => _sun;

    /// <summary>Takes the weather of a season.</summary>
    /// <param name="weather">Weather.</param>
    public void Take(SeasonWeather weather)
    {
        var days = weather.Days + 1;
        if (_tmin.Length < days + AirHours.Step)
        {
            (_tmin, _tmax) = (new double[days + AirHours.Step], new double[days + AirHours.Step]);
            _sun = sun is null ? [] : new double[days + AirHours.Step];
        }

        weather.Tmin.AsSpan(SeasonWeather.LeadDays - 1, days).CopyTo(_tmin);
        weather.Tmax.AsSpan(SeasonWeather.LeadDays - 1, days).CopyTo(_tmax);
        for (var at = 0; at < days && sun is not null; at++)
        {
            _sun[at] = BenchSim.Season.Heat.Sun.OnTheGround(sun.Coefficient, _tmin[at], _tmax[at], sun.AboveTheAir[at]);
        }
    }
}
