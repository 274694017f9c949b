using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Words;

/// <summary>Figures of mats that follow from the site alone.</summary>
internal static class HeatFigures
{
    /// <summary>The check of the mats' circuit; null where its volts or its breaker are not given.</summary>
    public static CircuitCheck? CheckOf(MatPower power) =>
        power is { Volts: { } volts, BreakerAmps: { } amperes } ? CircuitCheck.Of(power.Watts, volts, amperes) : null;
}
