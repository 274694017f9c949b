using BenchSim.Engine.Randomness;

namespace BenchSim.Study.Learning;

/// <summary>
/// What batches teach of a mean of their crop, such as its degree-days of emergence or of growth. The logarithm of the mean is normal
/// before anything is seen, about the value in force; a batch departs from the mean by a lognormal factor of mean 1 and the crop's cv.
/// Where the values of batches are known, this is the closed normal form; intervals enter as intervals, on a grid.
/// </summary>
public sealed class MeanLesson
{
    private const int Points = 1201;
    private const double Reach = 6;

    // One batch in so many is judged wrongly, so that none makes the others impossible.
    private const double Misjudged = 1e-6;

    private readonly double _value;
    private readonly double _deviation;
    private readonly double _sigma;
    private readonly double[] _logs = new double[Points];
    private int _batches;

    /// <summary>Batches of a crop are never so alike that one of them says all: the least cv that is taken.</summary>
    public const double LeastCv = 0.02;

    /// <summary>Begins with the value in force.</summary>
    /// <param name="value">The value, above 0.</param>
    /// <param name="deviation">Standard deviation of the logarithm of what the crop's mean may be, above 0.</param>
    /// <param name="cv">Coefficient of variation of batches about the mean, 0 or more; taken as 0.02 where it is less.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value or deviation of 0 or less.</exception>
    public MeanLesson(double value, double deviation, double cv)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(deviation);
        (_value, _deviation, _sigma) = (value, deviation, Lognormal.Sigma(Math.Max(cv, LeastCv)));
        for (var point = 0; point < Points; point++)
        {
            _logs[point] = -Score(point) * Score(point) / 2;
        }
    }

    /// <summary>Takes a batch in.</summary>
    /// <param name="batch">What is known of its value; one that is bounded by nothing teaches nothing.</param>
    /// <exception cref="ArgumentException">An interval that holds no value above 0.</exception>
    public void See(BatchValue batch)
    {
        if (!(batch.UpTo > 0 && batch.UpTo >= batch.Above))
        {
            throw new ArgumentException("The interval of a batch must hold a value above 0.", nameof(batch));
        }

        _batches++;
        for (var point = 0; point < Points; point++)
        {
            var (low, high) = Scores(batch, point);
            _logs[point] += batch.IsKnown ? -low * low / 2 : Math.Log(Math.Max(Between(low, high), double.Epsilon));
        }
    }

    /// <summary>Takes in a batch whose interval itself is one of several, as where it is not known when its growth began.</summary>
    /// <param name="batch">The intervals, each with its weight, about 1 in all; one without a value above 0 is taken for misjudged.</param>
    public void See(IReadOnlyList<(double Weight, BatchValue Value)> batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        _batches++;
        for (var point = 0; point < Points; point++)
        {
            var sum = 0.0;
            foreach (var (weight, value) in batch)
            {
                var (low, high) = Scores(value, point);
                sum += high > low ? weight * Between(low, high) : 0;
            }

            _logs[point] += Math.Log(((1 - Misjudged) * sum) + Misjudged);
        }
    }

    /// <summary>The value that the mean is below with a chance.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double Quantile(double u) => _value * Math.Exp(_deviation * Law().Quantile(u));

    /// <summary>What the batches teach. The new value is that of the mean logarithm.</summary>
    public Learned Lesson() => new(_value, _value * Math.Exp(_deviation * Law().Mean), Quantile(0.05), Quantile(0.95), _batches);

    private static double Step => 2 * Reach / (Points - 1);

    private static double Score(int point) => -Reach + (point * Step);

    // From the nearer tail, so that none of its digits are lost.
    private static double Between(double low, double high) =>
        low > 0 ? Normal.Cumulative(-low) - Normal.Cumulative(-high) : Normal.Cumulative(high) - Normal.Cumulative(low);

    // The logarithm of a batch of a mean m is normal about ln m less half its variance.
    private (double Low, double High) Scores(BatchValue batch, int point)
    {
        var mean = Math.Log(_value) + (_deviation * Score(point)) - (_sigma * _sigma / 2);
        return ((Math.Log(batch.Above) - mean) / _sigma, (Math.Log(batch.UpTo) - mean) / _sigma);
    }

    private GridLaw Law() => GridLaw.OfLogs([.. Enumerable.Range(0, Points).Select(Score)], _logs);
}
