namespace BenchSim.Season.Evidence;

/// <summary>How well each value of a factor explains what was seen: a weight by steps. A break belongs to the step below it.</summary>
internal sealed class StepWeights
{
    private readonly double[] _breaks;
    private readonly double[] _weights;

    /// <summary>Makes weights.</summary>
    /// <param name="breaks">Where the weight changes, in order.</param>
    /// <param name="weights">The weight below the first, between two, and above the last.</param>
    public StepWeights(double[] breaks, double[] weights) => (_breaks, _weights) = (breaks, weights);

    /// <summary>The same weight for all.</summary>
    public static StepWeights Even { get; } = new([], [1]);

    /// <summary>The steps, in order: each from above a value up to and with another.</summary>
    public IEnumerable<(double Above, double UpTo, double Weight)> Steps =>
        _weights.Select(
            (weight, step) =>
                (
                    step == 0 ? double.NegativeInfinity : _breaks[step - 1],
                    step == _breaks.Length ? double.PositiveInfinity : _breaks[step],
                    weight
                )
        );

    /// <summary>One weight up to and with a value, another above it.</summary>
    public static StepWeights At(double value, double upTo, double above) => new([value], [upTo, above]);

    /// <summary>The weight of a value.</summary>
    public double Of(double value)
    {
        var step = 0;
        while (step < _breaks.Length && _breaks[step] < value)
        {
            step++;
        }

        return _weights[step];
    }

    /// <summary>The weights of both: their products.</summary>
    public StepWeights Times(StepWeights other)
    {
        double[] breaks = [.. _breaks.Concat(other._breaks).Distinct().Order()];
        return new StepWeights(breaks, [.. breaks.Append(double.PositiveInfinity).Select(end => Of(end) * other.Of(end))]);
    }
}
