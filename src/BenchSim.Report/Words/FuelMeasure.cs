using BenchSim.Season.Heat;
using BenchSim.Season.Values;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>A fuel in the unit a report shows it in: the one it is bought by, or the metric one in a metric report.</summary>
internal sealed class FuelMeasure
{
    private readonly double _each;

    public FuelMeasure(Fuel fuel, UnitSystem units)
    {
        var metric = units == UnitSystem.Metric;
        _each = metric ? fuel.MetricPerUnit : 1;
        Unit = Written(metric ? fuel.MetricUnit : fuel.Unit);
        Plural = Unit is "therm" or "cord" ? Unit + "s" : Unit;
    }

    /// <summary>The unit, of one: gal, therm, kWh, cord, L, stacked m³.</summary>
    public string Unit { get; }

    /// <summary>The unit, of several.</summary>
    public string Plural { get; }

    /// <summary>An amount given in the unit the fuel is bought by.</summary>
    public Estimate Of(Estimate bought) => Spreads.Times(bought, _each);

    /// <summary>The price of <see cref="Unit"/>, from that of the unit the fuel is bought by.</summary>
    public double Price(double price) => price / _each;

    private static string Written(string unit) => unit.Replace("m3", "m³", StringComparison.Ordinal);
}
