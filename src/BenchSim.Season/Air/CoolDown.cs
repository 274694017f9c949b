using BenchSim.Season.Heat;

namespace BenchSim.Season.Air;

/// <summary>
/// How fast a house cools once its heater has stopped: by its own loss, from the heat of its air and of what else in it holds heat.
/// </summary>
/// <param name="TimeConstant">Hours C / (sum of U A + 0.33 N V).</param>
public readonly record struct CoolDown(double TimeConstant)
{
    /// <summary>Cooling of a house.</summary>
    /// <param name="loss">What it loses.</param>
    /// <param name="volumeM3">Air in it, cubic metres.</param>
    /// <param name="contentsWattHours">Heat of what else takes part, watt-hours a kelvin, 0 or more.</param>
    public static CoolDown Of(HeatLoss loss, double volumeM3, double contentsWattHours) =>
        new(((HeatLoss.AirWattHours * volumeM3) + contentsWattHours) / loss.WattsPerKelvin);

    /// <summary>Hours until the air is at a temperature: time constant x ln((inside - outdoors) / (limit - outdoors)).</summary>
    /// <param name="insideC">Inside when the heater stops, degrees Celsius.</param>
    /// <param name="outdoorC">Outdoors, degrees Celsius, the same all the while.</param>
    /// <param name="limitC">The temperature, degrees Celsius.</param>
    /// <returns>Null where it never gets as cold.</returns>
    public double? HoursTo(double insideC, double outdoorC, double limitC) =>
        outdoorC >= limitC ? null
        : insideC <= limitC ? 0
        : TimeConstant * Math.Log((insideC - outdoorC) / (limitC - outdoorC));

    /// <summary>Temperature of the air after some hours: outdoors + (inside - outdoors) x exp(-hours / time constant).</summary>
    /// <param name="insideC">Inside when the heater stops, degrees Celsius.</param>
    /// <param name="outdoorC">Outdoors, degrees Celsius, the same all the while.</param>
    /// <param name="hours">Hours, 0 or more.</param>
    public double InsideAfter(double insideC, double outdoorC, double hours) =>
        insideC <= outdoorC ? insideC : outdoorC + ((insideC - outdoorC) * Math.Exp(-hours / TimeConstant));
}
