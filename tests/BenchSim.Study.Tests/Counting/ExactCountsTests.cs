using BenchSim.Study.Counting;
using BenchSim.Study.Results;
using BenchSim.Study.Statistics;
using CsCheck;

namespace BenchSim.Study.Tests.Counting;

public class ExactCountsTests
{
    [Fact]
    public void Quantile_is_the_smallest_value_that_enough_seasons_do_not_exceed()
    {
        // Ten seasons: 3 3 4 4 4 7 7 9 9 20. P10: 1 season of 10 at or below 3. P50: 5 at or below 4. P90: 9 at or below 9. P95 needs 9.5,
        // so 10: 20.
        var estimate = EstimateOf(20, 3, 9, 4, 7, 3, 4, 9, 7, 4);

        Assert.Equal((3, 4, 9, 20), (estimate.P10, estimate.P50, estimate.P90, estimate.P95));
        Assert.Equal((3, 20, 10), (estimate.Least, estimate.Most, estimate.Seasons));
        Assert.Equal(7.0, estimate.Mean);
    }

    [Fact]
    public void Half_width_is_that_of_student() =>
        // 1 2 3 4: mean 2.5, squares about it 5, deviation sqrt(5/3); t(0.975, 3) = 3.182446305 (printed tables: 3.182).
        Assert.Equal(3.182446305284 * Math.Sqrt(5.0 / 3) / 2, EstimateOf(1, 2, 3, 4).HalfWidth, 1e-9);

    [Fact]
    public void Half_width_is_zero_when_all_agree_and_not_a_number_for_one_season()
    {
        Assert.Equal(0, EstimateOf(5, 5, 5).HalfWidth);
        Assert.True(double.IsNaN(EstimateOf(5).HalfWidth));
    }

    [Fact]
    public void Nothing_counted_is_said_as_such()
    {
        var estimate = EstimateOf();

        Assert.Equal(0, estimate.Seasons);
        Assert.True(double.IsNaN(estimate.Mean) && double.IsNaN(estimate.P50));
        Assert.Equal(new DateSpread(null, null, null, 0, 12), new Seen().ToDates(Plans.FirstDay, 12));
    }

    [Fact]
    public void Dates_are_days_of_the_clock_counted_as_one_more()
    {
        // Days 1, 2, 40 of four seasons: half of the three at or below day 2.
        ExactCounts counts = new(1);
        foreach (var day in new[] { 40, 1, -1, 2 })
        {
            counts.Add(0, day + 1);
        }

        var seen = Read(counts, 0);
        seen.TakeOne();

        Assert.Equal(
            new DateSpread(new DateOnly(2027, 3, 2), new DateOnly(2027, 3, 3), new DateOnly(2027, 4, 10), 3, 4),
            seen.ToDates(Plans.FirstDay, 4)
        );
    }

    [Fact]
    public void Zero_is_counted_like_any_other_value()
    {
        // 0 0 0 4: P50 0, P90 (3.6 seasons, so 4) 4; mean 1.
        var estimate = EstimateOf(0, 4, 0, 0);

        Assert.Equal(
            (1.0, 0, 0, 4, 0, 4, 4),
            (estimate.Mean, estimate.P10, estimate.P50, estimate.P90, estimate.Least, estimate.Most, estimate.Seasons)
        );
    }

    [Fact]
    public void Quantiles_by_day_by_hand()
    {
        // Ten seasons. Day 0: always 0. Day 1: 0 in nine seasons and 30 in one: P90 is 0 (nine of ten at or below it), P95 is 30.
        // Day 2: 1 to 10: P10 1, P50 5, P90 9, P95 (9.5 seasons, so 10) 10; mean 5.5.
        ExactCounts counts = new(3);
        for (var season = 1; season <= 10; season++)
        {
            counts.Add(0, [0, season == 4 ? 30 : 0, season]);
        }

        Assert.Equal<IEnumerable<DaySpread>>(
            [new DaySpread(0, 0, 0, 0, 0, 0), new DaySpread(3, 0, 0, 0, 30, 30), new DaySpread(5.5, 1, 5, 9, 10, 10)],
            Enumerable.Range(0, 3).Select(day => All(counts, day, 10).ToSpread())
        );
    }

    [Fact]
    public void Agrees_with_sorting_for_any_numbers_and_any_split() =>
        Gen.Select(Gen.OneOf(Gen.Const(0), Gen.Int[0, 6], Gen.Int[0, 5000]).Array[5].Array[1, 40], Gen.Int[0, 40])
            .Sample(
                (seasons, cut) =>
                {
                    var counts = Of(seasons[..Math.Min(cut, seasons.Length)]);
                    counts.Merge(Of(seasons[Math.Min(cut, seasons.Length)..]));
                    for (var day = 0; day < 5; day++)
                    {
                        Naive.Check([.. seasons.Select(season => (long)season[day])], All(counts, day, seasons.Length));
                    }
                },
                seed: "0000KfHk3Ryn",
                iter: 500
            );

    [Fact]
    public void One_at_a_time_or_in_a_row_is_the_same()
    {
        ExactCounts one = new(3);
        ExactCounts row = new(3);
        Random random = new(7);
        for (var season = 0; season < 200; season++)
        {
            int[] values = [random.Next(3), random.Next(400), random.Next(20) + 90];
            row.Add(0, values);
            for (var cell = 2; cell >= 0; cell--)
            {
                one.Add(cell, values[cell]);
            }
        }

        for (var cell = 0; cell < 3; cell++)
        {
            Assert.Equal(Read(one, cell).Values, Read(row, cell).Values);
        }
    }

    [Fact]
    public void Negative_numbers_are_refused()
    {
        var counts = Of([
            [7, 7, 7, 7, 7],
        ]);

        Assert.Throws<ArgumentOutOfRangeException>(() => counts.Add(0, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => counts.Add(0, int.MinValue));
        Assert.Throws<ArgumentOutOfRangeException>(() => counts.Add(1, [0, -1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ExactCounts(1).Add(0, -1));
    }

    private static Estimate EstimateOf(params int[] values)
    {
        ExactCounts counts = new(1);
        foreach (var value in values)
        {
            counts.Add(0, value);
        }

        return All(counts, 0, values.Length).ToEstimate(new StudentFactors(), 1);
    }

    private static ExactCounts Of(int[][] seasons)
    {
        ExactCounts counts = new(5);
        foreach (var season in seasons)
        {
            counts.Add(0, season);
        }

        return counts;
    }

    private static Seen Read(ExactCounts counts, int cell)
    {
        Seen seen = new();
        counts.Read(cell, seen);
        return seen;
    }

    private static Seen All(ExactCounts counts, int cell, int seasons)
    {
        var seen = Read(counts, cell);
        seen.AddZeros(seasons);
        return seen;
    }
}
