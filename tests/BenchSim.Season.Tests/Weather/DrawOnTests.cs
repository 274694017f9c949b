using System.Collections.Immutable;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

/// <summary>The generator goes on from days that are known.</summary>
public class DrawOnTests
{
    private static readonly DateOnly s_first = new(2027, 3, 1);

    private static readonly MonthWeather s_month = new()
    {
        WetAfterDry = 0.2,
        WetAfterWet = 0.6,
        RainShape = 0.8,
        RainScaleMm = 6,
        TminWetC = 4,
        TminDryC = 2,
        TmaxWetC = 11,
        TmaxDryC = 14,
        TminSdC = 3,
        TmaxSdC = 4,
    };

    // The luck of a day is that of its date and season, so a season goes on from its own days as it was: with the same luck of the year
    // where the year has none. The range of a day is never below the least here, which would hide what was drawn.
    [Fact]
    public void A_season_goes_on_from_its_own_days()
    {
        var generator = new WeatherGenerator(Every(s_month));
        for (var season = 0; season < 30; season++)
        {
            var whole = Draw(generator, season, 120);
            var seen = generator.After(whole[..50])!;
            var rest = DrawOn(generator, season, seen, 70);
            Assert.Equal(whole[50..].Select(day => day.Date), rest.Select(day => day.Date));
            foreach (var (was, now) in whole[50..].Zip(rest))
            {
                Assert.Equal(was.TminC, now.TminC, 9);
                Assert.Equal(was.TmaxC, now.TmaxC, 9);
                Assert.Equal(was.RainMm, now.RainMm, 9);
            }
        }
    }

    // A gap of 9 days after the last that is known: they are walked through with the luck of their dates.
    [Fact]
    public void Days_between_are_walked_through()
    {
        var generator = new WeatherGenerator(Every(s_month));
        var whole = Draw(generator, 3, 120);
        var rest = DrawOn(generator, 3, generator.After(whole[..50])!, 61, daysBetween: 9);
        Assert.Equal(whole[59].Date, rest[0].Date);
        Assert.All(whole[59..].Zip(rest), pair => Assert.Equal(pair.First.TmaxC, pair.Second.TmaxC, 9));
    }

    [Fact]
    public void Nothing_seen_is_nothing_known() => Assert.Null(new WeatherGenerator(Every(s_month)).After([]));

    // Days that have nothing to do with each other but their year: x = sqrt(s) y + sqrt(1 - s) z, y and z standard normal. After n days of
    // sum S the law of y is normal with precision 1 + n s / (1 - s) and mean sqrt(s) S / ((1 - s) precision).
    [Fact]
    public void What_a_year_has_in_common_is_learned_as_the_closed_form_says()
    {
        const double Share = 0.2;
        var independent = new ResidualModel
        {
            A11 = 0,
            A12 = 0,
            A21 = 0,
            A22 = 0,
            B11 = 1,
            B21 = 0,
            B22 = 1,
        };
        var generator = new WeatherGenerator(
            Every(s_month with { TminYearShare = Share, TmaxYearShare = Share }) with
            {
                Residuals = independent,
            }
        );
        double[] max = [0.3, 1.1, -0.4, 2, 0.7];
        double[] min = [-1, 0.2, 0.5, -0.3, -1.4];
        var year = generator.After(Days(max, min))!.Year;
        var precision = 1 + (5 * Share / (1 - Share));
        Assert.Equal(Math.Sqrt(Share) * max.Sum() / ((1 - Share) * precision), year.Mean.Max, 9);
        Assert.Equal(Math.Sqrt(Share) * min.Sum() / ((1 - Share) * precision), year.Mean.Min, 9);
        Assert.Equal(
            (1 / precision, 0, 1 / precision),
            (Rounded(year.Variance.Max), Rounded(year.Variance.Both), Rounded(year.Variance.Min))
        );

        double Rounded(double value) =>
            Math.Abs(value) < 1e-9 ? 0
            : Math.Abs(value - (1 / precision)) < 1e-9 ? 1 / precision
            : value;
    }

