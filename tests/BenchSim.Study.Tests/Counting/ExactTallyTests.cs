using BenchSim.Study.Counting;
using BenchSim.Study.Results;
using BenchSim.Study.Statistics;
using CsCheck;

namespace BenchSim.Study.Tests.Counting;

public class ExactTallyTests
{
    [Fact]
    public void Quantile_is_the_smallest_value_that_enough_seasons_do_not_exceed()
    {
        // Ten seasons: 3 3 4 4 4 7 7 9 9 20. P10: 1 season of 10 at or below 3. P50: 5 at or below 4. P90: 9 at or below 9. P95 needs 9.5, so 10: 20.
        var tally = Of(20, 3, 9, 4, 7, 3, 4, 9, 7, 4);

        var estimate = tally.ToEstimate(new StudentFactors());

        Assert.Equal((3, 4, 9, 20), (estimate.P10, estimate.P50, estimate.P90, estimate.P95));
        Assert.Equal((3, 20, 10), (estimate.Least, estimate.Most, estimate.Seasons));
        Assert.Equal(7.0, estimate.Mean);
    }

    [Fact]
    public void Half_width_is_that_of_student()
    {
        // 1 2 3 4: mean 2.5, squares about it 5, deviation sqrt(5/3); t(0.975, 3) = 3.182446305 (printed tables: 3.182).
        var estimate = Of(1, 2, 3, 4).ToEstimate(new StudentFactors());

        Assert.Equal(3.182446305284 * Math.Sqrt(5.0 / 3) / 2, estimate.HalfWidth, 1e-9);
    }

    [Fact]
    public void Half_width_is_zero_when_all_agree_and_not_a_number_for_one_season()
    {
        Assert.Equal(0, Of(5, 5, 5).ToEstimate(new StudentFactors()).HalfWidth);
        Assert.True(double.IsNaN(Of(5).ToEstimate(new StudentFactors()).HalfWidth));
    }

    [Fact]
    public void Nothing_counted_is_said_as_such()
    {
        var estimate = new ExactTally().ToEstimate(new StudentFactors());

        Assert.Equal(0, estimate.Seasons);
        Assert.True(double.IsNaN(estimate.Mean) && double.IsNaN(estimate.P50));
        Assert.Equal(new DateSpread(null, null, null, 0, 12), new ExactTally().ToDates(Plans.FirstDay, 12));
    }

    [Fact]
    public void Dates_are_days_of_the_clock() =>
        // Days 1, 2, 40 of four seasons: half of the three at or below day 2.
        Assert.Equal(
            new DateSpread(new DateOnly(2027, 3, 2), new DateOnly(2027, 3, 3), new DateOnly(2027, 4, 10), 3, 4),
            Of(40, 1, 2).ToDates(Plans.FirstDay, 4)
        );

    [Fact]
    public void Zero_is_counted_like_any_other_value()
    {
        // 0 0 0 4: P50 0, P90 (3.6 seasons, so 4) 4; mean 1.
        var estimate = Of(0, 4, 0, 0).ToEstimate(new StudentFactors());

        Assert.Equal(
            (1.0, 0, 0, 4, 0, 4, 4),
            (estimate.Mean, estimate.P10, estimate.P50, estimate.P90, estimate.Least, estimate.Most, estimate.Seasons)
        );
    }

    [Fact]
    public void Negative_numbers_are_refused()
    {
        var tally = Of(7);

        Assert.Throws<ArgumentOutOfRangeException>(() => tally.Add(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => tally.Add(int.MinValue));
    }

    [Fact]
    public void Agrees_with_sorting_for_any_numbers_and_any_split() =>
        Gen.Select(Gen.Int[0, 300].Array[1, 60], Gen.OneOf(Gen.Const(0), Gen.Int[0, 1000]), Gen.Int[0, 60])
            .Sample(
                (values, offset, cut) =>
                {
                    int[] shifted = [.. values.Select(value => value + offset)];
                    var left = Of(shifted[..Math.Min(cut, shifted.Length)]);
                    left.Merge(Of(shifted[Math.Min(cut, shifted.Length)..]));
                    Naive.Check([.. shifted.Select(value => (long)value)], left);
                },
                seed: "0000KfHk3Ryn",
                iter: 500
            );

    private static ExactTally Of(params int[] values)
    {
        ExactTally tally = new();
        foreach (var value in values)
        {
            tally.Add(value);
        }

        return tally;
    }
}
