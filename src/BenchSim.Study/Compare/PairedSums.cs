using BenchSim.Study.Figures;
using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Compare;

/// <summary>
/// Exact sums of pairs of whole numbers, one pair a season: enough for both means, the mean difference and every spread, whatever the
/// number of seasons. Adding two gives what one would have counted.
/// </summary>
public sealed class PairedSums
{
    private Int128 _left;
    private Int128 _right;
    private Int128 _leftSquares;
    private Int128 _rightSquares;
    private Int128 _differenceSquares;

    /// <summary>Pairs counted.</summary>
    public int Pairs { get; private set; }

    /// <summary>Pairs that are not alike.</summary>
    public int Differing { get; private set; }

    /// <summary>Mean of the left numbers.</summary>
    public double LeftMean => (double)_left / Pairs;

    /// <summary>Mean of the right numbers.</summary>
    public double RightMean => (double)_right / Pairs;

    /// <summary>Mean of right less left.</summary>
    public double MeanDifference => (double)(_right - _left) / Pairs;

    /// <summary>Variance of right less left (divisor n - 1); NaN for one pair.</summary>
    public double DifferenceVariance => Variance(_right - _left, _differenceSquares);

    /// <summary>
    /// What the variance of the difference would be were the two played on luck of their own: the sum of both variances; NaN for one pair.
    /// </summary>
    public double IndependentVariance => Variance(_left, _leftSquares) + Variance(_right, _rightSquares);

    /// <summary>
    /// How many times smaller the variance of the difference is than with luck of their own; NaN when it cannot be told or the difference
    /// never varies.
    /// </summary>
    public double VarianceRatio => DifferenceVariance > 0 ? IndependentVariance / DifferenceVariance : double.NaN;

    /// <summary>The change from left to right as a measure.</summary>
    /// <param name="measure">What was counted.</param>
    /// <param name="confidence">Confidence of the interval.</param>
    public MeasureChange ToChange(Measure measure, double confidence)
    {
        var factor = Pairs < 2 ? double.NaN : StudentT.Quantile((1 + confidence) / 2, Pairs - 1);
        return new MeasureChange
        {
            Measure = measure,
            Base = LeftMean / measure.Parts,
            Variant = RightMean / measure.Parts,
            Difference = MeanDifference / measure.Parts,
            HalfWidth = factor * Math.Sqrt(DifferenceVariance / Pairs) / measure.Parts,
            Differing = Differing,
            VarianceRatio = VarianceRatio,
        };
    }

    /// <summary>Counts a pair.</summary>
    public void Add(long left, long right)
    {
        Pairs++;
        Differing += left == right ? 0 : 1;
        _left += left;
        _right += right;
        _leftSquares += (Int128)left * left;
        _rightSquares += (Int128)right * right;
        _differenceSquares += (Int128)(right - left) * (right - left);
    }

    /// <summary>Adds another count.</summary>
    public void Merge(PairedSums other)
    {
        Pairs += other.Pairs;
        Differing += other.Differing;
        _left += other._left;
        _right += other._right;
        _leftSquares += other._leftSquares;
        _rightSquares += other._rightSquares;
        _differenceSquares += other._differenceSquares;
    }

    // n x sum of squares - square of sum is a whole number, so no digits are lost to the subtraction.
    private double Variance(Int128 sum, Int128 squares) =>
        Pairs < 2 ? double.NaN : (double)checked((Pairs * squares) - (sum * sum)) / ((double)Pairs * (Pairs - 1));
}
