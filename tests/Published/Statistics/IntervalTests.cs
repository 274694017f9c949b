using BenchSim.Study.Statistics;

namespace Published.Statistics;

/// <summary>Student, Wilson and order-statistic intervals against rows worked out elsewhere (see the source column of the file).</summary>
public class IntervalTests
{
    // The Student rows come from a routine good to 8 or 9 digits: for p = 0.99 and 2 degrees of freedom the row says 6.96455671876, where
    // the closed form 0.98 sqrt(2 / 0.0396) is 6.96455673428. Hence a tolerance of their own; the closed forms below are held to more
    // digits.
    private const double StudentRows = 1e-8;

    [Fact]
    public void Student_quantiles()
    {
        foreach (var row in CheckRows.Of("student_t"))
        {
            row.Check(StudentT.Quantile(row.Number("p"), row.Number("df")), StudentRows);
            Assert.Equal(
                -StudentT.Quantile(row.Number("p"), row.Number("df")),
                StudentT.Quantile(1 - row.Number("p"), row.Number("df")),
                1e-9
            );
        }
    }

    [Fact]
    public void Student_quantiles_in_closed_form()
    {
        // One degree of freedom is the Cauchy law: tan(pi (p - 1/2)). Two: 2 a sqrt(2 / (1 - 4 a^2)) with a = p - 1/2.
        foreach (var p in new[] { 0.51, 0.6, 0.9, 0.999, 0.999999 })
        {
            var a = p - 0.5;
            Assert.Equal(1, StudentT.Quantile(p, 1) / Math.Tan(Math.PI * a), 1e-9);
            Assert.Equal(1, StudentT.Quantile(p, 2) / (2 * a * Math.Sqrt(2 / (1 - (4 * a * a)))), 1e-9);

            // Three: P(T <= t) = 1/2 + (x / (1 + x^2) + atan x) / pi with x = t / sqrt 3 (Abramowitz and Stegun 26.7.3).
            var x = StudentT.Quantile(p, 3) / Math.Sqrt(3);
            Assert.Equal(a, ((x / (1 + (x * x))) + Math.Atan(x)) / Math.PI, 1e-13);
        }

        Assert.Equal(0, StudentT.Quantile(0.5, 7));
    }

    [Fact]
    public void Wilson_intervals()
    {
        foreach (var row in CheckRows.Of("wilson"))
        {
            (var low, var high) = Wilson.Interval(row.Whole("x"), row.Whole("n"), 0.95);
            row.Check(row.Quantity == "lo" ? low : high);
        }
    }

    [Fact]
    public void Order_statistic_intervals()
    {
        foreach (var row in CheckRows.Of("order_stat_ci"))
        {
            var interval = QuantileInterval.Of(row.Whole("n"), row.Number("q"), row.Number("conf"));
            if (row.Quantity == "exact_coverage")
            {
                Assert.Equal(row.Value, interval.Coverage, 1e-10);
            }
            else
            {
                row.Check(row.Quantity == "l" ? interval.Lower : interval.Upper);
            }
        }
    }

    [Fact]
    public void Student_interval_of_a_mean()
    {
        foreach (var row in CheckRows.Of("t_ci"))
        {
            var interval = MeanInterval.Of(row.Numbers("x"));
            if (row.Quantity == "mean")
            {
                row.Check(interval.Mean);
            }
            else
            {
                row.Check(interval.HalfWidth, StudentRows);
            }
        }
    }

    [Fact]
    public void Paired_differences()
    {
        foreach (var row in CheckRows.Of("paired_t"))
        {
            var interval = MeanInterval.Of([.. row.Numbers("A").Zip(row.Numbers("B"), (a, b) => a - b)]);
            if (row.Quantity == "half_width_95")
            {
                row.Check(interval.HalfWidth, StudentRows);
            }
            else
            {
                row.Check(row.Quantity == "mean_diff" ? interval.Mean : interval.Deviation);
            }
        }
    }

    [Fact]
    public void One_value_has_no_interval() => Assert.True(double.IsNaN(MeanInterval.Of([3.0]).HalfWidth));

    [Fact]
    public void Arguments_outside_their_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Wilson.Interval(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Wilson.Interval(-1, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Wilson.Interval(6, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Wilson.Interval(1, 5, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(double.NaN, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(0.9, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantileInterval.Of(0, 0.5));
        Assert.Throws<ArgumentException>(() => MeanInterval.Of([]));
    }
}
