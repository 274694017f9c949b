namespace BenchSim.Season.Heat;

/// <summary>Electricity of heat mats.</summary>
public static class MatElectricity
{
    /// <summary>Share of the time a thermostat keeps mats on when nothing else is said: all of it, an upper bound.</summary>
    public const double DefaultDuty = 1;

    /// <summary>Kilowatt-hours of mats.</summary>
    /// <param name="watts">Watts of the mats that are on, 0 or more.</param>
    /// <param name="hours">Hours they are on the thermostat, 0 or more.</param>
    /// <param name="duty">Share of those hours the thermostat keeps them on, 0 to 1.</param>
    public static double KilowattHours(double watts, double hours, double duty = DefaultDuty)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(watts);
        ArgumentOutOfRangeException.ThrowIfNegative(hours);
        ArgumentOutOfRangeException.ThrowIfNegative(duty);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(duty, 1);
        return watts * hours * duty / 1000;
    }
}
