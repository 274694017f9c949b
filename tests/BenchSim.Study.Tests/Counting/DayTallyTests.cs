using BenchSim.Study.Counting;
using BenchSim.Study.Results;
using CsCheck;

namespace BenchSim.Study.Tests.Counting;

public class DayTallyTests
{
    [Fact]
    public void Quantiles_by_day_by_hand()
    {
        // Ten seasons. Day 0: always 0. Day 1: 0 in nine seasons and 30 in one: P90 is 0 (nine of ten at or below it), P95 is 30.
        // Day 2: 1 to 10: P10 1, P50 5, P90 9, P95 (9.5 seasons, so 10) 10; mean 5.5.
        DayTally tally = new(3);
        for (var season = 1; season <= 10; season++)
        {
            tally.Add([0, season == 4 ? 30 : 0, season]);
        }

        Assert.Equal<IEnumerable<DaySpread>>(
            [new DaySpread(0, 0, 0, 0, 0, 0), new DaySpread(3, 0, 0, 0, 30, 30), new DaySpread(5.5, 1, 5, 9, 10, 10)],
            tally.ToSpreads()
        );
    }

    [Fact]
    public void Agrees_with_sorting_for_any_numbers_and_any_split() =>
        Gen.Select(Gen.OneOf(Gen.Const(0), Gen.Int[0, 6], Gen.Int[0, 5000]).Array[5].Array[1, 40], Gen.Int[0, 40])
            .Sample(
                (seasons, cut) =>
                {
                    var tally = Of(seasons[..Math.Min(cut, seasons.Length)]);
                    tally.Merge(Of(seasons[Math.Min(cut, seasons.Length)..]));
                    for (var day = 0; day < 5; day++)
                    {
                        long[] sorted = [.. seasons.Select(season => (long)season[day]).Order()];
                        var spread = tally.ToSpreads()[day];
                        Assert.Equal((double)sorted.Sum() / sorted.Length, spread.Mean);
                        Assert.Equal(Naive.Quantile(sorted, 10), spread.P10);
                        Assert.Equal(Naive.Quantile(sorted, 50), spread.P50);
                        Assert.Equal(Naive.Quantile(sorted, 90), spread.P90);
                        Assert.Equal(Naive.Quantile(sorted, 95), spread.P95);
                        Assert.Equal(sorted[^1], spread.Most);
                    }
                },
                seed: "0000KfHk3Ryn",
                iter: 500
            );

    [Fact]
    public void Negative_numbers_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => new DayTally(1).Add([-1]));

    private static DayTally Of(int[][] seasons)
    {
        DayTally tally = new(5);
        foreach (var season in seasons)
        {
            tally.Add(season);
        }

        return tally;
    }
}