    // The same with days that carry over, highest and lowest bound to each other, and a day missing: against the law of y given all scores
    // at once, by elimination in their joint covariance.
    [Fact]
    public void It_is_learned_from_days_that_carry_over_as_elimination_says()
    {
        const double ShareMax = 0.15;
        const double ShareMin = 0.3;
        const double Both = 0.4;
        var generator = new WeatherGenerator(
            Every(s_month with { TminYearShare = ShareMin, TmaxYearShare = ShareMax }) with
            {
                YearCorrelation = Both,
            }
        );
        double[] max = [0.3, 1.1, -0.4, 2];
        double[] min = [-1, 0.2, 0.5, -0.3];
        int[] at = [0, 1, 3, 4];
        var known = Days(max, min).Select((day, index) => day with { Date = s_first.AddDays(at[index]) });
        var year = generator.After([.. known])!.Year;

        // Days 0 and 1, and 3 and 4, are runs; between runs nothing but the year is taken to be in common.
        var model = ResidualModel.UnitedStatesAverage;
        var (m11, m12, m22) = model.LongRun();
        double[,] same =
        {
            { m11, m12 },
            { m12, m22 },
        };
        double[,] a =
        {
            { model.A11, model.A12 },
            { model.A21, model.A22 },
        };
        double[] shares = [ShareMax, ShareMin];
        double[,] prior =
        {
            { 1, Both },
            { Both, 1 },
        };
        var covariance = new double[8, 8];
        var withYear = new double[8, 2];
        for (var i = 0; i < 8; i++)
        {
            for (var j = 0; j < 8; j++)
            {
                var (d, e, k, l) = (i / 2, j / 2, i % 2, j % 2);
                var carried =
                    d == e ? same[k, l]
                    : d / 2 != e / 2 ? 0
                    : d > e ? (a[k, 0] * same[0, l]) + (a[k, 1] * same[1, l])
                    : (a[l, 0] * same[0, k]) + (a[l, 1] * same[1, k]);
                covariance[i, j] =
                    (Math.Sqrt(shares[k] * shares[l]) * prior[k, l]) + (Math.Sqrt((1 - shares[k]) * (1 - shares[l])) * carried);
            }

            for (var l = 0; l < 2; l++)
            {
                withYear[i, l] = Math.Sqrt(shares[i % 2]) * prior[i % 2, l];
            }
        }

        double[] scores = [.. max.Zip(min).SelectMany(pair => new[] { pair.First, pair.Second })];
        double[][] weights = [Solved(covariance, withYear, 0), Solved(covariance, withYear, 1)];
        Assert.Equal(weights[0].Zip(scores).Sum(pair => pair.First * pair.Second), year.Mean.Max, 9);
        Assert.Equal(weights[1].Zip(scores).Sum(pair => pair.First * pair.Second), year.Mean.Min, 9);
        Assert.Equal(1 - Enumerable.Range(0, 8).Sum(i => weights[0][i] * withYear[i, 0]), year.Variance.Max, 9);
        Assert.Equal(Both - Enumerable.Range(0, 8).Sum(i => weights[0][i] * withYear[i, 1]), year.Variance.Both, 9);
        Assert.Equal(1 - Enumerable.Range(0, 8).Sum(i => weights[1][i] * withYear[i, 1]), year.Variance.Min, 9);
    }

    private static double[] Solved(double[,] matrix, double[,] right, int column)
    {
        var size = matrix.GetLength(0);
        var rows = Enumerable
            .Range(0, size)
            .Select(i => Enumerable.Range(0, size).Select(j => matrix[i, j]).Append(right[i, column]).ToArray())
            .ToArray();
        for (var pivot = 0; pivot < size; pivot++)
        {
            foreach (var other in Enumerable.Range(0, size).Where(other => other != pivot))
            {
                var times = rows[other][pivot] / rows[pivot][pivot];
                for (var j = pivot; j <= size; j++)
                {
                    rows[other][j] -= times * rows[pivot][j];
                }
            }
        }

        return [.. rows.Select((row, i) => row[size] / row[i])];
    }

    // Dry days of given normal scores: the residual is its score.
    private static ImmutableArray<DailyWeather> Days(double[] max, double[] min) =>
        [.. max.Zip(min).Select((pair, day) => new DailyWeather(s_first.AddDays(day), 2 + (3 * pair.Second), 14 + (4 * pair.First), 0))];

    private static DailyWeather[] Draw(WeatherGenerator generator, int season, int count)
    {
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        generator.Draw(7, season, s_first, tmin, tmax, rain);
        return [.. Enumerable.Range(0, count).Select(day => new DailyWeather(s_first.AddDays(day), tmin[day], tmax[day], rain[day]))];
    }

    private static DailyWeather[] DrawOn(WeatherGenerator generator, int season, LastSeenDay seen, int count, int daysBetween = 0)
    {
        var (tmin, tmax, rain) = (new double[count], new double[count], new double[count]);
        var first = seen.Date.AddDays(1 + daysBetween);
        generator.DrawOn(WeatherGenerator.KeyOf(7), season, seen, first, tmin, tmax, rain);
        return [.. Enumerable.Range(0, count).Select(day => new DailyWeather(first.AddDays(day), tmin[day], tmax[day], rain[day]))];
    }

    private static WeatherModel Every(MonthWeather month) =>
        new()
        {
            Months = [.. Enumerable.Repeat(month, 12)],
            Residuals = ResidualModel.UnitedStatesAverage,
            LeastRangeC = 0,
            Source = "test",
        };
}
