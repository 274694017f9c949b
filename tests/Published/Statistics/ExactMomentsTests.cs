using BenchSim.Study.Counting;

namespace Published.Statistics;

/// <summary>
/// The NumAcc sets of the NIST Statistical Reference Datasets (univariate), which defeat a running sum of squares in floating point. Counted as whole
/// tenths; rows of tests/Published/data/queueing_checks.csv flagged computed (rebuilt and checked with exact rationals).
/// </summary>
public class ExactMomentsTests
{
    [Theory]
    [InlineData("NumAcc1", 100_000_010, 100_000_030, 100_000_020, 1)]
    [InlineData("NumAcc2", 12, 11, 13, 500)]
    [InlineData("NumAcc3", 10_000_002, 10_000_001, 10_000_003, 500)]
    [InlineData("NumAcc4", 100_000_002, 100_000_001, 100_000_003, 500)]
    public void Mean_and_deviation_keep_all_digits(string set, int first, int second, int third, int times)
    {
        ExactTally exact = new();
        WideTally wide = new();
        exact.Add(first);
        wide.Add(first);
        for (var i = 0; i < times; i++)
        {
            exact.Add(second);
            exact.Add(third);
            wide.Add(second);
            wide.Add(third);
        }

        CheckRow[] rows = [.. CheckRows.Of("nist_strd", set)];
        foreach (var moments in new[] { exact.Moments(), wide.Moments() })
        {
            double n = moments.Seasons;
            rows.Single(row => row.Quantity == "mean").Check((double)moments.Sum / n / 10);
            rows.Single(row => row.Quantity == "sd").Check(Math.Sqrt((double)moments.SpreadTimesSeasons / (n * (n - 1))) / 10);
        }
    }
}
