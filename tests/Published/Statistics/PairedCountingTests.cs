using BenchSim.Study.Compare;
using BenchSim.Study.Statistics;

namespace Published.Statistics;

/// <summary>The counting behind a comparison against rows and formulas from elsewhere.</summary>
public class PairedCountingTests
{
    [Fact]
    public void Paired_differences()
    {
        foreach (var row in CheckRows.Of("paired_t"))
        {
            // The rows have one decimal: in tenths they are the whole numbers that are counted. Counted in two halves and added up.
            var (first, second) = (new PairedSums(), new PairedSums());
            (var a, var b) = (row.Numbers("A"), row.Numbers("B"));
            for (var at = 0; at < a.Length; at++)
            {
                (at % 2 == 0 ? first : second).Add((long)Math.Round(b[at] * 10), (long)Math.Round(a[at] * 10));
            }

            first.Merge(second);
            var deviation = Math.Sqrt(first.DifferenceVariance);
            row.Check(
                row.Quantity switch
                {
                    "mean_diff" => first.MeanDifference / 10,
                    "sd_diff" => deviation / 10,
                    "half_width_95" => StudentT.Quantile(0.975, first.Pairs - 1) * deviation / Math.Sqrt(first.Pairs) / 10,
                    _ => throw new InvalidOperationException(row.Quantity),
                },
                1e-9
            );
        }
    }

    // With no correlation, as when a margin is empty, the interval is the square-and-add of the two Wilson intervals without the term of
    // the correlation: none of 20 first, 5 of 20 second. Wilson with z^2 = 3.841459: 0/20 is 0 to z^2 / (20 + z^2) = 0.161125; 5/20 is (5 +
    // 1.920729 -+ 1.959964 sqrt(20 x 0.25 x 0.75 + 0.960365)) / 23.841459 = 0.111862 to 0.468701. Low: 0.25 - sqrt(0.138138^2 + 0.161125^2)
    // = 0.037765. High: 0.25 + sqrt(0.218701^2 + 0^2) = 0.468701.
    [Fact]
    public void Newcombes_interval_without_correlation()
    {
        (var low, var high) = PairedShares.Interval(0, 0, 5, 15);
        Assert.Equal(0.037765, low, 2e-6);
        Assert.Equal(0.468701, high, 2e-6);
    }

    // 30 both, 0 only first, 10 only second, 60 neither. Shares 0.3 and 0.4 of 100. phi = (30 x 60 - 0 - 50) / sqrt(30 x 70 x 40 x 60) =
    // 1750 / 2244.994 = 0.779512. Wilson at n = 100: (100 p + 1.920729 -+ 1.959964 sqrt(100 p (1 - p) + 0.960365)) / 103.841459: p = 0.3:
    // 31.920729 -+ 9.185 over it, 0.218949 to 0.395849; p = 0.4: 41.920729 -+ 9.792, 0.309401 to 0.497997. Low: 0.1 - sqrt(0.090599^2 - 2 x
    // 0.779512 x 0.090599 x 0.095849 + 0.095849^2) = 0.1 - 0.062104; high: 0.1 + sqrt(0.097997^2 - 2 x 0.779512 x 0.097997 x 0.081051 +
    // 0.081051^2) = 0.1 + 0.061561.
    [Fact]
    public void Newcombes_interval_with_correlation()
    {
        (var low, var high) = PairedShares.Interval(30, 0, 10, 60);
        Assert.Equal(0.037896, low, 2e-6);
        Assert.Equal(0.161561, high, 2e-6);

        // Seen from the other side it is the same interval.
        (var otherLow, var otherHigh) = PairedShares.Interval(30, 10, 0, 60);
        Assert.Equal(-high, otherLow, 1e-12);
        Assert.Equal(-low, otherHigh, 1e-12);
    }
}
