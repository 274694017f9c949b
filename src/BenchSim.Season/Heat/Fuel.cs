using BenchSim.Season.Values;

namespace BenchSim.Season.Heat;

/// <summary>Something burnt, or current used, to heat a house.</summary>
/// <param name="Id">Id, as written in a scenario.</param>
/// <param name="Name">Name shown to people.</param>
/// <param name="Unit">Unit it is bought by.</param>
/// <param name="MegajoulesPerUnit">Heat content of a unit, megajoules, above 0.</param>
/// <param name="ContentSource">Where the heat content comes from.</param>
/// <param name="Efficiency">Useful heat over heat content when nothing else is said, above 0, at most 1.</param>
/// <param name="EfficiencySource">Where the efficiency comes from.</param>
/// <param name="MetricUnit">Unit in metric reports.</param>
/// <param name="MetricPerUnit">Metric units a unit, above 0.</param>
public sealed record Fuel(
    string Id,
    string Name,
    string Unit,
    double MegajoulesPerUnit,
    Provenance ContentSource,
    double Efficiency,
    Provenance EfficiencySource,
    string MetricUnit,
    double MetricPerUnit
)
{
    private const double WattHoursPerMegajoule = 1e6 / 3600;

    /// <summary>Units of fuel for an amount of useful heat: heat / (heat content x efficiency).</summary>
    /// <param name="usefulWattHours">Heat the house needs, watt-hours, 0 or more.</param>
    /// <param name="efficiency">Useful heat over heat content, above 0, at most 1 (a heat pump may have more).</param>
    public double Units(double usefulWattHours, double efficiency)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(usefulWattHours);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(efficiency);
        return usefulWattHours / (MegajoulesPerUnit * WattHoursPerMegajoule * efficiency);
    }

    /// <summary>The same amount in <see cref="MetricUnit"/>.</summary>
    /// <param name="units">Amount in <see cref="Unit"/>.</param>
    public double ToMetric(double units) => units * MetricPerUnit;
}
