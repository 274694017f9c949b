namespace BenchSim.Season.Inputs;

/// <summary>The electricity of the mats of one space.</summary>
/// <param name="Watts">Watts of all its mats together, 0 or more.</param>
/// <param name="Duty">Share of the time the thermostat keeps them on, 0 to 1.</param>
/// <param name="Volts">Volts of the circuit they are on; null when not given.</param>
/// <param name="BreakerAmps">Amperes of its breaker; null when not given.</param>
/// <param name="Price">Price of a kilowatt-hour, in the user's money; null when not given.</param>
public sealed record MatPower(double Watts, double Duty, double? Volts, double? BreakerAmps, double? Price)
{
    /// <summary>Watts of the mat under one place, where <see cref="Watts"/> was worked out from them; null where they were given.</summary>
    public double? WattsEachPlace { get; init; }
}
