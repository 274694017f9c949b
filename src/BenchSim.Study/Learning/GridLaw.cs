namespace BenchSim.Study.Learning;

/// <summary>A law on a grid of values: each value stands for the part around it.</summary>
/// <param name="values">The values, in order.</param>
/// <param name="weights">Their weights, not all 0.</param>
internal sealed class GridLaw(double[] values, double[] weights)
{
    private readonly double _whole = weights.Sum();

    /// <summary>Its values.</summary>
    public double[] Values => values;

    /// <summary>The weight of a value, of all 1.</summary>
    public double WeightOf(int point) => weights[point] / _whole;

    /// <summary>A law from the logarithms of its weights.</summary>
    public static GridLaw OfLogs(double[] values, double[] logs)
    {
        var most = logs.Max();
        return new GridLaw(values, Array.ConvertAll(logs, log => Math.Exp(log - most)));
    }

    /// <summary>Its mean.</summary>
    public double Mean => values.Select((value, point) => value * weights[point]).Sum() / _whole;

    /// <summary>The value that it is below with a chance.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double Quantile(double u)
    {
        var (left, point) = (u * _whole, 0);
        while (point < values.Length - 1 && left > weights[point])
        {
            left -= weights[point++];
        }

        var part = weights[point] > 0 ? Math.Clamp(left / weights[point], 0, 1) : 0.5;
        var (low, high) = (Edge(point), Edge(point + 1));
        return low + (part * (high - low));
    }

    // Halfway between neighbours; as far out again at the ends.
    private double Edge(int point) =>
        values.Length == 1 ? values[0]
        : point == 0 ? values[0] - ((values[1] - values[0]) / 2)
        : point == values.Length ? values[^1] + ((values[^1] - values[^2]) / 2)
        : (values[point - 1] + values[point]) / 2;
}
