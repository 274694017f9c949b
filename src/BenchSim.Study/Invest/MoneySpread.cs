namespace BenchSim.Study.Invest;

/// <summary>An amount of money: its mean with the 95 % interval of the mean, and its spread.</summary>
/// <param name="Mean">Mean.</param>
/// <param name="HalfWidth">Half the width of the interval of the mean (Student, over the seasons played); NaN for one season.</param>
/// <param name="P10">Not exceeded in 10 of 100.</param>
/// <param name="P50">Not exceeded in half.</param>
/// <param name="P90">Not exceeded in 90 of 100.</param>
public sealed record MoneySpread(double Mean, double HalfWidth, double P10, double P50, double P90)
{
    /// <summary>Lower end of the interval of the mean.</summary>
    public double Low => Mean - HalfWidth;

    /// <summary>Upper end of the interval of the mean.</summary>
    public double High => Mean + HalfWidth;
}
