namespace BenchSim.Season.Weather;

/// <summary>A figure over springs: of a record, or as generated.</summary>
/// <param name="Springs">Springs, whole from January to June.</param>
/// <param name="Without">Springs of these without such a night; they count in neither mean nor spread.</param>
/// <param name="Mean">Mean over the others: day of the year, nights, or degrees Celsius; null where there is none.</param>
/// <param name="StandardDeviation">Standard deviation between the others: days, nights, or kelvin; null where there are fewer than
/// two.</param>
public readonly record struct SpringSide(int Springs, int Without, double? Mean, double? StandardDeviation)
{
    internal static SpringSide Of(ReadOnlySpan<double> values)
    {
        var (count, sum, squares) = (0, 0.0, 0.0);
        foreach (var value in values)
        {
            if (!double.IsNaN(value))
            {
                (count, sum) = (count + 1, sum + value);
            }
        }

        foreach (var value in values)
        {
            squares += double.IsNaN(value) ? 0 : (value - (sum / count)) * (value - (sum / count));
        }

        return new SpringSide(
            values.Length,
            values.Length - count,
            count == 0 ? null : sum / count,
            count < 2 ? null : Math.Sqrt(squares / (count - 1))
        );
    }
}
