using BenchSim.Season.Values;

namespace BenchSim.Season.Heat;

/// <summary>Electricity of heat mats.</summary>
public static class MatElectricity
{
    /// <summary>Watts of one 10 x 20 inch place when nothing else is said: 12 W a square foot times 1.389 square feet.</summary>
    public const double DefaultWattsPerPlace = 12 * 200 / 144.0;

    /// <summary>Share of the time a thermostat keeps mats on when nothing else is said: all of it, an upper bound.</summary>
    public const double DefaultDuty = 1;

    /// <summary>Where the default comes from.</summary>
    public static Provenance WattsSource { get; } = new(Trust.Memory, "extension rule of 10 to 15 W a square foot of bed, from memory");

    /// <summary>To stand beside the figure.</summary>
    public static string Caution => HeatCautions.Mats;

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
