namespace BenchSim.Season.Heat;

/// <summary>Heat mats on a circuit against the rule for continuous loads.</summary>
/// <param name="LoadWatts">Watts switched on together, 0 or more.</param>
/// <param name="LimitWatts">Most watts the breaker may carry for three hours or more.</param>
public readonly record struct CircuitCheck(double LoadWatts, double LimitWatts)
{
    /// <summary>
    /// Share of a breaker's rating a continuous load may take: NEC 210.20(A) asks for a breaker of 125 % of the continuous load, and 80 %
    /// is the inverse. (Assemblies listed for 100 % are an exception we do not make.)
    /// </summary>
    public const double ContinuousShare = 0.8;

    /// <summary>True when the load keeps the rule.</summary>
    public bool IsWithin => LoadWatts <= LimitWatts;

    /// <summary>To stand beside the figure.</summary>
    public static string Caution => HeatCautions.Circuit;

    /// <summary>The result in words.</summary>
    public string Words =>
        IsWithin
            ? $"{LoadWatts:0} W of heat mats on a circuit that may carry {LimitWatts:0} W all day: within the 80 % rule."
            : $"{LoadWatts:0} W of heat mats on a circuit that may carry {LimitWatts:0} W all day: {LoadWatts - LimitWatts:0} W "
                + "too much for the 80 % rule.";

    /// <summary>Checks a load.</summary>
    /// <param name="loadWatts">Watts switched on together, 0 or more.</param>
    /// <param name="volts">Volts of the circuit, above 0.</param>
    /// <param name="breakerAmps">Amperes of the breaker, above 0.</param>
    public static CircuitCheck Of(double loadWatts, double volts, double breakerAmps)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(loadWatts);
        return new CircuitCheck(loadWatts, LimitOf(volts, breakerAmps));
    }

    /// <summary>Most watts a breaker may carry all day: 80 % of volts times amperes.</summary>
    /// <param name="volts">Volts of the circuit, above 0.</param>
    /// <param name="breakerAmps">Amperes of the breaker, above 0.</param>
    public static double LimitOf(double volts, double breakerAmps)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(volts);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(breakerAmps);
        return ContinuousShare * volts * breakerAmps;
    }
}
