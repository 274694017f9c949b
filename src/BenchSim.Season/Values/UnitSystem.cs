namespace BenchSim.Season.Values;

/// <summary>The units in which files without a unit are read and reports are written.</summary>
public enum UnitSystem
{
    /// <summary>Degrees Celsius, metres, millimetres, litres.</summary>
    Metric,

    /// <summary>Degrees Fahrenheit, feet, inches, gallons.</summary>
    Imperial,
}
