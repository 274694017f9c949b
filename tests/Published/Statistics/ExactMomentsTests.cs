using BenchSim.Study.Counting;

namespace Published.Statistics;

/// <summary>
/// The NumAcc sets of the NIST Statistical Reference Datasets (univariate), which defeat a running sum of squares in floating point.
/// Counted as whole tenths; rows of tests/Published/data/queueing_checks.csv flagged computed (rebuilt and checked with exact rationals).
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
        var seasons = (2 * times) + 1;
        ExactCounts exact = new(1);
        WideCounts wide = new(1);
        for (var at = 0; at < seasons; at++)
        {
            var value =
                at == 0 ? first
                : at % 2 == 1 ? second
                : third;
            exact.Add(0, value);
            wide.Add(0, value);
        }

        var (ofExact, ofWide) = (new Seen(), new Seen());
        exact.Read(0, ofExact);
        wide.Read(0, ofWide);

        CheckRow[] rows = [.. CheckRows.Of("nist_strd", set)];
        foreach (var moments in new[] { ofExact.Moments(), ofWide.Moments() })
        {
            Assert.Equal(seasons, moments.Seasons);
            double n = moments.Seasons;
            rows.Single(row => row.Quantity == "mean").Check((double)moments.Sum / n / 10);
            rows.Single(row => row.Quantity == "sd").Check(Math.Sqrt((double)moments.SpreadTimesSeasons / (n * (n - 1))) / 10);
        }
    }
}
