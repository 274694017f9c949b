namespace BenchSim.Study.Statistics;

/// <summary>A mean with its Student t interval.</summary>
/// <param name="Mean">Arithmetic mean.</param>
/// <param name="Deviation">Standard deviation of the values (divisor n - 1); NaN for one value.</param>
/// <param name="HalfWidth">Half the width of the interval: t((1 + confidence) / 2, n - 1) x deviation / sqrt n; NaN for one value.</param>
public readonly record struct MeanInterval(double Mean, double Deviation, double HalfWidth)
{
    /// <summary>The interval of a sample. Of paired values give the differences.</summary>
    /// <param name="values">One value or more.</param>
    /// <param name="confidence">Between 0 and 1, both excluded.</param>
    /// <exception cref="ArgumentException">No values.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    public static MeanInterval Of(ReadOnlySpan<double> values, double confidence = Confidence.Usual)
    {
        Confidence.ThrowIfOutside(confidence);
        if (values.IsEmpty)
        {
            throw new ArgumentException("One value or more.", nameof(values));
        }

        double sum = 0;
        foreach (var value in values)
        {
            sum += value;
        }

        var mean = sum / values.Length;

        // Two passes: the sum of squares less the square of the sum would lose the digits that matter.
        double squares = 0;
        foreach (var value in values)
        {
            squares += (value - mean) * (value - mean);
        }

        return From(values.Length, mean, squares, confidence);
    }

    private static MeanInterval From(int count, double mean, double squares, double confidence)
    {
        if (count == 1)
        {
            return new MeanInterval(mean, double.NaN, double.NaN);
        }

        var deviation = Math.Sqrt(squares / (count - 1));
        var factor = StudentT.Quantile((1 + confidence) / 2, count - 1);
        return new MeanInterval(mean, deviation, factor * deviation / Math.Sqrt(count));
    }
}
