using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>How often each whole number was seen, one number a season.</summary>
internal abstract class Tally
{
    /// <summary>Exact sums and ends.</summary>
    public abstract Moments Moments();

    /// <summary>The smallest value that at least so many seasons do not exceed.</summary>
    /// <param name="seasons">From 1 to the number counted.</param>
    protected abstract long SmallestNotExceededBy(long seasons);

    /// <summary>The smallest value that at least the stated percent of the seasons do not exceed. Nothing counted: an error.</summary>
    public long Quantile(int percent, int seasons) => SmallestNotExceededBy(SeasonsNeeded(percent, seasons));

    /// <summary>The estimate of the quantity; all NaN when no season was counted.</summary>
    /// <param name="student">Student factors.</param>
    /// <param name="parts">Whole numbers counted to one unit shown: 1, or 60,000 where thousandths of a minute are shown as hours.</param>
    public Estimate ToEstimate(StudentFactors student, double parts = 1)
    {
        var moments = Moments();
        var n = moments.Seasons;
        if (n == 0)
        {
            return new Estimate(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, 0);
        }

        return new Estimate(
            (double)moments.Sum / n / parts,
            HalfWidth(moments, student) / parts,
            Quantile(10, n) / parts,
            Quantile(50, n) / parts,
            Quantile(90, n) / parts,
            Quantile(95, n) / parts,
            moments.Least / parts,
            moments.Most / parts,
            n
        );
    }

    /// <summary>ceil(percent x seasons / 100) in whole numbers: count x 100 >= percent x seasons, without a rounding of its own.</summary>
    internal static long SeasonsNeeded(int percent, int seasons) => Math.Max(1, (((long)percent * seasons) + 99) / 100);

    private static double HalfWidth(Moments moments, StudentFactors student)
    {
        double n = moments.Seasons;
        if (moments.Seasons == 1)
        {
            return double.NaN;
        }

        var variance = (double)moments.SpreadTimesSeasons / (n * (n - 1));
        return student.For(moments.Seasons) * Math.Sqrt(variance / n);
    }
}
