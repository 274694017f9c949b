namespace BenchSim.Season.Heat;

/// <summary>One face of a house. An edge, such as the perimeter, may be given as its length and a loss a metre.</summary>
/// <param name="Amount">Area, square metres (or length, metres), 0 or more.</param>
/// <param name="UValue">Watts a square metre (or a metre) and kelvin, 0 or more.</param>
public readonly record struct HeatLossPart(double Amount, double UValue)
{
    /// <summary>Watts lost a kelvin of difference.</summary>
    public double WattsPerKelvin => Amount * UValue;
}
