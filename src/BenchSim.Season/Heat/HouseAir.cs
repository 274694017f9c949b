namespace BenchSim.Season.Heat;

/// <summary>What makes the air of a house out of the air outdoors: two houses of one such record have the same air.</summary>
/// <param name="NightC">Heating set-point from 18:00 to 06:00, degrees Celsius; null in an unheated house.</param>
/// <param name="DayC">Heating set-point from 06:00 to 18:00, degrees Celsius; null where it is that of the night.</param>
/// <param name="VentC">Vent set-point, degrees Celsius.</param>
/// <param name="DayLiftK">Greatest lift of the sun, kelvin, at noon, 0 or more; not used where <paramref name="Sun"/> is given.</param>
/// <param name="Sun">What the sun does in it; null where that is the lift.</param>
public readonly record struct HouseAir(double? NightC, double? DayC, double VentC, double DayLiftK, HouseSun? Sun = null)
{
    /// <summary>What made its air on the first days of a season, where that has been changed since; null for the same.</summary>
    public AirWas? Was { get; init; }

    /// <summary>Heating set-point at an hour, degrees Celsius; null in an unheated house.</summary>
    /// <param name="hour">Hour, 0 to 23.</param>
    public double? SetPointC(int hour) => HourlyClimate.IsDay(hour) ? DayC ?? NightC : NightC;
}

/// <summary>What made the air of a house on the first days of a season.</summary>
/// <param name="Air">What made it.</param>
/// <param name="Until">First day of the season, 0 its first, on which it is made so no more.</param>
public sealed record AirWas(HouseAir Air, int Until);
