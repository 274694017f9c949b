namespace BenchSim.Season.Heat;

/// <summary>Imperial heat units in metric ones, by definition (international table Btu = 1055.05585262 J; foot = 0.3048 m).</summary>
public static class HeatUnits
{
    /// <summary>Btu in a watt-hour; also Btu an hour in a watt.</summary>
    public const double BtuPerWattHour = 3600 / 1055.05585262;

    /// <summary>Watts a square metre and kelvin in one Btu an hour, square foot and degree Fahrenheit.</summary>
    public const double UValueOfBtu = 1055.05585262 / 3600 / (0.3048 * 0.3048) * 1.8;
}
